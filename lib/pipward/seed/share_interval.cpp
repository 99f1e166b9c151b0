// SPDX-License-Identifier: MIT
#include "pipward/seed/share_interval.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

namespace pipward::seed {

ShareInterval wilson_interval(int hits, int of, double confidence) {
    if (of <= 0) {
        return {};
    }
    const double z = boost::math::quantile(boost::math::normal(), (1 + confidence) / 2);
    const double n = of;
    const double share = hits / n;
    const double middle = share + z * z / (2 * n);
    const double half = z * std::sqrt(share * (1 - share) / n + z * z / (4 * n * n));
    const double whole = 1 + z * z / n;
    return {std::max(0.0, (middle - half) / whole), std::min(1.0, (middle + half) / whole)};
}

}  // namespace pipward::seed
