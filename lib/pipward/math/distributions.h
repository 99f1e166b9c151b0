// SPDX-License-Identifier: MIT
#pragma once

/// Chances and quantiles of the distributions that the rooms assume, by Boost.Math, which throws
/// std::domain_error or std::overflow_error outside of the ranges told; normal_density() throws nothing.
namespace pipward::math {

/// The chance that a standard normal value lies below `z`.
double normal_below(double z);
/// The z below which a standard normal value lies with this chance. Range of chance: above 0, below 1.
double normal_quantile(double chance);
/// The density, a unit of `off`, of a normal value `off` its mean. Range of sd: above 0.
double normal_density(double off, double sd);

/// The t below which Student's t lies with this chance. Range: chance above 0, below 1; freedom above 0.
double student_quantile(double chance, double freedom);

/// The value below which a beta distribution lies with this chance. Range: chance above 0, below 1; a and b
/// above 0.
double beta_quantile(double chance, double a, double b);

/// The chance that chi-square with so many degrees of freedom exceeds `value`, which is not negative.
double chi_square_above(double value, double freedom);

/// The chance of fewer than `wanted` hits among `of` independent tries, each of which hits with `share`.
/// Range: wanted and of not negative, share 0 to 1.
double binomial_fewer(int wanted, int of, double share);

/// The chance of just `hits` among `drawn` of a lot of `all`, of which `marked` are marked: without putting
/// any back. Range: max(0, drawn + marked - all) <= hits <= min(drawn, marked).
double hypergeometric(int hits, int marked, int drawn, int all);

}  // namespace pipward::math
