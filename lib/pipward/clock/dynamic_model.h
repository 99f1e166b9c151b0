// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/value/quantity.h"

namespace pipward::clock {

/// The Dynamic Model of chill (Fishman, Erez & Couvillon 1987, J. Theor. Biol. 124:473 and 126:309;
/// Erez, Fishman, Linsley-Noakes & Allan 1990, Acta Hort. 276:165).
/// A running state: feed it one hourly reading after another, without gaps, from the start of a season.
/// Its constants were published for kelvin = °C + 273, not 273.15.
class DynamicModel {
  public:
    /// One hour at `temperature`, within -40..50 °C. Returns the portion completed in this hour,
    /// usually zero.
    ChillPortions hour(Celsius temperature);
    ChillPortions total() const { return total_; }  ///< completed since the start; never falls
    /// What cold has built up and warmth can still destroy; a portion is completed when it reaches 1.
    double precursor() const { return precursor_; }

  private:
    double precursor_ = 0;  ///< what is left unfixed at the end of the last hour
    ChillPortions total_;
};

/// The running total after each hour. Shape: as many as `hours`.
std::vector<ChillPortions> chill_portions(std::span<const Celsius> hours);

}  // namespace pipward::clock
