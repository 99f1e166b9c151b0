// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/book/book.h"

/// How a book looks in a desktop: named styles in its table `layer_styles` and a stored project in
/// `qgis_projects`, both where the desktop itself keeps them. This room writes the texts and knows nothing of
/// what stands in them.
namespace pipward::book {

/// A rectangle in the book's coordinate system.
struct MapBox {
    double left = 0;    ///< least x
    double bottom = 0;  ///< least y
    double right = 0;   ///< greatest x
    double top = 0;     ///< greatest y
};

/// A table of the book that may be styled: one of the schema, or a result of ours.
struct LayerSeen {
    std::string table;               ///< its name
    std::string geometry_column;     ///< empty where the table has no geometry
    std::optional<MapBox> extent{};  ///< nothing where it has no geometry or no rows
};

/// What must be known of a book to style it.
struct BookLook {
    std::vector<LayerSeen> layers;  ///< in the schema's order, then the results'
    std::string crs_wkt;            ///< of the trees, WKT 2
    std::string crs_code;           ///< AUTHORITY:CODE, empty where there is none
    bool geographic = false;        ///< the system counts degrees, not metres
    bool styled = false;            ///< it carries a style or a project of ours
};

/// Throws Error (access) where the book cannot be read.
BookLook look_at_book(const BookAt& book);

/// A style to be kept in the book.
struct StyleText {
    std::string table;            ///< that it styles
    std::string geometry_column;  ///< empty where the table has no geometry
    std::string text;             ///< as style_text() of the room style writes it
};
/// A stored map of the book.
struct ProjectText {
    std::string name;     ///< under which the desktop lists it
    std::string content;  ///< as the desktop keeps it
};

/// What was written, by name of table or project, and what was left alone because it is the user's.
struct StyleReport {
    std::vector<std::string> written;               ///< new, or not as it would be written now
    std::vector<std::string> unchanged;             ///< as it would be written already
    std::vector<std::string> changed_by_user;       ///< carry our name, but are not as we wrote them
    std::vector<std::string> default_is_the_users;  ///< ours is kept beside the user's own default style
};

/// The name under which our styles are kept.
inline constexpr std::string_view style_name = "Pipward";

/// Writes styles and project in one short transaction; what stands there already is not written again. A
/// style or project that carries our name but is not as we wrote it is the user's and stays; a style that the
/// user has made the default stays the default. Throws Error (access); then nothing was changed.
StyleReport write_map_style(const BookAt& book, const std::vector<StyleText>& styles,
                            const ProjectText& project, Patience patience = default_patience);

}  // namespace pipward::book
