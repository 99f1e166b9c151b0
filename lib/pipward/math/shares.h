// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

/// What counts tell of true shares, and whether two of them differ.
namespace pipward::math {

/// Between these a true share lies with a stated confidence. At first: nothing is known.
struct ShareInterval {
    double low = 0;   ///< 0..1, at most `high`
    double high = 1;  ///< 0..1
};

/// What the true share may be after `hits` of `of`: Wilson's score interval (Wilson 1927, J. Amer. Stat.
/// Assoc. 22:209; recommended by Newcombe 1998, Stat. Med. 17:857). Right for small counts and for none or
/// all of them. Range: 0 <= hits <= of; confidence above 0, below 1. Of nothing: 0 to 1.
ShareInterval wilson_interval(int hits, int of, double confidence = 0.95);

/// Range: 0 <= hits <= of.
struct HitsOf {
    int hits = 0;  ///< that came out as asked
    int of = 0;    ///< tried; 0 where nothing was

    /// 0..1; 0 where nothing was tried.
    double share() const { return of == 0 ? 0 : static_cast<double>(hits) / of; }
};

/// How often chance alone would make two shares differ as much or more, both having one true share: Fisher's
/// exact test, two-sided by summing every outcome that is no likelier than the one seen (Fisher 1935, The
/// Design of Experiments). 1 where one of them is of nothing.
double fisher_exact(HitsOf a, HitsOf b);

/// The smallest p that two lots of these sizes could ever give: all of one, none of the other.
double smallest_possible_p(int a, int b);

/// How many of each of two lots would show two true shares to differ at p < `alpha` (two-sided) with this
/// power: normal curve (Fleiss, Levin & Paik 2003, Statistical Methods for Rates and Proportions, ch. 4,
/// without continuity correction; from memory), rounded up. The shares differ.
int number_to_settle(double share, double other, double alpha = 0.05, double power = 0.8);

/// Each p made good for having looked at all of them (Holm 1979, Scand. J. Stat. 6:65), in the same order.
std::vector<double> holm_adjusted(std::span<const double> p);

}  // namespace pipward::math
