// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/decoded.h"

#include <algorithm>
#include <optional>

#include "pipward/book/text_encoding.h"
#include "pipward/intake/sheet.h"
#include "pipward/value/utf8.h"

namespace pipward::intake::detail {
namespace {

using book::TextEncoding;

constexpr std::string_view zip_begins = "PK\x03\x04";
constexpr std::string_view old_workbook_begins = "\xD0\xCF\x11\xE0";
constexpr std::string_view little_utf16 = "\xFF\xFE";
constexpr std::string_view big_utf16 = "\xFE\xFF";

Sentence how_to_save() {
    return say("Open it in the spreadsheet and save the sheet as CSV in UTF-8.");
}

Decoded made_of(std::string text, Finding finding) {
    auto made = std::make_shared<const std::string>(std::move(text));
    return {*made, {std::move(finding)}, made};
}

Decoded refused(const std::string& file, int line, std::string value, Sentence message) {
    return {
        {},
        {about_file(file, line, {Level::error, {}, std::move(value), std::move(message), how_to_save()})}};
}

int line_at(std::string_view text, std::size_t at) {
    return static_cast<int>(std::ranges::count(text.substr(0, at), '\n')) + 1;
}

struct OddLines {
    int first = 0;
    int more = 0;
    std::string_view text{};
    bool mixed = false;  // other lines hold letters of UTF-8
};

OddLines lines_not_utf8(std::string_view text) {
    OddLines odd;
    for (int number = 1; !text.empty(); ++number) {
        const auto line = text.substr(0, text.find('\n'));
        const bool is_ascii = std::ranges::all_of(line, [](unsigned char c) { return c < 0x80; });
        const bool is_utf8 = is_ascii || book::as_utf8(line, TextEncoding::utf8);
        odd.mixed = odd.mixed || (is_utf8 && !is_ascii);
        odd.more += !is_utf8 && odd.first > 0 ? 1 : 0;
        if (!is_utf8 && odd.first == 0) {
            odd.first = number;
            odd.text = line;
        }
        text.remove_prefix(std::min(text.size(), line.size() + 1));
    }
    return odd;
}

Decoded from_1252(std::string_view bytes, const std::string& file) {
    constexpr std::size_t enough = 60;
    const auto odd = lines_not_utf8(bytes);
    auto text = odd.mixed ? std::nullopt : book::as_utf8(bytes, TextEncoding::windows_1252);
    if (!text) {
        return refused(
            file, odd.first, one_line(odd.text, enough),
            odd.more == 0 ? say("The line holds letters that are not UTF-8, nor is the file in Windows-1252.")
                          : say("This line and {} more hold letters that are not UTF-8, nor is the file in "
                                "Windows-1252.",
                                odd.more));
    }
    const auto shown = book::as_utf8(odd.text, TextEncoding::windows_1252).value_or("");
    return made_of(
        std::move(*text),
        about_file(file, odd.first,
                   {Level::warning,
                    {},
                    one_line(shown, enough),
                    odd.more == 0
                        ? say("The line holds letters that are not UTF-8: the file was read as Windows-1252.")
                        : say("This line and {} more hold letters that are not UTF-8: the file was read as "
                              "Windows-1252.",
                              odd.more),
                    say("Check that they were read correctly; if not, save the file in UTF-8.")}));
}

Decoded from_utf16(std::string_view bytes, const std::string& file) {
    auto text = book::as_utf8(
        bytes, bytes.starts_with(big_utf16) ? TextEncoding::utf16_big : TextEncoding::utf16_little);
    if (!text) {
        return refused(file, 0, {}, say("The file is marked as UTF-16, but damaged."));
    }
    return made_of(
        std::move(*text),
        about_file(file, 0,
                   {Level::notice,
                    {},
                    {},
                    say("The file is in UTF-16, which spreadsheets call Unicode text, and was read so."),
                    {}}));
}

}  // namespace

Decoded decoded(std::string_view bytes, const std::string& file) {
    if (bytes.starts_with(zip_begins)) {
        return refused(
            file, 0, {},
            say("This is a spreadsheet's workbook (.xlsx, .ods) or a packed file that cannot be read."));
    }
    if (bytes.starts_with(old_workbook_begins)) {
        return refused(file, 0, {}, say("This is an old spreadsheet's workbook (.xls), not CSV."));
    }
    if (bytes.starts_with(little_utf16) || bytes.starts_with(big_utf16)) {
        return from_utf16(bytes, file);
    }
    if (const auto zero = bytes.find('\0'); zero != bytes.npos) {
        return refused(file, line_at(bytes, zero), {},
                       say("The file is not plain text, or damaged: a byte of zero stands here."));
    }
    if (const auto text = book::utf8_in(bytes)) {
        return {*text, {}};
    }
    return from_1252(bytes, file);
}

}  // namespace pipward::intake::detail
