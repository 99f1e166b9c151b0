// SPDX-License-Identifier: MIT
#include "pipward/style/detail/xml.h"

#include <fmt/format.h>

namespace pipward::style::xml {
namespace {

struct StringWriter : pugi::xml_writer {
    std::string text;
    void write(const void* data, std::size_t size) override {
        text.append(static_cast<const char*>(data), size);
    }
};

pugi::xml_node typed_option(pugi::xml_node map, std::string_view name, std::string_view type,
                            std::string_view value) {
    auto node = child(map, "Option");
    set(node, "type", type);
    set(node, "name", name);
    set(node, "value", value);
    return node;
}

}  // namespace

pugi::xml_node child(pugi::xml_node parent, const char* name) {
    return parent.append_child(name);
}

void text_child(pugi::xml_node parent, const char* name, std::string_view text) {
    child(parent, name).text().set(std::string(text).c_str());
}

void set(pugi::xml_node node, const char* attribute, std::string_view value) {
    node.append_attribute(attribute).set_value(std::string(value).c_str());
}

pugi::xml_node option_map(pugi::xml_node parent) {
    auto node = child(parent, "Option");
    set(node, "type", "Map");
    return node;
}

void option(pugi::xml_node map, std::string_view name, std::string_view value) {
    typed_option(map, name, "QString", value);
}

void flag_option(pugi::xml_node map, std::string_view name, bool value) {
    typed_option(map, name, "bool", value ? "true" : "false");
}

void number_option(pugi::xml_node map, std::string_view name, double value, bool whole) {
    typed_option(map, name, whole ? "int" : "double", number(value));
}

std::string number(double value) {
    return fmt::format("{:.15g}", value);
}

std::string text_of(const pugi::xml_document& document) {
    StringWriter writer;
    document.save(writer, " ", pugi::format_indent | pugi::format_no_declaration, pugi::encoding_utf8);
    return std::move(writer.text);
}

}  // namespace pipward::style::xml
