// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_start.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/quantile.h"
#include "pipward/place/detail/row_edge.h"

namespace pipward::place::detail {
namespace {

/// The first tree that rather has a position than none.
const PlacedPoint& first_point(const TakenRow& row) {
    const auto found =
        std::ranges::find_if(row.points, [](const auto& point) { return point.certainty >= 0.5; });
    return found == row.points.end() ? row.points.front() : *found;
}

double share_missing(std::span<const DecodedRow> rows) {
    std::vector<double> shares;
    for (const auto& row : rows) {
        shares.push_back(row.taken.scale.missing);
    }
    return math::median(shares);
}

/// A line across all rows, from the middle of the middle one on at right angles: where each row meets it,
/// metres along, and how far across that is.
std::vector<RowFoot> middles_of(const RowReading& found) {
    const auto& rows = found.trace.rows;
    const auto middle = rows.size() / 2;
    std::vector<RowFoot> feet(rows.size());
    feet[middle].along = rows[middle].curve.length() / 2;
    for (std::size_t row = middle + 1; row < rows.size(); ++row) {
        const auto from = rows[row - 1].curve.at(feet[row - 1].along);
        feet[row] = {rows[row].curve.foot(from).along, feet[row - 1].off + found.trace.gaps[row - 1]};
    }
    for (std::size_t row = middle; row-- > 0;) {
        const auto from = rows[row + 1].curve.at(feet[row + 1].along);
        feet[row] = {rows[row].curve.foot(from).along, feet[row + 1].off - found.trace.gaps[row]};
    }
    return feet;
}

std::vector<RowBeginning> beginnings_of(const std::vector<DecodedRow>& rows, const RowReading& found) {
    std::vector<RowBeginning> beginnings;
    const auto middle = middles_of(found);
    for (const auto& row : rows) {
        const auto at = static_cast<std::size_t>(row.taken.row);
        const double spacing = found.spacings[at];
        const auto& scale = row.taken.scale;
        const auto trees = std::min<double>(static_cast<double>(row.taken.members.size()), 12);
        const double doubt = spacing * std::hypot(found.along_noise / std::sqrt(trees), found.wander);
        const double along = found.phases[at].along_of(scale.origin + scale.step * row.start);
        beginnings.push_back({middle[at].off, along - middle[at].along, spacing, doubt});
    }
    return beginnings;
}

}  // namespace

FoundStarts find_starts(std::vector<DecodedRow>& rows, const RowReading& found, const RecoveryRule& rule) {
    for (auto& row : rows) {
        const auto& first = first_point(row.taken);
        row.start = first.number;
        row.certainty = rule.begin == RowBegin::first_tree ? first.certainty : 0;
    }
    if (rule.begin == RowBegin::first_tree) {
        return {};
    }
    auto beginnings = beginnings_of(rows, found);
    const auto edge = rule.begin == RowBegin::bent_edge
                          ? find_bent_edge(beginnings, share_missing(rows))
                          : find_edge(beginnings, share_missing(rows), rule.begin == RowBegin::edge);
    if (!edge.clear) {
        return {false, rule.begin == RowBegin::detect};
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].start -= std::max(beginnings[i].missing, 0);
        rows[i].certainty = beginnings[i].certainty;
    }
    return {true, edge.late_rows};
}

}  // namespace pipward::place::detail
