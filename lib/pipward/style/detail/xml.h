// SPDX-License-Identifier: MIT
#pragma once

#include <concepts>
#include <pugixml.hpp>
#include <string>
#include <string_view>

/// Inside of the room: small helpers over the XML library.
namespace pipward::style::xml {

pugi::xml_node child(pugi::xml_node parent, const char* name);
/// A child that holds only text.
void text_child(pugi::xml_node parent, const char* name, std::string_view text);
void set(pugi::xml_node node, const char* attribute, std::string_view value);
template <std::integral Number>
void set(pugi::xml_node node, const char* attribute, Number value) {
    set(node, attribute, std::string_view(std::to_string(value)));
}

/// The desktop's typed key-value lists: `<Option type="Map"><Option name= type= value=/>`...
pugi::xml_node option_map(pugi::xml_node parent);
void option(pugi::xml_node map, std::string_view name, std::string_view value);
void flag_option(pugi::xml_node map, std::string_view name, bool value);
void number_option(pugi::xml_node map, std::string_view name, double value, bool whole);

/// A number without trailing zeros that reads back the same: coordinates and sizes.
std::string number(double value);
/// The whole document as UTF-8 text.
std::string text_of(const pugi::xml_document& document);

}  // namespace pipward::style::xml
