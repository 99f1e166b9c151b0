// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/book/schema_words.h"
#include "pipward/value/utf8.h"

namespace pipward::book {
namespace {

Finding wrong(const BookColumn& column, const Cell& value, Sentence message, Sentence remedy) {
    return {.level = Level::error,
            .table = {},
            .row = {},
            .field = std::string(column.name),
            .value = to_text(value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

Sentence words_for(CellType type) {
    switch (type) {
        case CellType::whole:
            return say("an integer");
        case CellType::number:
            return say("a number");
        case CellType::day:
            return say("a day");
        case CellType::yes_no:
            return say("yes or no");
        case CellType::text:
            break;
    }
    return say("text");
}

bool has_type(const Cell& value, CellType type) {
    switch (type) {
        case CellType::whole:
            return std::holds_alternative<std::int64_t>(value);
        case CellType::number:
            return std::holds_alternative<double>(value) || std::holds_alternative<std::int64_t>(value);
        case CellType::day:
            return std::holds_alternative<Day>(value);
        case CellType::yes_no:
            return std::holds_alternative<bool>(value);
        case CellType::text:
            break;
    }
    return std::holds_alternative<std::string>(value);
}

Sentence allowed_words(const FieldDomain& domain) {
    std::string list;
    for (const auto& choice : domain.choices) {
        list += (list.empty() ? "" : ", ") + choice.value;
    }
    return say("Use one of: {}.", list);
}

// A scale of many codes is told by its ends and what lies next to the wrong one.
constexpr std::size_t many_choices = 10;

Sentence nearest_codes(const FieldDomain& domain, std::int64_t wrong_code) {
    const Choice* below = nullptr;
    const Choice* above = nullptr;
    for (const auto& choice : domain.choices) {
        const auto code = std::stoll(choice.value);
        (code < wrong_code ? below : above) = &choice;
        if (code > wrong_code) {
            break;
        }
    }
    const auto named = [](const Choice& choice) { return say("{} ({})", choice.value, meaning_of(choice)); };
    const auto& first = domain.choices.front().value;
    const auto& last = domain.choices.back().value;
    return below != nullptr && above != nullptr
               ? say("Codes run from {} to {}, with gaps; the nearest are {} and {}.", first, last,
                     named(*below), named(*above))
               : say("Codes run from {} to {}, with gaps; the nearest is {}.", first, last,
                     named(below != nullptr ? *below : *above));
}

Sentence allowed(const FieldDomain& domain, const Cell& value) {
    const auto* code = std::get_if<std::int64_t>(&value);
    return code != nullptr && domain.choices.size() > many_choices ? nearest_codes(domain, *code)
                                                                   : allowed_words(domain);
}

Sentence correct_or_clear(const BookColumn& column) {
    return column.required ? say("Correct it.") : say("Correct it, or clear it if it is not known.");
}

// An upper end that the trade does not set would tell nobody anything.
Sentence limits_text(const FieldDomain& domain, double number, std::string_view unit) {
    const bool both = domain.high < no_upper_end || number > domain.high;
    const auto in_unit = [&](double limit) {
        return verbatim(unit.empty() ? fmt::format("{}", limit) : fmt::format("{} {}", limit, unit));
    };
    return both ? say("The number lies outside {} to {}.", domain.low, in_unit(domain.high))
                : say("The number lies below {}.", in_unit(domain.low));
}

double as_number(const Cell& value) {
    const auto* whole = std::get_if<std::int64_t>(&value);
    return whole != nullptr ? static_cast<double>(*whole) : std::get<double>(value);
}

// As the reader of books has it: a remark is no book.
constexpr std::size_t longest_text = 100000;

bool is_too_long(const std::string& text) {
    return text.size() > longest_text && code_points_of(text).size() > longest_text;
}

std::optional<Finding> check_domain(const BookColumn& column, const FieldDomain& domain, const Cell& value) {
    if (!domain.choices.empty()) {
        if (std::ranges::find(domain.choices, to_text(value), &Choice::value) != domain.choices.end()) {
            return std::nullopt;
        }
        return wrong(column, value, say("This value is none of those that the column allows."),
                     allowed(domain, value));
    }
    const double number = as_number(value);
    if (number >= domain.low && number <= domain.high) {
        return std::nullopt;
    }
    return wrong(column, value, limits_text(domain, number, column.unit), correct_or_clear(column));
}

}  // namespace

std::optional<Finding> check_cell(const BookColumn& column, const Cell& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        return column.required
                   ? std::optional{wrong(column, value, say("The value is missing."), say("Fill it in."))}
                   : std::nullopt;
    }
    if (!has_type(value, column.type)) {
        return wrong(column, value, say("The column holds {}.", words_for(column.type)),
                     column.required ? say("Write {}.", words_for(column.type))
                                     : say("Write {} or clear it.", words_for(column.type)));
    }
    if (const auto* text = std::get_if<std::string>(&value); text != nullptr && text->empty()) {
        return wrong(
            column, value, say("The text is empty."),
            column.required ? say("Fill it in.") : say("Clear it if it is not known, else fill it in."));
    }
    if (const auto* text = std::get_if<std::string>(&value); text != nullptr && is_too_long(*text)) {
        constexpr std::size_t enough = 40;
        return wrong(column, one_line(*text, enough),
                     say("The text has more than {} characters.", longest_text), say("Shorten it."));
    }
    if (column.type == CellType::number && !std::isfinite(as_number(value))) {
        return wrong(column, value, say("This is not a finite number."), correct_or_clear(column));
    }
    const auto* domain = find_domain(column.domain);
    return domain == nullptr ? std::nullopt : check_domain(column, *domain, value);
}

}  // namespace pipward::book
