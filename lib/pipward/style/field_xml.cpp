// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/style/detail/parts_xml.h"

namespace pipward::style::detail {
namespace {

pugi::xml_node add_widget(pugi::xml_node field, const char* kind) {
    const auto widget = xml::child(field, "editWidget");
    xml::set(widget, "type", kind);
    return xml::option_map(xml::child(widget, "config"));
}

void write_choices(pugi::xml_node config, const ValueList& list) {
    const auto map = xml::child(config, "Option");
    xml::set(map, "type", "List");
    xml::set(map, "name", "map");
    for (const auto& choice : list.choices) {
        xml::option(xml::option_map(map), choice.meaning, choice.value);
    }
}

struct WidgetWriter {
    pugi::xml_node field;
    const FieldStyle& style;
    const Surroundings& around;

    void operator()(const PlainText& text) const {
        if (text.offers_known) {
            xml::flag_option(add_widget(field, "UniqueValues"), "Editable", true);
            return;
        }
        const auto config = add_widget(field, "TextEdit");
        xml::flag_option(config, "IsMultiline", text.long_text);
        xml::flag_option(config, "UseHtml", false);
    }

    void operator()(const NumberBox& box) const {
        const auto config = add_widget(field, "Range");
        xml::flag_option(config, "AllowNull", true);
        xml::number_option(config, "Min", box.low, box.whole);
        xml::number_option(config, "Max", box.high, box.whole);
        xml::number_option(config, "Step", 1, box.whole);
        xml::number_option(config, "Precision", box.whole ? 0 : 2, true);
        xml::option(config, "Style", "SpinBox");
        if (!box.unit.empty()) {
            xml::option(config, "Suffix", " " + box.unit);
        }
    }

    void operator()(const DayBox&) const {
        const auto config = add_widget(field, "DateTime");
        xml::flag_option(config, "allow_null", !style.required);
        xml::flag_option(config, "calendar_popup", true);
        xml::option(config, "display_format", "d MMM yyyy");
        xml::option(config, "field_format", "yyyy-MM-dd");
        xml::flag_option(config, "field_iso_format", false);
    }

    void operator()(const ValueList& list) const { write_choices(add_widget(field, "ValueMap"), list); }

    // Alone, without the other layer, a layer can only offer what it holds itself.
    void operator()(const ValuesFrom& from) const {
        const auto other = around.layer_ids.find(from.table);
        if (other == around.layer_ids.end()) {
            (*this)(PlainText{.offers_known = true});
            return;
        }
        const auto config = add_widget(field, "ValueRelation");
        xml::option(config, "Layer", other->second);
        xml::option(config, "Key", from.column);
        xml::option(config, "Value", from.column);
        xml::flag_option(config, "AllowNull", !style.required);
        xml::flag_option(config, "AllowMulti", false);
        xml::flag_option(config, "OrderByValue", true);
        xml::flag_option(config, "UseCompleter", from.table == "tree" || from.table == "accession");
        if (!from.within.empty()) {
            xml::option(config, "FilterExpression",
                        fmt::format("\"{0}\" = current_value('{0}')", from.within));
        }
    }

    void operator()(const Hidden&) const { add_widget(field, "Hidden"); }
};

void write_widgets(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around) {
    const auto configuration = xml::child(layer, "fieldConfiguration");
    for (const auto& field : style.fields) {
        const auto node = xml::child(configuration, "field");
        xml::set(node, "name", field.column);
        xml::set(node, "configurationFlags", "None");
        std::visit(WidgetWriter{node, field, around}, field.widget);
    }
}

void write_aliases(pugi::xml_node layer, const LayerStyle& style) {
    const auto aliases = xml::child(layer, "aliases");
    for (std::size_t i = 0; i < style.fields.size(); ++i) {
        const auto alias = xml::child(aliases, "alias");
        xml::set(alias, "field", style.fields[i].column);
        xml::set(alias, "index", i);
        xml::set(alias, "name", style.fields[i].alias);
    }
}

// The desktop's bits and strengths: 1 must be there, 2 must be the only one, 4 must fulfil the rule; a
// strength of 1 forbids, 2 warns.
constexpr int needs_value = 1;
constexpr int needs_unique = 2;
constexpr int needs_rule = 4;

int constraints_of(const FieldStyle& field) {
    return (field.required ? needs_value : 0) + (field.unique ? needs_unique : 0) +
           (field.rule.empty() ? 0 : needs_rule);
}

void write_constraints(pugi::xml_node layer, const LayerStyle& style) {
    const auto constraints = xml::child(layer, "constraints");
    const auto expressions = xml::child(layer, "constraintExpressions");
    for (const auto& field : style.fields) {
        if (constraints_of(field) == 0) {
            continue;
        }
        const auto constraint = xml::child(constraints, "constraint");
        xml::set(constraint, "field", field.column);
        xml::set(constraint, "constraints", constraints_of(field));
        xml::set(constraint, "notnull_strength", field.required ? "1" : "0");
        xml::set(constraint, "unique_strength", field.unique ? "1" : "0");
        xml::set(constraint, "exp_strength", field.rule.empty() ? "0" : "1");
        const auto expression = xml::child(expressions, "constraint");
        xml::set(expression, "field", field.column);
        xml::set(expression, "exp", field.rule);
        xml::set(expression, "desc", field.rule_words);
    }
}

// The table of rows does not show the row number either.
void write_table_columns(pugi::xml_node layer, const LayerStyle& style) {
    const auto columns = xml::child(xml::child(layer, "attributetableconfig"), "columns");
    for (const auto& field : style.fields) {
        const auto column = xml::child(columns, "column");
        xml::set(column, "type", "field");
        xml::set(column, "name", field.column);
        xml::set(column, "hidden", std::holds_alternative<Hidden>(field.widget) ? "1" : "0");
        xml::set(column, "width", "-1");
    }
}

}  // namespace

void write_fields(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around) {
    write_widgets(layer, style, around);
    write_aliases(layer, style);
    write_constraints(layer, style);
    write_table_columns(layer, style);
}

}  // namespace pipward::style::detail
