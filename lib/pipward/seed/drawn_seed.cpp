// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/drawn_seed.h"

#include <algorithm>

#include "pipward/seed/cross_tally.h"
#include "pipward/seed/planted.h"

namespace pipward::seed::detail {
namespace {

std::vector<const LotCourse*> oldest_first(const CrossTally& tally) {
    std::vector<const LotCourse*> lots;
    for (const auto& course : tally.lots) {
        lots.push_back(&course);
    }
    std::ranges::stable_sort(lots, {}, [](const LotCourse* c) { return there_since(*c).value_or(Day{}); });
    return lots;
}

}  // namespace

std::vector<SeedWithdrawal> seed_drawn(const std::map<std::string, int>& planted, const Orchard& orchard,
                                       const PlantingMark& mark) {
    std::vector<SeedWithdrawal> drawn;
    for (const auto& tally : tally_crosses(orchard, mark.planted_on)) {
        const auto seedlings = planted.find(tally.goal->code);
        int left = seedlings == planted.end() ? 0 : seedlings->second - withdrawn_without_place(tally);
        for (const auto* course : oldest_first(tally)) {
            const int seeds = std::min(left, germinated_in_lot(*course));
            if (seeds > 0) {
                drawn.push_back({0, course->lot->code, mark.planted_on, seeds, mark.remark});
                left -= seeds;
            }
        }
    }
    return drawn;
}

}  // namespace pipward::seed::detail
