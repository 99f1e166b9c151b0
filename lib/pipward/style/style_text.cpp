// SPDX-License-Identifier: MIT
#include "pipward/style/style_text.h"

#include "pipward/style/detail/host_form.h"
#include "pipward/style/detail/parts_xml.h"

namespace pipward::style {

std::string style_text(const LayerStyle& style) {
    pugi::xml_document document;
    document.append_child(pugi::node_doctype).set_value(detail::host_doctype);
    const auto root = document.append_child("qgis");
    xml::set(root, "version", detail::host_version);
    xml::set(root, "styleCategories", "AllStyleCategories");
    xml::set(root, "labelsEnabled", style.label ? "1" : "0");
    xml::set(root, "readOnly", style.read_only ? "1" : "0");
    detail::write_layer_parts(root, style, {});
    return xml::text_of(document);
}

}  // namespace pipward::style
