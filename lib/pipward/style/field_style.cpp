// SPDX-License-Identifier: MIT
#include "pipward/style/detail/field_style.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pipward::style::detail {
namespace {

std::string spaced(std::string_view word) {
    std::string text(word);
    std::ranges::replace(text, '_', ' ');
    return text;
}

/// Texts of results that are longer than a line.
bool is_long(std::string_view column) {
    static constexpr std::array long_ones{"remark", "why", "warnings"};
    return std::ranges::find(long_ones, column) != long_ones.end();
}

ValueList value_list(const book::FieldDomain& domain, const Wording& wording) {
    ValueList list;
    for (const auto& choice : domain.choices) {
        list.choices.push_back({choice.value, choice_words(choice, wording)});
    }
    return list;
}

/// Names that may answer to one of two tables cannot be chosen from one.
Widget text_widget(const book::BookColumn& column) {
    if (column.references.size() == 1) {
        const auto& to = column.references.front();
        return ValuesFrom{std::string(to.table), std::string(to.column), std::string(to.within)};
    }
    return PlainText{.long_text = column.role == book::ColumnRole::remark,
                     .offers_known = column.references.size() > 1};
}

Widget widget_of(const book::BookColumn& column, const Wording& wording) {
    const auto* domain = column.domain.empty() ? nullptr : book::find_domain(column.domain);
    if (domain != nullptr && !domain->choices.empty()) {
        return value_list(*domain, wording);
    }
    if (column.type == CellType::day) {
        return DayBox{};
    }
    if (domain != nullptr) {
        return NumberBox{domain->low, domain->high, column.type == CellType::whole, wording(column.unit)};
    }
    return column.type == CellType::text ? text_widget(column) : Widget{PlainText{}};
}

std::string range_rule(const book::BookColumn& column, const book::FieldDomain& domain) {
    return fmt::format("\"{0}\" IS NULL OR (\"{0}\" >= {1:.15g} AND \"{0}\" <= {2:.15g})", column.name,
                       domain.low, domain.high);
}

Sentence range_words(const book::BookColumn& column, const book::FieldDomain& domain) {
    const auto high = column.unit.empty()
                          ? verbatim(fmt::format("{:.15g}", domain.high))
                          : verbatim(fmt::format("{:.15g} ", domain.high)) + filled(column.unit, {});
    return say("{}: from {:.15g} to {}.", filled(column.label, {}), domain.low, high);
}

void set_rules(FieldStyle& field, const book::BookColumn& column, const Wording& wording) {
    const auto* domain = column.domain.empty() ? nullptr : book::find_domain(column.domain);
    const bool ranged = domain != nullptr && domain->choices.empty();
    if (column.required) {
        field.rule =
            ranged ? fmt::format("\"{0}\" IS NOT NULL AND ({1})", column.name, range_rule(column, *domain))
                   : fmt::format("\"{}\" IS NOT NULL", column.name);
        const auto more = ranged ? range_words(column, *domain) : filled(column.description, {});
        field.rule_words = say("{} is needed. {}", filled(column.label, {}), more).in(wording);
    } else if (ranged) {
        field.rule = range_rule(column, *domain);
        field.rule_words = range_words(column, *domain).in(wording);
    }
}

FieldStyle row_number(const Wording& wording) {
    return {.column = "fid", .alias = say("Row number").in(wording), .widget = Hidden{}};
}

/// Results hold the codes of closed lists; people see the words that their columns are declared with.
ValueList value_list(const Column& column, const Wording& wording) {
    ValueList list;
    for (const auto& word : column.words) {
        list.choices.push_back({word.code, wording(word.plain)});
    }
    return list;
}

/// A cell of this column holds two of its words.
bool holds_two(const Column& column) {
    return column.name == "model";
}

ValueList list_of_pairs(const Column& column, const Wording& wording) {
    const auto single = value_list(column, wording).choices;
    ValueList list;
    for (auto one = single.begin(); one != single.end(); ++one) {
        for (auto other = one + 1; other != single.end(); ++other) {
            list.choices.push_back({fmt::format("{}, {}", one->value, other->value),
                                    fmt::format("{}, {}", one->meaning, other->meaning)});
        }
    }
    return list;
}

Widget widget_of(const Column& column, const Wording& wording) {
    if (!column.words.empty()) {
        return holds_two(column) ? list_of_pairs(column, wording) : value_list(column, wording);
    }
    if (column.type == CellType::yes_no) {
        return ValueList{{{"true", say("yes").in(wording)}, {"false", say("no").in(wording)}}};
    }
    if (column.type == CellType::day) {
        return DayBox{};
    }
    if (column.name == "store") {
        return value_list(*book::find_domain("pollen_store"), wording);
    }
    return PlainText{.long_text = is_long(column.name)};
}

}  // namespace

std::string alias_of(std::string_view label, std::string_view unit, const Wording& wording) {
    return unit.empty() || unit == "year" ? wording(label)
                                          : fmt::format("{} ({})", wording(label), wording(unit));
}

std::string choice_words(const book::Choice& choice, const Wording& wording) {
    return fmt::format("{}: {}", wording(spaced(choice.value)), wording(choice.meaning));
}

std::vector<FieldStyle> field_styles(const book::BookTable& table, const Wording& wording) {
    std::vector<FieldStyle> fields{row_number(wording)};
    for (const auto& column : table.columns) {
        FieldStyle field{.column = std::string(column.name),
                         .alias = alias_of(column.label, column.unit, wording),
                         .widget = widget_of(column, wording),
                         .required = column.required,
                         .unique = table.key.size() == 1 && table.key.front() == column.name};
        set_rules(field, column, wording);
        fields.push_back(std::move(field));
    }
    return fields;
}

std::vector<FieldStyle> field_styles(const TableShape& result, const Wording& wording) {
    std::vector<FieldStyle> fields{row_number(wording)};
    for (const auto& column : result.columns) {
        fields.push_back({.column = column.name,
                          .alias = alias_of(column.label, column.unit, wording),
                          .widget = widget_of(column, wording)});
    }
    return fields;
}

}  // namespace pipward::style::detail
