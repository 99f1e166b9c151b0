// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/season_pipeline.h"

namespace pipward::operation {

/// What the operations on crosses ask for besides the season; the defaults are those of CrossingAssumptions.
struct CrossingRequest : SeasonRequest {
    MethodChoice method = MethodChoice::best;
    bool write = true;
    bool own_counts = true;
    Share risk{cross::CrossingAssumptions{}.risk};
    Share confidence{cross::CrossingAssumptions{}.confidence};
    Share fruit_set = cross::CrossingAssumptions{}.fruit_set;
    double seeds_per_fruit = cross::CrossingAssumptions{}.seeds_per_fruit;
    double seeds_per_fruit_variance = cross::CrossingAssumptions{}.seeds_per_fruit_variance;
    Share seed_to_seedling = cross::CrossingAssumptions{}.seed_to_seedling;
    double worked_per_donor_flower = cross::CrossingAssumptions{}.worked_per_donor_flower;
    Milligrams pollen_per_flower = cross::CrossingAssumptions{}.pollen_per_flower;
    Share usable_germination = cross::CrossingAssumptions{}.usable_germination;
};

/// What the request states; where it wants so, moved by the orchard's own counts.
cross::CrossingAssumptions assumptions_of(const CrossingRequest& request, const Orchard& orchard);
std::vector<Bound<CrossingRequest>> crossing_parameters();

}  // namespace pipward::operation
