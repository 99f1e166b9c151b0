// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/book/change.h"
#include "pipward/operation/user_places.h"
#include "pipward/place/row_recovery.h"

namespace pipward::operation {

enum class RowBegin { edge, first_tree };

/// How trees are to be numbered.
struct NumberRequest : PlacesRequest {
    std::string block;
    std::optional<Metres> spacing;
    std::optional<Metres> row_distance;
    std::optional<double> bearing;
    place::Side rows_to = place::Side::right;
    std::string row = "1";
    int first_position = 1;
    RowBegin begin = RowBegin::edge;
    double confidence = 0.97;
};

/// What was decided of one tree, in the book's words.
struct TreeDecision {
    std::string label;
    std::optional<std::size_t> tree{};  ///< in Orchard::trees; none for a point of a layer
    std::string block{};
    std::string row{};
    std::optional<int> position{};
    double confidence = 0;
    double off_row = 0;
    double off_position = 0;
    Sentence doubt{};
    std::optional<MapPoint> at{};

    bool decided() const { return doubt.empty() && position.has_value(); }
};

struct Numbering {
    std::vector<TreeDecision> decisions{};
    int rows = 0;
    bool rows_known = false;               ///< held against the block's rows in the book
    std::vector<std::string> row_names{};  ///< of the rows made out
    std::vector<place::RecoveredRow> made_out{};
    Sentence understood{};  ///< a sentence: what was found of the rows
};

Findings check_numbering(const NumberRequest& request);

/// Numbers the points of the request's layer, or those trees of the book that stand and lack a row or a
/// position. Throws Error (usage, input, access).
Numbering number_trees(const NumberRequest& request, const Orchard& orchard, Day as_of, Findings& findings);

/// Rows that were made out and that the book must have before trees can refer to them.
std::vector<TreeRow> new_rows(const NumberRequest& request, const Numbering& numbering,
                              const Orchard& orchard);

/// Block, row and position for a decided tree of the book that had none.
book::CellEdit edit_of(const TreeDecision& decision, const Orchard& orchard);

}  // namespace pipward::operation
