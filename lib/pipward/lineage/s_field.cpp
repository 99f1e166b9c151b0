// SPDX-License-Identifier: MIT
#include "pipward/lineage/s_field.h"

#include <algorithm>
#include <cmath>

namespace pipward::lineage {

double chance_of_none(int flowers, double set) {
    return std::pow(1 - set, flowers);
}

double chance_by_leak(CrossCount count, double leak) {
    if (count.set <= 0) {
        return 1;
    }
    double tail = 0;
    double term = std::pow(1 - leak, count.flowers);
    for (int k = 0; k <= count.flowers; ++k) {
        tail += k >= count.set ? term : 0;
        term *= leak / (1 - leak) * (count.flowers - k) / (k + 1);
    }
    return std::min(1.0, tail);
}

FieldLikelihood field_likelihood(CrossCount count, const SetChances& chances) {
    if (count.set == 0) {
        return {chances.mishap + (1 - chances.mishap) * chance_of_none(count.flowers, chances.set), 1};
    }
    return {1, chance_by_leak(count, chances.leak)};
}

}  // namespace pipward::lineage
