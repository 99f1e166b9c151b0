// SPDX-License-Identifier: MIT
#include "pipward/operation/season/detail/crossing_request.h"

namespace pipward::operation::detail {

season::PlanWish plan_wish(const CrossingRequest& request) {
    const cross::CrossingAssumptions stated{.risk = request.risk.value,
                                            .confidence = request.confidence.value,
                                            .fruit_set = request.fruit_set,
                                            .seeds_per_fruit = request.seeds_per_fruit,
                                            .seeds_per_fruit_variance = request.seeds_per_fruit_variance,
                                            .seed_to_seedling = request.seed_to_seedling,
                                            .flowers_per_donor_flower = request.flowers_per_donor_flower,
                                            .pollen_per_flower = request.pollen_per_flower,
                                            .usable_germination = request.usable_germination,
                                            .fruit_set_sd = request.fruit_set_sd,
                                            .fruit_set_of_genus = {}};
    return {request.method, stated, request.own_counts};
}

std::vector<Bound<CrossingRequest>> crossing_parameters() {
    using Request = CrossingRequest;
    return season_parameters<Request>({
        method_parameter(&Request::method),
        keep_parameter(&Request::keep),
        parameter(&Request::risk, "risk", "Risk", "Accepted risk of missing a deadline.").between(0.01, 0.5),
        parameter(&Request::confidence, "confidence", "Confidence",
                  "Probability with which the wanted number of seedlings is to be reached.")
            .between(0.5, 0.999),
        parameter(&Request::own_counts, "own-counts", "Own counts",
                  "Whether the orchard's own counts of fruit, seed and germination update the figures below.")
            .advanced(),
        parameter(&Request::fruit_set, "fruit-set", "Fruit set",
                  "Share of pollinated flowers that set fruit, before the orchard's own counts.")
            .between(0.01, 1.0)
            .advanced(),
        parameter(&Request::fruit_set_sd, "fruit-set-sd", "Spread of fruit set",
                  "Standard deviation of fruit set from cross to cross, before the orchard's own counts.")
            .in("0 to 1")
            .between(0.0, 0.5)
            .advanced(),
        parameter(&Request::seeds_per_fruit, "seeds-per-fruit", "Seeds per fruit",
                  "Mean sound seeds in a fruit, before the orchard's own counts.")
            .in("seeds")
            .between(0.1, 20.0)
            .advanced(),
        parameter(&Request::seeds_per_fruit_variance, "seeds-per-fruit-variance",
                  "Variance of seeds per fruit", "Variance of the sound seeds in a fruit.")
            .in("seeds²")
            .between(0.1, 100.0)
            .advanced(),
        parameter(&Request::seed_to_seedling, "seed-to-seedling", "Seed to seedling",
                  "Share of sound seeds that become seedlings, before the orchard's own germination counts.")
            .between(0.01, 1.0)
            .advanced(),
        parameter(&Request::flowers_per_donor_flower, "flowers-per-donor-flower", "Flowers per donor flower",
                  "Flowers that can be pollinated with the pollen of one donor flower at full germination.")
            .in("flowers")
            .between(0.1, 100.0)
            .advanced(),
        parameter(&Request::pollen_per_flower, "pollen-per-flower", "Pollen per flower",
                  "Raw pollen of one donor flower, anther dust included.")
            .between(0.05, 10.0)
            .advanced(),
        parameter(&Request::usable_germination, "usable-germination", "Usable germination",
                  "Stores in which the germination of the pollen would fall below this are not used.")
            .between(0.01, 0.9)
            .advanced(),
    });
}

}  // namespace pipward::operation::detail
