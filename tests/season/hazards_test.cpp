// SPDX-License-Identifier: MIT
#include "pipward/season/hazards.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pipward::season {
namespace {

TEST(Cautions, OfEveryHazardAreToldInTheOrderOfTheList) {
    using enum Hazard;
    const std::set all{seeds,  peroxide,    bleach, ladders,           allergy,
                       sprays, fire_blight, tools,  protected_parents, moving};
    const auto cautions = cautions_about(all);
    ASSERT_EQ(cautions.size(), all.size());
    EXPECT_TRUE(std::ranges::is_sorted(cautions, {}, &Caution::hazard));
}

}  // namespace
}  // namespace pipward::season
