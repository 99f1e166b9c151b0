// SPDX-License-Identifier: MIT
#include "pipward/cross/ploidy_attrition.h"

namespace pipward::cross {
namespace {

// Seedlings from 100 flowers, the middle of each published range (Sato & Kanbe 2007: see the header).
constexpr double diploids = (456 + 772) / 2.0;
constexpr double triploid_donor = (24 + 93) / 2.0 / diploids;
constexpr double triploid_seed_parent = (1 + 13) / 2.0 / diploids;

}  // namespace

PloidyAttrition ploidy_attrition(std::optional<int> seed_parent, std::optional<int> donor) {
    const int seeding = seed_parent.value_or(2);
    const int giving = donor.value_or(2);
    PloidyAttrition result;
    result.factor = (seeding == 3 ? triploid_seed_parent : 1) * (giving == 3 ? triploid_donor : 1);
    result.triploid = seeding == 3 || giving == 3;
    const auto published = [](int sets) { return sets == 2 || sets == 3; };
    result.known = published(seeding) && published(giving) && !(seeding == 3 && giving == 3);
    return result;
}

}  // namespace pipward::cross
