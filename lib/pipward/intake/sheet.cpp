// SPDX-License-Identifier: MIT
// The cells are parted here and not by OGR's driver for CSV: that one tells no line numbers (its row numbers
// leave out empty lines and line ends within quotes), refuses files of one column and guesses whether there
// is a heading.
#include "pipward/intake/sheet.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "pipward/book/workbook.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/detail/decoded.h"
#include "pipward/intake/detail/sheet_rows.h"
#include "pipward/value/utf8.h"

namespace pipward::intake {
namespace {

constexpr std::size_t lines_above = 5;  // of a title at most

std::string_view first_line(std::string_view text) {
    return text.substr(0, text.find_first_of("\r\n"));
}

std::ptrdiff_t count_unquoted(std::string_view line, char wanted) {
    bool quoted = false;
    return std::ranges::count_if(line, [&](char c) {
        quoted = c == '"' ? !quoted : quoted;
        return !quoted && c == wanted;
    });
}

char delimiter_of(std::string_view heading) {
    // Semicolon and tab first: where they tie with commas, the commas are decimal ones.
    constexpr std::array candidates{';', '\t', ','};
    return *std::ranges::max_element(candidates, {}, [&](char c) { return count_unquoted(heading, c); });
}

/// Walks over the text once; knows which line it is on.
class Splitter {
  public:
    Splitter(std::string_view text, int line)
        : text_(text), delimiter_(delimiter_of(first_line(text))), line_(line) {}

    bool at_end() const { return at_ >= text_.size(); }
    int line() const { return line_; }
    bool quote_left_open() const { return quote_left_open_; }

    Record record() {
        Record record{line_, {}};
        do {
            record.fields.push_back(field());
        } while (take_if(delimiter_));
        const bool carriage_return = take_if('\r');
        line_ += take_if('\n') || carriage_return ? 1 : 0;
        return record;
    }

