// SPDX-License-Identifier: MIT
#include "pipward/weather/csv_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

std::string_view first_line(std::string_view text) {
    return text.substr(0, text.find_first_of("\r\n"));
}

std::size_t count_unquoted(std::string_view line, char wanted) {
    std::size_t count = 0;
    bool quoted = false;
    for (const char c : line) {
        quoted = c == '"' ? !quoted : quoted;
        count += !quoted && c == wanted ? 1 : 0;
    }
    return count;
}

char delimiter_of(std::string_view header) {
    // Semicolon and tab first: where they tie with commas, the commas are decimal ones.
    constexpr std::array candidates{';', '\t', ','};
    return *std::ranges::max_element(candidates, {}, [&](char c) { return count_unquoted(header, c); });
}

/// Walks over the text once; knows which line it is on.
class CsvReader {
  public:
    CsvReader(std::string_view text, int line) : text_(text), line_(line) {}

    bool at_end() const { return at_ >= text_.size(); }
    int line() const { return line_; }
    bool quote_left_open() const { return quote_left_open_; }

    CsvRecord record(char delimiter) {
        CsvRecord record{line_, {}};
        do {
            record.fields.push_back(field(delimiter));
        } while (take_if(delimiter));
        take_line_end();
        return record;
    }

  private:
    std::string field(char delimiter) {
        while (!at_end() && text_[at_] == ' ') {
            ++at_;
        }
        std::string value;
        if (take_if('"')) {
            value = quoted();
        }
        while (!at_end() && text_[at_] != delimiter && text_[at_] != '\n' && text_[at_] != '\r') {
            value += text_[at_++];
        }
        return std::string(trimmed(value));
    }

    std::string quoted() {
        std::string value;
        while (!at_end()) {
            const char c = text_[at_++];
            if (c == '"' && !take_if('"')) {
                return value;
            }
            line_ += c == '\n' ? 1 : 0;
            value += c;
        }
        quote_left_open_ = true;
        return value;
    }

    bool take_if(char wanted) {
        if (at_end() || text_[at_] != wanted) {
            return false;
        }
        ++at_;
        return true;
    }

    void take_line_end() {
        const bool carriage_return = take_if('\r');
        if (take_if('\n') || carriage_return) {
            ++line_;
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int line_ = 1;
    bool quote_left_open_ = false;
};

bool is_empty(const CsvRecord& record) {
    return std::ranges::all_of(record.fields, [](const std::string& field) { return field.empty(); });
}

Finding not_csv(std::string_view file, int line, Sentence message, Sentence remedy) {
    return {.level = Level::error,
            .table = std::string(file),
            .row = line > 0 ? say("line {}", line) : Sentence{},
            .field = {},
            .value = {},
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

/// Takes comment and empty lines off the front; returns how many.
int skip_preamble(std::string_view& text) {
    int lines = 0;
    while (!text.empty()) {
        const auto line = trimmed(first_line(text));
        if (!line.empty() && line.front() != '#') {
            break;
        }
        const auto end = text.find_first_of("\r\n");
        if (end == std::string_view::npos) {
            text = {};
            break;
        }
        text.remove_prefix(end + (text.substr(end, 2) == "\r\n" ? 2 : 1));
        ++lines;
    }
    return lines;
}

}  // namespace

CsvText read_csv(std::string_view text, std::string_view file) {
    CsvText csv;
    if (text.find('\0') != std::string_view::npos) {
        csv.findings.push_back(not_csv(file, 0, say("The file is not plain text."),
                                       say("Save it from the spreadsheet as CSV in UTF-8.")));
        return csv;
    }
    if (text.starts_with(byte_order_mark)) {
        text.remove_prefix(byte_order_mark.size());
    }
    const int skipped = skip_preamble(text);
    csv.delimiter = delimiter_of(first_line(text));
    CsvReader reader(text, skipped + 1);
    while (!reader.at_end()) {
        const int line = reader.line();
        CsvRecord record = reader.record(csv.delimiter);
        if (reader.quote_left_open()) {
            csv.findings.push_back(not_csv(file, line,
                                           say("A quotation mark is opened here and never closed."),
                                           say("Close it, or double it if it belongs to the text.")));
        }
        if (!is_empty(record)) {
            csv.records.push_back(std::move(record));
        }
    }
    return csv;
}

}  // namespace pipward::weather
