// SPDX-License-Identifier: MIT
#include <cmath>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/record_reading.h"
#include "pipward/value/utf8.h"

namespace pipward::intake::detail {
namespace {

constexpr double most_counted = 1'000'000;

ReadValue wrong(std::string_view text, Sentence message, Sentence remedy) {
    return {{}, wrong_cell(text, std::move(message), std::move(remedy))};
}

std::string only_figures(std::string_view text) {
    std::string figures(text);
    std::erase_if(figures, [](char c) { return c == '.' || c == ','; });
    return figures;
}

ReadValue read_record_number(const book::BookColumn& column, std::string_view text) {
    if (may_have_thousands(text)) {
        return wrong(
            text, say("The point or comma may part thousands or decimals."),
            say("Write {} without it, or the decimals in another number of figures.", only_figures(text)));
    }
    const bool is_whole = column.type == CellType::whole;
    const bool is_counted = column.domain == "count";
    const auto number = read_number(text, column.unit);
    if (!number && is_whole) {
        return wrong(text, say("This is no integer."),
                     say("Write figures alone, and anything else in a remark; leave the cell empty where "
                         "nothing was counted."));
    }
    if (!number) {
        return wrong(text, say("This is no number."),
                     say("Write figures with a decimal point or comma, and anything else in a remark."));
    }
    if (is_whole && *number != std::floor(*number)) {
        return wrong(text, say("This is no integer."), say("Only integers are allowed; correct it."));
    }
    if (is_counted && *number < 0) {
        return wrong(text, say("The number is below zero."),
                     say("Correct it, or clear it if it is not known."));
    }
    if (std::abs(*number) > (is_counted ? most_counted : book::no_upper_end)) {
        return wrong(text, say("The number is far too large."), say("Correct it."));
    }
    return {is_whole ? Cell{static_cast<std::int64_t>(*number)} : Cell{*number}};
}

}  // namespace

ReadValue read_record_cell(const book::BookColumn& column, std::string_view text) {
    if (auto formula = formula_or_error(text)) {
        return {{}, std::move(formula)};
    }
    text = without_apostrophe(text);
    if (says_nothing(text)) {
        return {};
    }
    if (column.type == CellType::whole || column.type == CellType::number) {
        return read_record_number(column, text);
    }
    // A name that holds a tab or a line end looks like another and is never found again.
    if ((column.required || !column.references.empty()) && has_unseen_characters(text)) {
        return wrong(text, say("The name has invisible characters, a line end perhaps."),
                     say("Type it again."));
    }
    return {std::string(text)};
}

}  // namespace pipward::intake::detail
