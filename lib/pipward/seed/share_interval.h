// SPDX-License-Identifier: MIT
#pragma once

namespace pipward::seed {

struct ShareInterval {
    double low = 0;
    double high = 1;
};

/// What the true share may be after `hits` of `of`: Wilson's score interval (Wilson 1927, J. Amer. Stat.
/// Assoc. 22:209; recommended by Newcombe 1998, Stat. Med. 17:857). Right for small counts and for none or
/// all of them. Range: 0 <= hits <= of; confidence above 0, below 1. Of nothing: 0 to 1.
ShareInterval wilson_interval(int hits, int of, double confidence = 0.95);

}  // namespace pipward::seed
