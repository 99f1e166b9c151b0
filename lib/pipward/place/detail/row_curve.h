// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/math/plane_point.h"

/// Inside of the room: the line of a row that may bend.
namespace pipward::place::detail {

/// Where a point lies seen from a row.
struct RowFoot {
    double along = 0;  ///< metres along the row's line, 0 at its first tree
    double off = 0;    ///< metres across, positive to the right
};

/// A smooth line through a row's trees: a cubic B-spline (de Boor 1978, A Practical Guide to Splines) over
/// the row's mean direction with a knot about every `knot` metres, by least squares with Huber's weights. It
/// goes straight on at both ends.
class RowCurve {
  public:
    /// `trees` are the row's, three or more; `ahead` the direction in which it is numbered.
    RowCurve(std::span<const math::PlanePoint> trees, math::PlanePoint ahead, double knot);

    RowFoot foot(math::PlanePoint point) const;
    math::PlanePoint at(double along) const;
    double length() const { return table_.back(); }
    std::size_t coefficients() const { return height_.size(); }

  private:
    struct Height {
        double value = 0;
        double slope = 0;
    };
    Height height(double x) const;
    double along_of(double x) const;
    double x_of(double along) const;
    void fit(std::span<const math::PlanePoint> trees, double knot);
    void measure();

    math::PlanePoint origin_{};
    math::PlanePoint ahead_{};
    math::PlanePoint left_{};
    double low_ = 0;  // x of the first tree and of the last
    double high_ = 0;
    double width_ = 1;              // of a knot's interval
    std::vector<double> height_{};  // coefficients
    std::vector<double> table_{};   // along, at even steps of x from low_ on
    double table_step_ = 1;
};

}  // namespace pipward::place::detail
