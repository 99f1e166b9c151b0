// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/scoring_progress.h"

#include "pipward/value/finding.h"

namespace pipward::bloom {

void detail::tell_scoring(const std::function<bool(double)>& progress, double share) {
    if (progress && !progress(share)) {
        throw Error(
            Trouble::cancelled,
            {Level::notice, "", "", "", "", say("The scoring of the bloom methods was stopped."), {}});
    }
}

}  // namespace pipward::bloom
