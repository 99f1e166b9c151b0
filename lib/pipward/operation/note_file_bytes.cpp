// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/complaint.h"
#include "pipward/operation/note_file.h"
#include "pipward/value/utf8.h"

namespace pipward::operation {
namespace {

constexpr std::string_view zip_begins = "PK\x03\x04";
constexpr std::string_view old_workbook_begins = "\xD0\xCF\x11\xE0";
constexpr std::string_view little_utf16 = "\xFF\xFE";
constexpr std::string_view big_utf16 = "\xFE\xFF";
constexpr std::string_view mark_in_text = "\xEF\xBF\xBD";  // U+FFFD that was written as such

Sentence how_to_save() {
    return say("Open it in the spreadsheet and save the sheet as CSV in UTF-8.");
}

Finding of_file(const std::string& file, Sentence message) {
    return about_table(Level::error, file, std::move(message), how_to_save());
}

Finding in_line(const std::string& file, int line, std::string value, Sentence message, Sentence remedy) {
    return {Level::error,     file, say("line {}", line), "", std::move(value), std::move(message),
            std::move(remedy)};
}

bool is_utf8(std::string_view line) {
    const auto points = code_points_of(line);
    std::ptrdiff_t written = 0;
    for (auto at = line.find(mark_in_text); at != line.npos; at = line.find(mark_in_text, at + 1)) {
        ++written;
    }
    return std::ranges::count(points, replacement_character) == written;
}

struct BadLines {
    int first = 0;
    std::string text{};
    int more = 0;
};

BadLines lines_not_utf8(std::string_view text) {
    BadLines bad;
    for (int number = 1; !text.empty(); ++number) {
        const auto line = text.substr(0, text.find('\n'));
        if (!is_utf8(line)) {
            bad.more += bad.first > 0 ? 1 : 0;
            bad.text = bad.first > 0 ? bad.text : one_line(line, 60);
            bad.first = bad.first > 0 ? bad.first : number;
        }
        text.remove_prefix(std::min(text.size(), line.size() + 1));
    }
    return bad;
}

}  // namespace

Findings judge_note_bytes(std::string_view text, const std::string& file) {
    if (text.starts_with(zip_begins)) {
        return {
            of_file(file, say("This is a spreadsheet's workbook (.xlsx, .ods) or a packed file, not CSV."))};
    }
    if (text.starts_with(old_workbook_begins)) {
        return {of_file(file, say("This is an old spreadsheet's workbook (.xls), not CSV."))};
    }
    if (text.starts_with(little_utf16) || text.starts_with(big_utf16)) {
        return {of_file(file, say("The file is in UTF-16, which spreadsheets call Unicode text."))};
    }
    if (const auto zero = text.find('\0'); zero != std::string_view::npos) {
        const auto line = static_cast<int>(
            std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(zero), '\n'));
        return {in_line(file, line + 1, {},
                        say("A byte of zero stands here: the file is no plain text, or damaged."),
                        how_to_save())};
    }
    if (const auto bad = lines_not_utf8(text); bad.first > 0) {
        return {in_line(file, bad.first, bad.text,
                        bad.more == 0
                            ? say("The line holds letters that are not UTF-8, as an umlaut in Windows-1252.")
                            : say("This line and {} more hold letters that are not UTF-8, as umlauts in "
                                  "Windows-1252.",
                                  bad.more),
                        how_to_save())};
    }
    return {};
}

}  // namespace pipward::operation
