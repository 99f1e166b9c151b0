// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// Inside of the room: from metres along a row to positions, where spacings may wander. Lengths are metres.
namespace pipward::place::detail {

/// How far along a row a position lies: places between two knots by a straight line, beyond them straight on.
class RowPhase {
  public:
    RowPhase() = default;
    RowPhase(std::vector<double> along, std::vector<double> number);

    /// In positions from the row's beginning, whole at a position.
    double number_at(double along) const;
    double along_of(double number) const;

    /// Metres along at which the row starts over: beyond, it cannot be told how many positions were passed.
    std::vector<double> breaks{};
    double unevenness = 0;  ///< root mean square deviation of windows from even positions, in standard errors
    double wander = 0;      ///< and in positions, less what the noise accounts for

  private:
    std::vector<double> along_{0, 1};
    std::vector<double> number_{0, 1};
};

/// Even positions, or, with `wandering`, such as follow the trees window by window: the phase of a window's
/// trees against the spacing (Mardia & Jupp 2000, Directional Statistics, 2.2), turned on from window to
/// window. `noise` is the standard deviation of a tree along the row.
RowPhase phase_of(std::span<const double> along, double spacing, double noise, bool wandering);

}  // namespace pipward::place::detail
