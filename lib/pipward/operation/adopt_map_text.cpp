// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/adopt.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/input_file.h"
#include "pipward/weather/csv_text.h"
#include "pipward/weather/text_cells.h"

namespace pipward::operation {
namespace {

constexpr std::string_view file_head = "field,goes to\r\n";

std::string quoted(const std::string& text) {
    if (text.find_first_of(",;\t\"\r\n#") == std::string::npos && text == weather::trimmed(text)) {
        return text;
    }
    std::string result = "\"";
    for (const char letter : text) {
        result += letter == '"' ? "\"\"" : std::string(1, letter);
    }
    return result + "\"";
}

Error misread(const std::string& parameter, const std::string& text) {
    return {Trouble::usage, about_parameter(parameter, text, say("This does not say where a field goes."),
                                            say("Write FIELD=column; FIELD2=- to leave a field out."))};
}

}  // namespace

book::Corrections corrections_in(const std::string& map) {
    book::Corrections corrections;
    std::string_view rest = map;
    while (!weather::trimmed(rest).empty()) {
        const auto end = std::min(rest.find(';'), rest.size());
        const auto part = weather::trimmed(rest.substr(0, end));
        rest.remove_prefix(std::min(end + 1, rest.size()));
        // The last one: columns of the book have none in their names.
        const auto equals = part.rfind('=');
        const auto field = weather::trimmed(part.substr(0, std::min(equals, part.size())));
        const auto column =
            equals == part.npos ? part.substr(0, 0) : weather::trimmed(part.substr(equals + 1));
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

book::Corrections corrections_of_file(const std::string& path) {
    const auto csv = weather::read_csv(read_input_file(path), path);
    if (has_errors(csv.findings)) {
        throw Error(Trouble::usage, csv.findings);
    }
    book::Corrections corrections;
    for (const auto& record : csv.records) {
        const bool is_head =
            &record == &csv.records.front() && weather::lower_case(record.fields.front()) == "field";
        if (is_head) {
            continue;
        }
        if (record.fields.size() < 2 || record.fields[0].empty()) {
            throw misread("map-file", record.fields.front());
        }
        corrections.emplace_back(record.fields[0], record.fields[1].empty() ? "-" : record.fields[1]);
    }
    return corrections;
}

std::string mapping_file(const book::FieldMapping& mapping) {
    std::string text(file_head);
    for (const auto& goal : mapping.goals) {
        text += quoted(goal.field) + "," + quoted(goal.column.empty() ? "-" : goal.column) + "\r\n";
    }
    return text;
}

}  // namespace pipward::operation
