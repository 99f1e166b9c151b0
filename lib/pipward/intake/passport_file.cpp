// SPDX-License-Identifier: MIT
#include "pipward/intake/passport_file.h"

#include <algorithm>
#include <set>

#include "pipward/intake/cells.h"
#include "pipward/intake/sheet.h"
#include "pipward/value/nearest.h"

namespace pipward::intake {
namespace {

Finding about_column(const std::string& file, const std::string& column, Level level, Sentence message,
                     Sentence remedy) {
    return {level, file, say("header"), column, "", std::move(message), std::move(remedy)};
}

// The descriptor of each column; empty for one that is left out.
std::vector<std::string> columns_of(const Record& header, const std::string& file, Findings& findings) {
    const auto all = passport_descriptors();
    const std::vector<std::string> known(all.begin(), all.end());
    std::vector<std::string> columns;
    std::set<std::string> seen;
    for (const auto& field : header.fields) {
        auto name = passport_descriptor(field);
        if (name.empty() && !field.empty()) {
            const auto meant = nearest(field, known);
            findings.push_back(about_column(
                file, field, Level::warning,
                say("The standard has no descriptor of this name: it is left out."),
                meant ? say("Did you mean {}?", *meant) : say("Rename the column if it is one.")));
        }
        if (!name.empty() && !seen.insert(name).second) {
            findings.push_back(about_column(file, name, Level::error, say("The descriptor has two columns."),
                                            say("Remove one of them.")));
        }
        columns.push_back(std::move(name));
    }
    if (!seen.contains("ACCENAME") && !seen.contains("ACCENUMB")) {
        findings.push_back(about_column(file, "ACCENAME", Level::error,
                                        say("There is neither a column ACCENAME nor a column ACCENUMB."),
                                        say("Give the file a header of descriptors; see passport-export.")));
    }
    return columns;
}

Passport passport_in(const Record& record, const std::vector<std::string>& columns) {
    Passport passport;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (!columns[i].empty() && !record.at(i).empty()) {
            passport[columns[i]] = std::string(without_apostrophe(record.at(i)));
        }
    }
    return passport;
}

Finding about_line(const std::string& file, const Record& record, Sentence message, Sentence remedy) {
    return about_file(file, record.line, {Level::warning, {}, {}, std::move(message), std::move(remedy)});
}

}  // namespace

PassportFile read_passport_file(std::string_view bytes, const std::string& file) {
    const auto sheet = read_sheet(
        bytes, file, [](std::string_view heading) { return !passport_descriptor(heading).empty(); });
    PassportFile read{{}, sheet.findings};
    if (sheet.records.empty()) {
        if (!sheet.is_refused()) {
            read.findings.push_back(
                about_file(file, 0,
                           {Level::error,
                            {},
                            {},
                            say("The file is empty."),
                            say("Give it a header of descriptors and one line per accession.")}));
        }
        return read;
    }
    const auto columns = columns_of(sheet.records.front(), file, read.findings);
    for (const auto& record : sheet.rows()) {
        auto passport = passport_in(record, columns);
        if (record.fields.size() > columns.size()) {
            read.findings.push_back(about_line(file, record, say("The line has more fields than the header."),
                                               say("Quote fields that hold the delimiter.")));
        }
        if (passport.contains("ACCENAME") || passport.contains("ACCENUMB")) {
            read.lines.push_back({record.line, std::move(passport)});
        } else if (!passport.empty()) {
            read.findings.push_back(about_line(file, record,
                                               say("The accession has no name: it is left out."),
                                               say("Fill in ACCENAME or ACCENUMB.")));
        }
    }
    return read;
}

std::string passport_file(const std::vector<Passport>& passports) {
    std::string text;
    for (const auto name : passport_descriptors()) {
        text += (text.empty() ? "" : ",") + std::string(name);
    }
    text += "\r\n";
    for (const auto& passport : passports) {
        std::string line;
        for (const auto name : passport_descriptors()) {
            const auto value = passport.find(name);
            line += name == passport_descriptors().front() ? "" : ",";
            line += value == passport.end() ? "" : quoted_cell(harmless(value->second));
        }
        text += line + "\r\n";
    }
    return text;
}

}  // namespace pipward::intake
