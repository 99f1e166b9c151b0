// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/place/row_layout.h"

/// Rows and positions recovered from a cloud of tree points: docs/method.md tells how and how well.
namespace pipward::place {

/// From where the positions of rows are counted.
enum class RowBegin {
    detect,     ///< from the block's common edge where the trees show it; open where they do not
    edge,       ///< from the block's common edge, also where first trees are missing
    bent_edge,  ///< from an edge that turns once, as at a cut corner
    first_tree  ///< each row from its own first tree
};

/// Whether a row without a tree has a number.
enum class EmptyRows {
    ask,    ///< open where there may be one
    count,  ///< it has
    skip    ///< it has none: the gap is an alley
};

/// What is known beforehand of the rows to be found.
struct RecoveryRule {
    std::optional<double>
        bearing_deg{};  ///< roughly, of the numbering, clockwise from north; found, northwards, where unknown
    std::optional<Metres> row_distance{};  ///< within 15 %; found where unknown
    std::optional<Metres> spacing{};       ///< within 15 %; found where unknown
    Side rows_to = Side::right;    ///< to which side, seen in the direction of the numbering, rows count
    RowBegin begin = RowBegin::detect;  ///< from where the positions of each row count
    EmptyRows empty_rows = EmptyRows::ask;  ///< whether a row without trees has a number
    /// Below it a tree is left open; a tenth of the doubt is borne where the noise is more than a fifth or so
    /// of the spacing or of the row distance, for there the confidence itself is less sure.
    double confidence = 0.97;
};

/// What was decided of one tree.
struct NumberedTree {
    int row = 0;              ///< 0 for the first; without meaning where `placed` is false
    int position = 0;         ///< counted from the row's first position, which is 0
    bool placed = false;      ///< a likeliest row and position are known
    double off_row = 0;       ///< metres across from the row's line, not negative
    double off_position = 0;  ///< metres along from the position, positive in the direction of counting
    double confidence = 0;    ///< that row and position are right, 0..1
    Sentence doubt{};         ///< why it is left open; empty where it is decided
};

/// A row that was made out.
struct RecoveredRow {
    std::vector<LonLat> line{};  ///< from its first position to its last
    Metres spacing{};            ///< its own, by its trees
    int positions = 0;  ///< 1 or more, up to the last sure tree; 0 where too few trees showed the row
};

/// One answer to a question, and what follows from it.
struct RowAnswer {
    Sentence words{};                   ///< what is the case then
    std::string option{};               ///< the parameter of row-number that says so
    std::string value{};                ///< and its value
    std::vector<NumberedTree> trees{};  ///< as many as points were given: their numbers then
};

/// The question whose answer settles most.
struct RowQuestion {
    Sentence words{};                  ///< a whole question
    std::vector<RowAnswer> answers{};  ///< two: those that give numbers first
    std::optional<std::size_t> tree{};  ///< one whose number the answers differ in; none where none has two
};

/// Rows, and what was decided of each tree. All is 0 or empty but `trees` and `findings` where no rows are
/// found.
struct Recovery {
    double bearing_deg = 0;  ///< of the numbering, clockwise from true north, 0..360
    Metres row_distance{};   ///< across, from row to row
    Metres spacing{};        ///< of all rows together
    Metres noise_across{};   ///< standard deviation of the points from their rows
    Metres noise_along{};    ///< and from their positions
    int rows = 0;            ///< how many were made out, or are known
    std::vector<RecoveredRow>
        made_out{};                     ///< by their numbers; empty where rows were known, or none was found
    std::vector<NumberedTree> trees{};  ///< as many as points were given
    Findings findings{};                ///< warnings: what could not be made out, and what to do
    std::optional<RowQuestion> question{};  ///< nothing where none would settle more
};

/// From the points alone. Rows must run side by side; they may bend, fan out and stand unevenly apart. Where
/// two readings are likely all that they differ in is left open, and asked.
Recovery recover_rows(std::span<const LonLat> trees, const RecoveryRule& rule);

/// The same for rows whose lines and spacing are known: `row` counts in the order of `rows`. Only the
/// confidence of the rule is used. Trees off every row are left open.
struct KnownRow {
    std::vector<GroundPoint> line;  ///< from the first position on; heights are passed over
    Metres spacing;                 ///< from position to position, above 0
    int positions = 0;              ///< how many, 1 or more
};
/// The confidence of the rule is used and no more of it; see KnownRow.
Recovery match_rows(std::span<const LonLat> trees, std::span<const KnownRow> rows, const RecoveryRule& rule);

}  // namespace pipward::place
