// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/style/detail/parts_xml.h"

namespace pipward::style::detail {
namespace {

pugi::xml_node add_tab(pugi::xml_node form, const std::string& title) {
    const auto tab = xml::child(form, "attributeEditorContainer");
    xml::set(tab, "name", title);
    xml::set(tab, "columnCount", "1");
    xml::set(tab, "groupBox", "0");
    xml::set(tab, "showLabel", "1");
    xml::set(tab, "visibilityExpressionEnabled", "0");
    xml::set(tab, "visibilityExpression", "");
    return tab;
}

std::size_t index_of(const LayerStyle& style, const std::string& column) {
    return static_cast<std::size_t>(std::ranges::find(style.fields, column, &FieldStyle::column) -
                                    style.fields.begin());
}

void write_group(pugi::xml_node form, const LayerStyle& style, const FormGroup& group) {
    const auto tab = add_tab(form, group.title);
    for (const auto& column : group.columns) {
        const auto field = xml::child(tab, "attributeEditorField");
        xml::set(field, "name", column);
        xml::set(field, "index", index_of(style, column));
        xml::set(field, "showLabel", "1");
    }
}

void write_relation(pugi::xml_node form, const ShownRelation& shown) {
    const auto tab = add_tab(form, shown.title);
    const auto relation = xml::child(tab, "attributeEditorRelation");
    xml::set(relation, "name", shown.id);
    xml::set(relation, "relation", shown.id);
    xml::set(relation, "label", shown.title);
    xml::set(relation, "showLabel", "0");
    xml::set(relation, "nmRelationId", "");
    xml::set(relation, "relationWidgetTypeId", "relation_editor");
    xml::set(relation, "forceSuppressFormPopup", "0");
    const auto buttons = xml::option_map(xml::child(relation, "editor_configuration"));
    xml::option(buttons, "buttons", "SaveChildEdits|AddChildFeature|ZoomToChildFeature|DeleteChildFeature");
    xml::flag_option(buttons, "show_first_feature", true);
}

}  // namespace

void write_form(pugi::xml_node layer, const LayerStyle& style, const Surroundings& around) {
    xml::text_child(layer, "editorlayout", "tablayout");
    const auto form = xml::child(layer, "attributeEditorForm");
    for (const auto& group : style.groups) {
        write_group(form, style, group);
    }
    for (const auto& relation : around.relations) {
        write_relation(form, relation);
    }
}

}  // namespace pipward::style::detail
