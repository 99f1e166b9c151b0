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

/// The beginnings as they are typed.
std::span<const Word<RowBegin>> words(RowBegin);
/// What becomes of rows without a tree, as it is typed.
std::span<const Word<EmptyRows>> words(EmptyRows);

/// How the trees of a block are to be numbered.
struct NumberingWish {
    std::string block;                      ///< of the book; not blank
    std::optional<Metres> spacing;          ///< within 15 %, above 0; found where not given
    std::optional<Metres> row_distance;     ///< within 15 %, above 0; found where not given
    std::optional<double> bearing;          ///< degrees clockwise from north, 0 to 360; roughly
    Side rows_to = Side::right;             ///< to which side rows count, seen as positions count
    std::string row = "1";                  ///< the first row's name; the others follow by next_name()
    int first_position = 1;                 ///< of each row
    EmptyRows empty_rows = EmptyRows::ask;  ///< not looked at where the block's rows are known
    RowBegin begin = RowBegin::detect;      ///< not looked at where the block's rows are known
    double confidence = 0.97;               ///< 0..1: below it a tree is left open
};

/// What was decided of one tree, in the orchard's words.
struct TreeDecision {
    std::string label;                  ///< the tree's, or what the layer calls the point
    std::optional<std::size_t> tree{};  ///< in Orchard::trees; none for a point of a layer
    std::string block{};                ///< empty until numbered
    std::string row{};                  ///< empty where no row is likely
    std::optional<int> position{};      ///< nothing where none is likely
    double confidence = 0;              ///< that row and position are right, 0..1
    double off_row = 0;                 ///< metres across from the row's line, not negative
    double off_position = 0;            ///< metres along from the position, positive as positions count
    Sentence doubt{};                   ///< why it is left open; empty where it is decided
    std::optional<MapPoint> at{};       ///< in the book's system; nothing where it cannot be drawn there

    /// Also false before the tree has been numbered.
    bool decided() const { return doubt.empty() && position.has_value(); }
};

/// Of a tree that is not decided: a warning that tells why.
Finding left_open(const TreeDecision& decision);

/// What would follow from one answer to a question.
struct NumberingAnswer {
    Sentence words{};                       ///< what is the case then
    std::string option{};                   ///< the parameter that says so
    std::string value{};                    ///< and its value
    std::vector<TreeDecision> decisions{};  ///< one a tree or point, in the cloud's order
};

/// What somebody who knows the orchard should be asked: its answer is an option of the same numbering.
struct NumberingQuestion {
    Sentence words{};                        ///< a whole question
    std::vector<NumberingAnswer> answers{};  ///< two
    std::optional<std::size_t> tree{};       ///< into the decisions: one whose number the answers differ in
};

/// What number_trees() made of a cloud.
struct Numbering {
    std::vector<TreeDecision> decisions{};        ///< one a tree or point, in the cloud's order
    int rows = 0;                                 ///< how many were made out, or are known; 0 for none
    bool rows_known = false;                      ///< held against the block's rows in the orchard
    std::vector<std::string> row_names{};         ///< of the rows made out
    std::vector<RecoveredRow> made_out{};         ///< by row_names; empty where rows_known
    Sentence understood{};                        ///< a sentence: what was found of the rows
    std::optional<NumberingQuestion> question{};  ///< nothing where none would settle more
};

/// What of the wish does not go together.
Findings check_numbering(const NumberingWish& wish);

/// Throws Error (input) where the orchard has no such block.
void expect_block(const NumberingWish& wish, const Orchard& orchard);

/// The trees or points to number, and where they stand on the earth: one place a decision.
struct TreeCloud {
    std::vector<TreeDecision> decisions{};  ///< not numbered yet
    std::vector<LonLat> places{};           ///< as many
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
