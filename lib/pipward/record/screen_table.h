// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/record/table.h"
#include "pipward/record/table_view.h"

/// A table as people read it on a screen of a certain width: no line is longer.
namespace pipward::record {

struct Screen {
    int width = 100;            ///< columns of the screen, 20 or more
    bool styled = false;        ///< whether it shows bold letters (ECMA-48)
    std::optional<int> year{};  ///< days of this year are told without it
};

/// How much of a table: `part` is what matters (TableView) and has room; `whole` puts all that has no room
/// under the row that it belongs to.
enum class Extent { part, whole };

/// The title, what is alike in all rows, the labels, the rows. Columns without a known cell are left out of a
/// part. Texts are broken into lines within their column; long ones stand under their row.
std::string screen_table(const Table& table, const TableView& view, const Screen& screen, Extent extent);

/// Whether screen_table leaves out any cell that is known.
bool leaves_out(const Table& table, const TableView& view, const Screen& screen);

/// Title, heads and the like on a screen that shows it.
std::string bold(const std::string& text, const Screen& screen);

}  // namespace pipward::record
