// SPDX-License-Identifier: MIT
#pragma once

#include <span>

/// Inside of the room: how far points lie from their rows and positions.
namespace pipward::place::detail {

/// Standard deviation of values about 0, by the greater of the middle two of their sizes: with it the figures
/// of docs/method.md were counted. In their unit; 0 for none.
double median_noise(std::span<const double> offs);

/// Standard deviation of values of which only the part beyond whole `period`s is known: by the length of
/// their mean on the circle (Mardia & Jupp 2000, Directional Statistics, 3.5.3: wrapped normal), or by their
/// median where few can have been folded, below 0.12 periods. In their unit; 0 for none.
double folded_noise(std::span<const double> offs, double period);

/// The share of values whose error is three times as great as that of the others, by how many lie beyond
/// three standard deviations; 0 where no more do than would of normal values, a fifth at the most.
double heavy_tails(std::span<const double> offs, double sd);

/// Density, 1 / unit of `off`, of an error of which this share is three times as great.
double error_density(double off, double sd, double tails);

}  // namespace pipward::place::detail
