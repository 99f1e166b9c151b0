// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

namespace pipward::seed {

/// A count of a lot: seeds germinated in all, up to a day.
struct GerminationPoint {
    double day = 0;      ///< since the lot's beginning
    int germinated = 0;  ///< never fewer than before
};

/// Which seed stands for half of those that germinate in the end.
enum class HalfRule {
    coolbear,  ///< the (N + 1) / 2 th (Coolbear, Francis & Grierson 1984, J. Exp. Bot. 35:1609)
    farooq,    ///< the N / 2 th (Farooq, Basra, Ahmad & Hafeez 2005, J. Integr. Plant Biol. 47:187)
};

/// Days until half of the seeds that germinated in the end had, between two counts on a straight line; none
/// germinated on day 0. A count that meets the half exactly is the answer. Nothing where none germinated.
/// `points` rise in day.
std::optional<double> days_to_half(std::span<const GerminationPoint> points, HalfRule rule);

/// Mean days to germination, each seed taken to have germinated on the day it was counted. Nothing for none.
std::optional<double> mean_germination_days(std::span<const GerminationPoint> points);

}  // namespace pipward::seed
