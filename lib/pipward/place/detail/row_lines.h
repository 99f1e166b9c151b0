// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <span>
#include <vector>

/// Inside of the room: a line for each row, and each point's row. Lengths are metres.
namespace pipward::place::detail {

/// A point of a plane that is turned so that the rows lie along it.
struct RowPoint {
    double along = 0;   ///< in the direction of the numbering
    double across = 0;  ///< to the right of it
};

struct RowOfPoint {
    int row = 0;           ///< counted to the right
    double off = 0;        ///< across from its line, positive to the right
    double certainty = 0;  ///< that it belongs to that row, 0..1
    double before = 0;     ///< across from the row before; not a number where there is none
    double after = 0;      ///< and from the row after
};

struct FittedRows {
    double distance = 0;  ///< from row to row
    double noise = 0;     ///< standard deviation across
    std::vector<RowOfPoint> points;
    std::function<double(int row, double along)> line;  ///< how far across a row's line lies there
};

/// Rows bend together as a cubic; each may lean and bend a little of its own. Least squares with Huber's
/// weights, from the middle of the points outwards: our own method, because a bend that is known only near
/// the middle would move far points a row on. `distance` is right within a small part; at least one point.
FittedRows fit_rows(std::span<const RowPoint> points, double distance);

/// Standard deviation of values about 0, by the greater of the middle two of their sizes: with it the figures
/// of docs/method.md were counted. In their unit; 0 for none.
double median_noise(std::span<const double> offs);

/// Standard deviation of values of which only the part beyond whole `period`s is known: by the length of
/// their mean on the circle (Mardia & Jupp 2000, Directional Statistics, 3.5.3: wrapped normal), or by their
/// median where few can have been folded, below 0.12 periods. In their unit; 0 for none.
double folded_noise(std::span<const double> offs, double period);

/// How often a point between the rows belongs to none: common practice, no source.
inline constexpr double share_stray = 0.0005;

}  // namespace pipward::place::detail
