// SPDX-License-Identifier: MIT
#include "pipward/dress/field_dress.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>

namespace pipward {
namespace {

std::string spaced(std::string_view word) {
    std::string text(word);
    std::ranges::replace(text, '_', ' ');
    return text;
}

/// Texts that are longer than a line.
bool is_long(std::string_view column) {
    static constexpr std::array long_ones{"note", "why", "warnings"};
    return std::ranges::find(long_ones, column) != long_ones.end();
}

PickList pick_list(const FieldDomain& domain) {
    PickList list;
    for (const auto& choice : domain.choices) {
        list.choices.push_back({choice.value, choice_words(choice)});
    }
    return list;
}

/// Names that may answer to one of two tables cannot be picked from one.
Widget text_widget(const BookColumn& column) {
    if (column.references.size() == 1) {
        const auto& to = column.references.front();
        return PickFrom{std::string(to.table), std::string(to.column), std::string(to.within)};
    }
    return PlainText{.long_text = is_long(column.name), .offers_known = column.references.size() > 1};
}

Widget widget_of(const BookColumn& column) {
    const auto* domain = column.domain.empty() ? nullptr : find_domain(column.domain);
    if (domain != nullptr && !domain->choices.empty()) {
        return pick_list(*domain);
    }
    if (column.type == CellType::day) {
        return DayBox{};
    }
    if (domain != nullptr) {
        return NumberBox{domain->low, domain->high, column.type == CellType::whole, std::string(column.unit)};
    }
    return column.type == CellType::text ? text_widget(column) : Widget{PlainText{}};
}

std::string range_rule(const BookColumn& column, const FieldDomain& domain) {
    return fmt::format("\"{0}\" IS NULL OR (\"{0}\" >= {1:.15g} AND \"{0}\" <= {2:.15g})", column.name,
                       domain.low, domain.high);
}

std::string range_words(const BookColumn& column, const FieldDomain& domain) {
    const auto unit = column.unit.empty() ? std::string{} : fmt::format(" {}", column.unit);
    return fmt::format("{}: from {:.15g} to {:.15g}{}.", column.label, domain.low, domain.high, unit);
}

void set_rules(FieldDress& field, const BookColumn& column) {
    const auto* domain = column.domain.empty() ? nullptr : find_domain(column.domain);
    const bool ranged = domain != nullptr && domain->choices.empty();
    if (column.required) {
        field.rule =
            ranged ? fmt::format("\"{0}\" IS NOT NULL AND ({1})", column.name, range_rule(column, *domain))
                   : fmt::format("\"{}\" IS NOT NULL", column.name);
        field.rule_words =
            fmt::format("{} is needed. {}", column.label,
                        ranged ? range_words(column, *domain) : std::string(column.description));
    } else if (ranged) {
        field.rule = range_rule(column, *domain);
        field.rule_words = range_words(column, *domain);
    }
}

FieldDress row_number() {
    return {.column = "fid", .alias = "Row number", .widget = Hidden{}};
}

/// Words that results hold in one word, and how people read them.
PickList words_of(std::span<const char* const> words) {
    PickList list;
    for (const auto* word : words) {
        list.choices.push_back({word, spaced(word)});
    }
    return list;
}

constexpr std::array methods{"averaged", "mean_day", "degree_days", "chill_then_heat"};
constexpr std::array sources{"own_notes", "mid_parent", "one_parent", "orchard_mean"};

PickList methods_with_sources() {
    PickList list;
    for (const auto* method : methods) {
        for (const auto* source : sources) {
            const auto value = fmt::format("{}, {}", method, source);
            list.choices.push_back({value, spaced(value)});
        }
    }
    return list;
}

Widget widget_of(const Column& column) {
    if (column.type == CellType::yes_no) {
        return PickList{{{"true", "yes"}, {"false", "no"}}};
    }
    if (column.type == CellType::day) {
        return DayBox{};
    }
    if (column.name == "store") {
        return pick_list(*find_domain("pollen_store"));
    }
    if (column.name == "method") {
        return words_of(methods);
    }
    if (column.name == "need_source") {
        return words_of(sources);
    }
    if (column.name == "model") {
        return methods_with_sources();
    }
    return PlainText{.long_text = is_long(column.name)};
}

}  // namespace

std::string alias_of(std::string_view label, std::string_view unit) {
    return unit.empty() || unit == "year" ? std::string(label) : fmt::format("{} ({})", label, unit);
}

std::string choice_words(const Choice& choice) {
    return fmt::format("{}: {}", spaced(choice.value), choice.meaning);
}

std::vector<FieldDress> field_dresses(const BookTable& table) {
    std::vector<FieldDress> fields{row_number()};
    for (const auto& column : table.columns) {
        FieldDress field{.column = std::string(column.name),
                         .alias = alias_of(column.label, column.unit),
                         .widget = widget_of(column),
                         .required = column.required,
                         .unique = table.key.size() == 1 && table.key.front() == column.name};
        set_rules(field, column);
        fields.push_back(std::move(field));
    }
    return fields;
}

std::vector<FieldDress> field_dresses(const TableShape& result) {
    std::vector<FieldDress> fields{row_number()};
    for (const auto& column : result.columns) {
        fields.push_back({.column = column.name,
                          .alias = alias_of(column.label, column.unit),
                          .widget = widget_of(column)});
    }
    return fields;
}

}  // namespace pipward
