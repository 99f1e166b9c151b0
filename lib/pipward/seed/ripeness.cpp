// SPDX-License-Identifier: MIT
#include "pipward/seed/ripeness.h"

#include <algorithm>

namespace pipward::seed {

HarvestDays harvest_days(const Accession& seed_parent, Day full_early, Day full_late) {
    const int ripe = seed_parent.seed_ripe_days.value_or(usual_seed_ripe_days);
    const Day from = full_late + ripe;
    return {from, std::max(from, full_early + ripe + fruit_may_hang_days), ripe, !seed_parent.seed_ripe_days};
}

}  // namespace pipward::seed
