// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "pipward/record/orchard.h"

namespace pipward::seed {

/// Days from full bloom until the seed is full-grown and its coat turns brown, where the accession does not
/// tell: the embryo is full-size by about 90 to 110 days (Tukey; Janick et al. 1996, from memory).
inline constexpr int usual_seed_ripe_days = 110;
/// After that the fruit may hang so long before drop, theft or rot is more likely than not; late harvest also
/// lowered germination in one cultivar. Common practice, no source.
inline constexpr int fruit_may_hang_days = 21;

/// When the fruit of a tree may be harvested for its seed.
struct HarvestDays {
    Day from;            ///< the seed is ripe even if bloom was as late as it may have been
    Day to;              ///< late limit
    int ripe_days = 0;   ///< counted from full bloom
    bool usual = false;  ///< whether ripe_days is the rule for all, not the accession's own
};

/// From the full bloom's early and late end (the same day where it was noted).
HarvestDays harvest_days(const Accession& seed_parent, Day full_early, Day full_late);

}  // namespace pipward::seed
