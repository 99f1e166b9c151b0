// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "pipward/book/schema.h"

namespace pipward {
namespace {

Finding wrong(const BookColumn& column, const Cell& value, std::string message, std::string remedy) {
    return {.level = Level::error,
            .table = {},
            .row = {},
            .field = std::string(column.name),
            .value = to_text(value),
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

std::string_view words_for(CellType type) {
    switch (type) {
        case CellType::whole:
            return "a whole number";
        case CellType::number:
            return "a number";
        case CellType::day:
            return "a day";
        case CellType::yes_no:
            return "yes or no";
        case CellType::text:
            break;
    }
    return "text";
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

std::string allowed_words(const FieldDomain& domain) {
    std::string list;
    for (const auto& choice : domain.choices) {
        list += (list.empty() ? "" : ", ") + choice.value;
    }
    return fmt::format("Use one of: {}.", list);
}

// A scale of many codes is told by its ends and what lies next to the wrong one.
constexpr std::size_t many_choices = 10;

std::string nearest_codes(const FieldDomain& domain, std::int64_t wrong_code) {
    const Choice* below = nullptr;
    const Choice* above = nullptr;
    for (const auto& choice : domain.choices) {
        const auto code = std::stoll(choice.value);
        (code < wrong_code ? below : above) = &choice;
        if (code > wrong_code) {
            break;
        }
    }
    const auto named = [](const Choice& choice) {
        return fmt::format("{} ({})", choice.value, choice.meaning);
    };
    const auto nearest = below != nullptr && above != nullptr
                             ? "the nearest are " + named(*below) + " and " + named(*above)
                             : "the nearest is " + named(below != nullptr ? *below : *above);
    return fmt::format("Codes run from {} to {}, with gaps; {}.", domain.choices.front().value,
                       domain.choices.back().value, nearest);
}

std::string allowed(const FieldDomain& domain, const Cell& value) {
    const auto* code = std::get_if<std::int64_t>(&value);
    return code != nullptr && domain.choices.size() > many_choices ? nearest_codes(domain, *code)
                                                                   : allowed_words(domain);
}

std::string correct_or_clear(const BookColumn& column) {
    return column.required ? "Correct it." : "Correct it, or clear it if it is not known.";
}

// An upper end that the trade does not set would tell nobody anything.
std::string limits_text(const FieldDomain& domain, double number, std::string_view unit) {
    const bool both = domain.high < no_upper_end || number > domain.high;
    const auto limits =
        both ? fmt::format("outside {} to {}", domain.low, domain.high) : fmt::format("below {}", domain.low);
    return unit.empty() ? limits : fmt::format("{} {}", limits, unit);
}

double as_number(const Cell& value) {
    const auto* whole = std::get_if<std::int64_t>(&value);
    return whole != nullptr ? static_cast<double>(*whole) : std::get<double>(value);
}

std::optional<Finding> check_domain(const BookColumn& column, const FieldDomain& domain, const Cell& value) {
    if (!domain.choices.empty()) {
        if (std::ranges::find(domain.choices, to_text(value), &Choice::value) != domain.choices.end()) {
            return std::nullopt;
        }
        return wrong(column, value, "This value is none of those that the column allows.",
                     allowed(domain, value));
    }
    const double number = as_number(value);
    if (number >= domain.low && number <= domain.high) {
        return std::nullopt;
    }
    return wrong(column, value, "The number lies " + limits_text(domain, number, column.unit) + ".",
                 correct_or_clear(column));
}

}  // namespace

std::optional<Finding> check_cell(const BookColumn& column, const Cell& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        return column.required ? std::optional{wrong(column, value, "The value is missing.", "Fill it in.")}
                               : std::nullopt;
    }
    if (!has_type(value, column.type)) {
        return wrong(
            column, value, fmt::format("The column holds {}.", words_for(column.type)),
            fmt::format("Write {}{}.", words_for(column.type), column.required ? "" : " or clear it"));
    }
    if (const auto* text = std::get_if<std::string>(&value); text != nullptr && text->empty()) {
        return wrong(column, value, "The text is empty.",
                     column.required ? "Fill it in." : "Clear it if it is not known, else fill it in.");
    }
    if (column.type == CellType::number && !std::isfinite(as_number(value))) {
        return wrong(column, value, "This is not a finite number.", correct_or_clear(column));
    }
    const auto* domain = find_domain(column.domain);
    return domain == nullptr ? std::nullopt : check_domain(column, *domain, value);
}

}  // namespace pipward
