// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/book/dressing.h"
#include "pipward/dress/layer_dress.h"
#include "pipward/dress/orchard_dress.h"

/// A whole map of a book as plain data: which layers in which groups, over which ground and days.
namespace pipward::dress {

struct ProjectLayer {
    LayerDress dress;
    std::optional<book::MapBox> extent{};
};

struct ProjectGroup {
    std::string title;
    bool open = true;  ///< its layers are listed from the start
    std::vector<ProjectLayer> layers;
};

/// A column of a child table and the one of its parent that it refers to.
struct PairedColumn {
    std::string of_child;
    std::string of_parent;
};

/// Rows of `child` that name a row of `parent`.
struct ProjectRelation {
    std::string id;
    std::string title;  ///< over the rows in the parent's form
    std::string child;
    std::string parent;
    std::vector<PairedColumn> columns;
};

struct ProjectDress {
    std::string title;
    std::string book_file;  ///< without its folder: the project lies in the same file
    std::string crs_wkt;
    std::string crs_code;
    bool geographic = false;
    std::optional<book::MapBox> extent{};
    std::optional<BloomSpan> bloom{};
    std::vector<ProjectGroup> groups;  ///< the first is drawn on top
    std::vector<ProjectRelation> relations;
};

/// The name under which the project is kept in the book, in every language.
inline constexpr std::string_view season_map_name = "Season map";

/// Puts a book's layers into groups. Layers that the book does not have are left out, and groups without any.
ProjectDress season_map(const book::BookLook& look, const std::vector<LayerDress>& layers,
                        const std::optional<BloomSpan>& bloom, const std::string& book_file,
                        const Wording& wording = in_english);

/// A layer's id in a project of ours.
std::string layer_id(std::string_view table);

}  // namespace pipward::dress
