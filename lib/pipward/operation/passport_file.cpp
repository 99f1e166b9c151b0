// SPDX-License-Identifier: MIT
#include "pipward/operation/passport_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/operation/complaint.h"
#include "pipward/value/nearest.h"
#include "pipward/value/utf8.h"
#include "pipward/weather/csv_text.h"

namespace pipward::operation {
namespace {

std::string quoted(const std::string& text) {
    if (text.find_first_of(",;\t\"\r\n#") == text.npos && text.find_first_of(' ') != 0) {
        return text;
    }
    std::string result = "\"";
    for (const char letter : text) {
        result += letter == '"' ? "\"\"" : std::string(1, letter);
    }
    return result + "\"";
}

Finding about_column(const std::string& file, const std::string& column, Level level, Sentence message,
                     Sentence remedy) {
    return {level, file, say("header"), column, "", std::move(message), std::move(remedy)};
}

// The descriptor of each column; empty for one that is left out.
std::vector<std::string> columns_of(const weather::CsvRecord& header, const std::string& file,
                                    Findings& findings) {
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

Passport passport_in(const weather::CsvRecord& record, const std::vector<std::string>& columns) {
    Passport passport;
    for (std::size_t i = 0; i < std::min(record.fields.size(), columns.size()); ++i) {
        if (!columns[i].empty() && !record.fields[i].empty()) {
            passport[columns[i]] = record.fields[i];
        }
    }
    return passport;
}

Finding about_line(const std::string& file, const weather::CsvRecord& record, Sentence message,
                   Sentence remedy) {
    return {Level::warning, file, say("line {}", record.line), "", "", std::move(message), std::move(remedy)};
}

bool is_utf8(std::string_view text) {
    const auto points = code_points_of(text);
    return std::ranges::find(points, replacement_character) == points.end();
}

}  // namespace

PassportFile read_passport_file(const std::string& text, const std::string& file) {
    PassportFile read;
    if (!is_utf8(text)) {
        read.findings.push_back(about_table(Level::error, file, say("The file is not written in UTF-8."),
                                            say("Save it as CSV UTF-8.")));
        return read;
    }
    const auto csv = weather::read_csv(text, file);
    read.findings = csv.findings;
    if (csv.records.empty()) {
        read.findings.push_back(about_table(Level::error, file, say("The file is empty."),
                                            say("Give it a header of descriptors and a line an accession.")));
        return read;
    }
    const auto columns = columns_of(csv.records.front(), file, read.findings);
    for (std::size_t i = 1; i < csv.records.size(); ++i) {
        const auto& record = csv.records[i];
        auto passport = passport_in(record, columns);
        if (record.fields.size() > columns.size()) {
            read.findings.push_back(about_line(file, record, say("The line has more fields than the header."),
                                               say("Quote fields that hold the delimiter.")));
        }
        if (!passport.contains("ACCENAME") && !passport.contains("ACCENUMB")) {
            if (!passport.empty()) {
                read.findings.push_back(about_line(file, record,
                                                   say("The accession has no name: it is left out."),
                                                   say("Fill in ACCENAME or ACCENUMB.")));
            }
            continue;
        }
        read.lines.push_back({record.line, std::move(passport)});
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
            line += value == passport.end() ? "" : quoted(value->second);
        }
        text += line + "\r\n";
    }
    return text;
}

}  // namespace pipward::operation