  private:
    std::string field() {
        while (!at_end() && text_[at_] == ' ') {
            ++at_;
        }
        std::string value = take_if('"') ? quoted() : std::string{};
        while (!at_end() && text_[at_] != delimiter_ && text_[at_] != '\n' && text_[at_] != '\r') {
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
        const bool is_there = !at_end() && text_[at_] == wanted;
        at_ += is_there ? 1 : 0;
        return is_there;
    }

    std::string_view text_;
    char delimiter_;
    std::size_t at_ = 0;
    int line_;
    bool quote_left_open_ = false;
};

std::ptrdiff_t filled(const Record& record) {
    return std::ranges::count_if(record.fields, [](const std::string& field) { return !field.empty(); });
}

/// A place where the heading may stand, with what it would then be.
struct Start {
    std::string_view rest;
    Record heading;
};

/// A convention of the British archive of atmospheric data: what the file is, one thing a line, then a line
/// "data".
constexpr std::string_view preface_begins = "Conventions,G,BADC-CSV";

/// The first lines of the text that are neither empty, nor comments before the first such, nor of such a
/// preface.
std::vector<Start> starts_of(std::string_view text) {
    std::vector<Start> starts;
    bool in_preface = text.starts_with(preface_begins);
    for (int line = 1; !text.empty() && starts.size() <= lines_above; ++line) {
        const auto first = trimmed(first_line(text));
        const bool is_comment = starts.empty() && first.starts_with('#');
        if (!first.empty() && !is_comment && !in_preface) {
            starts.push_back({text, Splitter(first_line(text), line).record()});
        }
        in_preface = in_preface && first != "data";
        const auto end = text.find_first_of("\r\n");
        text.remove_prefix(end == text.npos ? text.size() : end + (text.substr(end, 2) == "\r\n" ? 2 : 1));
    }
    return starts;
}

/// Which of the first records is the heading; the first of all where none of them is known.
template <class Records, class Heading>
std::size_t heading_among(const Records& first, const KnowsHeading& known, const Heading& heading) {
    for (std::size_t i = 0; i < std::min(first.size(), lines_above + 1); ++i) {
        const Record& record = heading(first[i]);
        if (std::ranges::any_of(record.fields, known)) {
            const auto is_poorer = [&](const auto& above) {
                return 2 * filled(heading(above)) <= filled(record);
            };
            return std::all_of(first.begin(), first.begin() + static_cast<std::ptrdiff_t>(i), is_poorer) ? i
                                                                                                         : 0;
        }
    }
    return 0;
}

void tell_title(const std::string& file, const Record& title, int heading, Findings& findings) {
    findings.push_back(
        about_file(file, title.line,
                   {Level::notice,
                    {},
                    one_line(fmt::format("{}", fmt::join(title.fields, " ")), 60),
                    say("Line {} heads the columns; what stands above it was passed over.", heading),
                    {}}));
}

Finding quote_left_open(const std::string& file, int line) {
    return about_file(file, line,
                      {Level::error,
                       {},
                       {},
                       say("A quotation mark is opened here and never closed."),
                       say("Close it, or double it if it belongs to the text.")});
}

/// Hands on every record in which something stands, the heading first.
Findings split_each(const Start& start, const std::string& file, const std::function<bool(Record&&)>& see) {
    Findings findings;
    Splitter splitter(start.rest, start.heading.line);
    while (!splitter.at_end()) {
        const int line = splitter.line();
        auto record = splitter.record();
        if (splitter.quote_left_open()) {
            findings.push_back(quote_left_open(file, line));
        }
        if (filled(record) > 0 && !see(std::move(record))) {
            break;
        }
    }
    return findings;
}

/// Where the heading stands; what was passed over above it is told.
std::optional<Start> start_of(std::string_view text, const std::string& file, const KnowsHeading& known,
                              Findings& findings) {
    auto starts = starts_of(text);
    if (starts.empty()) {
        return std::nullopt;
    }
    const auto at =
        heading_among(starts, known, [](const Start& start) -> const Record& { return start.heading; });
    if (at > 0) {
        tell_title(file, starts.front().heading, starts[at].heading.line, findings);
    }
    return std::move(starts[at]);
}

Sheet sheet_of_text(std::string_view text, Sheet sheet, const KnowsHeading& known) {
    const auto start = start_of(text, sheet.file, known, sheet.findings);
    if (start) {
        const auto more = split_each(*start, sheet.file, [&](Record&& record) {
            sheet.records.push_back(std::move(record));
            return true;
        });
        sheet.findings.insert(sheet.findings.end(), more.begin(), more.end());
    }
    return sheet;
}

Sheet sheet_of_workbook(std::vector<book::WorkbookSheet> sheets, Sheet sheet, const KnowsHeading& known,
                        std::string_view wanted) {
    std::vector<std::string> names;
    std::ranges::transform(sheets, std::back_inserter(names), &book::WorkbookSheet::name);
    if (!wanted.empty()) {
        std::erase_if(sheets, [&](const book::WorkbookSheet& one) { return one.name != wanted; });
    }
    if (sheets.size() != 1 && !names.empty()) {
        sheet.findings.push_back(
            about_file(sheet.file, 0,
                       {Level::error,
                        {},
                        fmt::format("{}", fmt::join(names, ", ")),
                        sheets.empty() ? say("The workbook has no sheet {}.", wanted)
                                       : say("The workbook has several sheets."),
                        say("Save the one that is meant in a workbook of its own, or as CSV in UTF-8.")}));
        return sheet;
    }
    for (const auto& line : sheets.empty() ? std::vector<book::WorkbookLine>{} : sheets.front().lines) {
        auto& record = sheet.records.emplace_back(Record{line.number, {}});
        std::ranges::transform(line.cells, std::back_inserter(record.fields),
                               [](const std::string& cell) { return std::string(trimmed(cell)); });
    }
    const auto at =
        heading_among(sheet.records, known, [](const Record& record) -> const Record& { return record; });
    if (at > 0) {
        tell_title(sheet.file, sheet.records.front(), sheet.records[at].line, sheet.findings);
        sheet.records.erase(sheet.records.begin(), sheet.records.begin() + static_cast<std::ptrdiff_t>(at));
    }
    return sheet;
}

}  // namespace

const std::string& Record::at(std::size_t field) const {
    static const std::string nothing;
    return field < fields.size() ? fields[field] : nothing;
}

std::span<const Record> Sheet::rows() const {
    return std::span(records).subspan(records.empty() ? 0 : 1);
}

Sheet read_sheet(std::string_view bytes, std::string file, const KnowsHeading& known,
                 std::string_view wanted) {
    Sheet sheet{std::move(file), {}, {}};
    if (auto sheets = book::read_workbook(bytes)) {
        return sheet_of_workbook(std::move(*sheets), std::move(sheet), known, wanted);
    }
    auto text = detail::decoded(bytes, sheet.file);
    sheet.findings = std::move(text.findings);
    return sheet_of_text(text.text, std::move(sheet), known);
}

namespace detail {

struct SheetRows::Held {
    Sheet sheet;     ///< of a workbook; of a text no more than its findings
    Decoded text{};  ///< `start` looks into it
    std::optional<Start> start{};
};

SheetRows::SheetRows(std::string_view bytes, std::string file, const KnowsHeading& known)
    : held_(std::make_unique<Held>(Held{{std::move(file), {}, {}}})) {
    auto& sheet = held_->sheet;
    if (auto sheets = book::read_workbook(bytes)) {
        sheet = sheet_of_workbook(std::move(*sheets), std::move(sheet), known, {});
        return;
    }
    held_->text = decoded(bytes, sheet.file);
    sheet.findings = std::move(held_->text.findings);
    held_->start = start_of(held_->text.text, sheet.file, known, sheet.findings);
}

SheetRows::SheetRows(SheetRows&&) noexcept = default;
SheetRows::~SheetRows() = default;

const Findings& SheetRows::findings() const {
    return held_->sheet.findings;
}

const Record* SheetRows::heading() const {
    return held_->start                   ? &held_->start->heading
           : held_->sheet.records.empty() ? nullptr
                                          : &held_->sheet.records.front();
}

Findings SheetRows::each(const std::function<bool(Record&&)>& see) const {
    if (!held_->start) {
        for (const auto& record : held_->sheet.rows()) {
            if (!see(Record(record))) {
                break;
            }
        }
        return {};
    }
    bool is_heading = true;
    return split_each(*held_->start, held_->sheet.file, [&](Record&& record) {
        return std::exchange(is_heading, false) || see(std::move(record));
    });
}

}  // namespace detail

Sheet split_text(std::string_view text, std::string file) {
    return sheet_of_text(text, {std::move(file), {}, {}}, [](std::string_view) { return false; });
}

std::string quoted_cell(const std::string& text) {
    if (text.find_first_of(",;\t\"\r\n#") == std::string::npos && text == trimmed(text)) {
        return text;
    }
    std::string result = "\"";
    for (const char letter : text) {
        result += letter == '"' ? "\"\"" : std::string(1, letter);
    }
    return result + "\"";
}

Finding about_file(const std::string& file, int line, Remark remark) {
    return finding_about(file, line > 0 ? say("line {}", line) : Sentence{}, std::move(remark));
}

}  // namespace pipward::intake
