// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/adoption.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/sheet.h"

namespace pipward::intake {
namespace {

constexpr std::string_view file_head = "field,goes to\r\n";

Error misread(const std::string& parameter, const std::string& text) {
    return {Trouble::usage, Finding{Level::error,
                                    {},
                                    {},
                                    parameter,
                                    text,
                                    say("This is no field mapping."),
                                    say("Write FIELD=column; FIELD2=- to leave a field out.")}};
}

}  // namespace

Corrections corrections_in(const std::string& map) {
    Corrections corrections;
    std::string_view rest = map;
    while (!trimmed(rest).empty()) {
        const auto end = std::min(rest.find(';'), rest.size());
        const auto part = trimmed(rest.substr(0, end));
        rest.remove_prefix(std::min(end + 1, rest.size()));
        // The last one: columns of the book have none in their names.
        const auto equals = part.rfind('=');
        const auto field = trimmed(part.substr(0, std::min(equals, part.size())));
        const auto column = equals == part.npos ? part.substr(0, 0) : trimmed(part.substr(equals + 1));
        if (part.empty()) {
            continue;
        }
        if (field.empty() || column.empty()) {
            throw misread("map", std::string(part));
        }
        corrections.emplace_back(field, column);
    }
    return corrections;
}

Corrections corrections_of_file(const std::string& bytes, const std::string& file) {
    const auto sheet =
        read_sheet(bytes, file, [](std::string_view heading) { return lower_case(heading) == "field"; });
    if (sheet.is_refused()) {
        throw Error(Trouble::usage, sheet.findings);
    }
    Corrections corrections;
    for (const auto& record : sheet.records) {
        const bool is_head = &record == &sheet.records.front() && lower_case(record.at(0)) == "field";
        if (is_head) {
            continue;
        }
        if (record.fields.size() < 2 || record.at(0).empty()) {
            throw misread("map-file", record.at(0));
        }
        corrections.emplace_back(without_apostrophe(record.at(0)), record.at(1).empty() ? "-" : record.at(1));
    }
    return corrections;
}

std::string mapping_file(const FieldMapping& mapping) {
    std::string text(file_head);
    for (const auto& goal : mapping.goals) {
        // A column is named by the book, a field by anybody.
        text += quoted_cell(harmless(goal.field)) + "," +
                quoted_cell(goal.column.empty() ? "-" : goal.column) + "\r\n";
    }
    return text;
}

}  // namespace pipward::intake
