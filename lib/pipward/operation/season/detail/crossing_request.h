// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/season/detail/season_request.h"

namespace pipward::operation::detail {

/// What the operations on crosses ask for besides the season; the defaults are those of CrossingAssumptions.
struct CrossingRequest : SeasonRequest {
    season::MethodChoice method = season::MethodChoice::best;
    bool keep = true;
    bool own_counts = true;
    Share risk{cross::CrossingAssumptions{}.risk};
    Share confidence{cross::CrossingAssumptions{}.confidence};
    Share fruit_set = cross::CrossingAssumptions{}.fruit_set;
    double seeds_per_fruit = cross::CrossingAssumptions{}.seeds_per_fruit;
    double seeds_per_fruit_variance = cross::CrossingAssumptions{}.seeds_per_fruit_variance;
    Share seed_to_seedling = cross::CrossingAssumptions{}.seed_to_seedling;
    double flowers_per_donor_flower = cross::CrossingAssumptions{}.flowers_per_donor_flower;
    Milligrams pollen_per_flower = cross::CrossingAssumptions{}.pollen_per_flower;
    double fruit_set_sd = cross::CrossingAssumptions{}.fruit_set_sd;
    Share usable_germination = cross::CrossingAssumptions{}.usable_germination;
};

season::PlanWish plan_wish(const CrossingRequest& request);
std::vector<Bound<CrossingRequest>> crossing_parameters();

}  // namespace pipward::operation::detail
