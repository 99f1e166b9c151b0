// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <functional>
#include <span>
#include <vector>

#include "pipward/place/row_pattern.h"

/// Inside of the room: a line for each row, and each point's row.
namespace pipward::place {

struct RowOfPoint {
    int row = 0;           ///< counted in the direction of y
    double off = 0;        ///< across from its line, positive to greater y
    double certainty = 0;  ///< that it belongs to that row
    double before = 0;     ///< across from the row before; not a number where there is none
    double after = 0;      ///< and from the row after
};

struct FittedRows {
    double distance = 0;
    double noise = 0;  ///< standard deviation across
    std::vector<RowOfPoint> points;
    std::function<double(int row, double x)> line;  ///< y of a row's line
};

/// `points` have x along the rows and y across them. Rows bend together as a cubic; each may lean and bend a
/// little of its own.
FittedRows fit_rows(std::span<const PlanePoint> points, double distance);

/// Standard deviation of values of which only the part beyond whole `period`s is known, by the length of
/// their mean on the circle; from the median where few can have been folded.
double folded_noise(std::span<const double> offs, double period);

/// How often a point between the rows belongs to none.
inline constexpr double share_stray = 0.0005;

/// The density of normal noise.
inline double bell(double off, double noise) {
    const double z = off / noise;
    return std::exp(-0.5 * z * z) / (noise * 2.5066282746310002);
}

/// The median of absolute values, times what makes it a standard deviation.
double median_noise(std::span<const double> offs);

}  // namespace pipward::place
