// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/book/map_style.h"
#include "pipward/style/layer_style.h"
#include "pipward/style/orchard_style.h"

/// A whole map of a book as plain data: which layers in which groups, over which ground and days.
namespace pipward::style {

/// One layer of the map.
struct ProjectLayer {
    LayerStyle style;  ///< how it looks
    /// In the book's system; nothing where it has no rows or no places.
    std::optional<book::MapBox> extent{};
};

/// Layers that are listed together.
struct ProjectGroup {
    std::string title;                 ///< in the list of layers
    bool open = true;                  ///< its layers are listed from the start
    std::vector<ProjectLayer> layers;  ///< the first is drawn on top
};

/// A column of a child table and the one of its parent that it refers to.
struct PairedColumn {
    std::string of_child;   ///< as the book stores its name
    std::string of_parent;  ///< as the book stores its name
};

/// Rows of `child` that name a row of `parent`.
struct ProjectRelation {
    std::string id;                     ///< no other relation of the map has it
    std::string title;                  ///< over the rows in the parent's form
    std::string child;                  ///< a table of the book
    std::string parent;                 ///< a table of the book
    std::vector<PairedColumn> columns;  ///< all of which must agree
};

/// The whole map.
struct ProjectStyle {
    std::string title;                     ///< of the window
    std::string book_file;                 ///< without its folder: the project lies in the same file
    std::string crs_wkt;                   ///< WKT 2
    std::string crs_code;                  ///< AUTHORITY:CODE; empty where there is none
    bool geographic = false;               ///< the system counts degrees, not metres
    std::optional<book::MapBox> extent{};  ///< what is shown at first; nothing for an orchard without places
    std::optional<BloomSpan> bloom{};      ///< the weeks that can be played through; nothing without windows
    std::vector<ProjectGroup> groups;      ///< the first is drawn on top
    std::vector<ProjectRelation> relations;  ///< one a reference between tables of the map
};

/// The name under which the project is kept in the book, in every language.
inline constexpr std::string_view season_map_name = "Season map";

/// Puts a book's layers into groups. Layers that the book does not have are left out, and groups without any.
ProjectStyle season_map(const book::BookLook& look, const std::vector<LayerStyle>& layers,
                        const std::optional<BloomSpan>& bloom, const std::string& book_file,
                        const Wording& wording = in_english);

/// A layer's id in a project of ours.
std::string layer_id(std::string_view table);

}  // namespace pipward::style
