// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/place/ground_layer.h"
#include "pipward/place/row_recovery.h"
#include "pipward/record/words.h"

/// Rows and positions found for trees from their places.
namespace pipward::place {

enum class RowBegin { edge, first_tree };
std::span<const Word<RowBegin>> words(RowBegin);

/// How the trees of a block are to be numbered.
struct NumberingWish {
    std::string block;
    std::optional<Metres> spacing;
    std::optional<Metres> row_distance;
    std::optional<double> bearing;  ///< degrees clockwise from north, 0 to 360; roughly
    Side rows_to = Side::right;
    std::string row = "1";
    int first_position = 1;
    RowBegin begin = RowBegin::edge;
    double confidence = 0.97;
};

/// What was decided of one tree, in the orchard's words.
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

/// Of a tree that is not decided: a warning that tells why.
Finding left_open(const TreeDecision& decision);

struct Numbering {
    std::vector<TreeDecision> decisions{};
    int rows = 0;
    bool rows_known = false;               ///< held against the block's rows in the orchard
    std::vector<std::string> row_names{};  ///< of the rows made out
    std::vector<RecoveredRow> made_out{};
    Sentence understood{};  ///< a sentence: what was found of the rows
};

/// What of the wish does not go together.
Findings check_numbering(const NumberingWish& wish);

/// Throws Error (input) where the orchard has no such block.
void expect_block(const NumberingWish& wish, const Orchard& orchard);

/// The trees or points to number, and where they stand on the earth: one place a decision.
struct TreeCloud {
    std::vector<TreeDecision> decisions{};
    std::vector<LonLat> places{};
};
/// The points of a layer; its lines are passed over.
TreeCloud cloud_of_layer(const GroundLayer& layer, const Orchard& orchard);
/// Those trees of the orchard that stand and lack a row or a position. Warnings for trees without a place.
TreeCloud cloud_of_trees(const std::string& block, const Orchard& orchard, Day as_of, Findings& findings);

/// Throws Error: input for a block that the orchard does not have, usage for a first row's name that the
/// others cannot follow from.
Numbering number_trees(TreeCloud cloud, const NumberingWish& wish, const Orchard& orchard, Day as_of,
                       Findings& findings);

/// Rows that were made out and that the orchard must have before trees can refer to them.
std::vector<TreeRow> new_rows(const NumberingWish& wish, const Numbering& numbering, const Orchard& orchard);

}  // namespace pipward::place
