// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/adopting.h"

namespace pipward::intake::detail {
namespace {

bool is_of_table(const std::string& table, const AdoptRow& row) {
    const bool is_point = !row.is_line && !row.is_area;
    return table == "accession" || row.points.empty() || (table == "tree" && is_point) ||
           (table == "tree_row" && row.is_line) || (table == "block" && row.is_area);
}

Sentence shape_words(const AdoptRow& row) {
    return row.is_area ? say("It is an area.") : row.is_line ? say("It is a line.") : say("It is a point.");
}

void judge_shape(Adoption& adoption, AdoptRow& row) {
    if (!is_of_table(adoption.table, row)) {
        row.fate = Fate::left_out;
        row.why = shape_words(row);
        adoption.complain(row, {Level::warning, {}, {}, row.why, say("It was left out.")});
    } else if (row.has_holes) {
        adoption.complain(
            row, {Level::warning, {}, {}, say("The area has holes."), say("Only its outline is imported.")});
    }
}

}  // namespace

void judge_shapes(Adoption& adoption) {
    std::string before;
    for (auto& row : adoption.rows) {
        judge_shape(adoption, row);
        if (row.feature == before && row.fate != Fate::left_out) {
            adoption.complain(row, {Level::error,
                                    {},
                                    {},
                                    say("It has several parts, but one row stands in one place."),
                                    say("Split it into features, each with a name of its own.")});
        }
        before = row.feature;
    }
}

}  // namespace pipward::intake::detail
