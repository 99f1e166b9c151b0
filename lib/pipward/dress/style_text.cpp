// SPDX-License-Identifier: MIT
#include "pipward/dress/style_text.h"

#include "pipward/dress/detail/host_form.h"
#include "pipward/dress/detail/parts_xml.h"

namespace pipward::dress {

std::string style_text(const LayerDress& dress) {
    pugi::xml_document document;
    document.append_child(pugi::node_doctype).set_value(detail::host_doctype);
    const auto root = document.append_child("qgis");
    xml::set(root, "version", detail::host_version);
    xml::set(root, "styleCategories", "AllStyleCategories");
    xml::set(root, "labelsEnabled", dress.label ? "1" : "0");
    xml::set(root, "readOnly", dress.read_only ? "1" : "0");
    detail::write_layer_parts(root, dress, {});
    return xml::text_of(document);
}

}  // namespace pipward::dress
