// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "pipward/book/adopt_value.h"
#include "pipward/operation/note.h"
#include "pipward/operation/note_file.h"
#include "pipward/value/utf8.h"

namespace pipward::operation {
namespace {

bool is_figure(char c) {
    return c >= '0' && c <= '9';
}

bool is_capital(char c) {
    return c >= 'A' && c <= 'Z';
}

NoteCell wrong(std::string_view text, Sentence message, Sentence remedy) {
    return {{}, Finding{Level::error, "", "", "", one_line(text, 60), std::move(message), std::move(remedy)}};
}

/// "+A1", "-$B$2*3": a sign and then a cell's name.
bool is_sum_of_cells(std::string_view text) {
    if (!text.starts_with('+') && !text.starts_with('-')) {
        return false;
    }
    auto rest = text.substr(1);
    rest.remove_prefix(rest.starts_with('$') ? 1 : 0);
    const auto letters = static_cast<std::size_t>(std::ranges::find_if_not(rest, is_capital) - rest.begin());
    rest.remove_prefix(letters);
    rest.remove_prefix(rest.starts_with('$') ? 1 : 0);
    return letters >= 1 && letters <= 3 && !rest.empty() && is_figure(rest.front());
}

bool is_formula(std::string_view text) {
    return text.starts_with('=') || text.starts_with('@') || is_sum_of_cells(text);
}

/// "#REF!", "#NAME?", "#N/A", "#####": what a spreadsheet shows instead of a value.
bool is_error_value(std::string_view text) {
    return text.size() > 1 && text.starts_with('#') &&
           (text.ends_with('!') || text.ends_with('?') || text == "#N/A" || text == "#NV" ||
            text.find_first_not_of('#') == std::string_view::npos);
}

/// "1.200", "12,345,678": thousands, or three decimals?
bool may_have_thousands(std::string_view text) {
    text.remove_prefix(text.starts_with('-') || text.starts_with('+') ? 1 : 0);
    const auto first = text.find_first_of(".,");
    if (first == std::string_view::npos || first == 0 || first > 3 || text.front() == '0') {
        return false;
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool parted = i >= first && (i - first) % 4 == 0;
        if (parted ? text[i] != '.' && text[i] != ',' : !is_figure(text[i])) {
            return false;
        }
    }
    return (text.size() - first) % 4 == 0;
}

std::string only_figures(std::string_view text) {
    std::string figures(text);
    std::erase_if(figures, [](char c) { return c == '.' || c == ','; });
    return figures;
}

NoteCell in_range(const book::BookColumn& column, std::string_view text, double number) {
    const bool is_counted = column.domain == "count";
    if (is_counted && number < 0) {
        return wrong(text, say("The number is below zero."),
                     say("Correct it, or clear it if it is not known."));
    }
    if (std::abs(number) > (is_counted ? double{most_counted} : book::no_upper_end)) {
        return wrong(text, say("The number is far too large."), say("Correct it."));
    }
    return {column.type == CellType::whole ? Cell{static_cast<std::int64_t>(number)} : Cell{number}};
}

NoteCell read_note_number(const book::BookColumn& column, std::string_view text) {
    if (may_have_thousands(text)) {
        return wrong(
            text, say("The point or comma may part thousands or decimals."),
            say("Write {} without it, or the decimals in another number of figures.", only_figures(text)));
    }
    const auto number = book::read_number(text, column.unit);
    if (!number) {
        return column.type == CellType::whole
                   ? wrong(
                         text, say("This is no whole number."),
                         say("Write figures alone, and anything else in a remark; leave the cell empty where "
                             "nothing was counted."))
                   : wrong(
                         text, say("This is no number."),
                         say("Write figures with a decimal point or comma, and anything else in a remark."));
    }
    if (column.type == CellType::whole && *number != std::floor(*number)) {
        return wrong(text, say("This is no whole number."), say("Only whole ones are counted; correct it."));
    }
    return in_range(column, text, *number);
}

// A name that holds a tab or a line end looks like another and is never found again.
NoteCell read_note_text(const book::BookColumn& column, std::string_view text) {
    const bool is_name = column.required || !column.references.empty();
    if (is_name && has_unseen_characters(text)) {
        return wrong(text, say("The name holds characters that are not seen, a line end perhaps."),
                     say("Type it anew."));
    }
    return {std::string(text)};
}

}  // namespace

NoteCell read_note_cell(const book::BookColumn& column, std::string_view text) {
    if (is_error_value(text)) {
        return wrong(text, say("A spreadsheet's error stands here instead of a value."),
                     say("Mend it in the spreadsheet, or type the value."));
    }
    if (is_formula(text)) {
        return wrong(text, say("This is a formula, not a value."),
                     say("Copy and paste the cells as values in the spreadsheet, or type the value."));
    }
    text = without_apostrophe(text);
    if (book::says_nothing(text)) {
        return {};
    }
    switch (column.type) {
        case CellType::whole:
        case CellType::number:
            return read_note_number(column, text);
        default:
            return read_note_text(column, text);
    }
}

}  // namespace pipward::operation
