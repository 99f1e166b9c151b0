// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/season_pipeline.h"

namespace pipward {

/// What the operations on crosses ask for besides the season; the defaults are those of CrossingAssumptions.
struct CrossingRequest : SeasonRequest {
    MethodChoice method = MethodChoice::best;
    bool write = true;
    bool own_counts = true;
    Share risk{CrossingAssumptions{}.risk};
    Share confidence{CrossingAssumptions{}.confidence};
    Share fruit_set = CrossingAssumptions{}.fruit_set;
    double seeds_per_fruit = CrossingAssumptions{}.seeds_per_fruit;
    double seeds_per_fruit_variance = CrossingAssumptions{}.seeds_per_fruit_variance;
    Share seed_to_seedling = CrossingAssumptions{}.seed_to_seedling;
    double worked_per_donor_flower = CrossingAssumptions{}.worked_per_donor_flower;
    Milligrams pollen_per_flower = CrossingAssumptions{}.pollen_per_flower;
    Share usable_germination = CrossingAssumptions{}.usable_germination;
};

/// What the request states; where it wants so, moved by the orchard's own counts.
CrossingAssumptions assumptions_of(const CrossingRequest& request, const Orchard& orchard);
std::vector<Bound<CrossingRequest>> crossing_parameters();

}  // namespace pipward
