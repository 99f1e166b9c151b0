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
                                            .worked_per_donor_flower = request.worked_per_donor_flower,
                                            .pollen_per_flower = request.pollen_per_flower,
                                            .usable_germination = request.usable_germination};
    return {request.method, stated, request.own_counts};
}

std::vector<Bound<CrossingRequest>> crossing_parameters() {
    using Request = CrossingRequest;
    return season_parameters<Request>({
        method_parameter(&Request::method),
        write_parameter(&Request::write),
        parameter(&Request::risk, "risk", "Risk", "The chance of being too late that a deadline may leave.")
            .between(0.01, 0.5),
        parameter(&Request::confidence, "confidence", "Confidence",
                  "How sure the wanted number of seedlings is to be.")
            .between(0.5, 0.999),
        parameter(&Request::own_counts, "own-counts", "Own counts",
                  "Whether this orchard's own counts of fruit, seed and sprouts move the figures below.")
            .advanced(),
        parameter(&Request::fruit_set, "fruit-set", "Fruit set",
                  "Share of worked flowers that set fruit, before the orchard's own counts.")
            .between(0.01, 1.0)
            .advanced(),
        parameter(&Request::seeds_per_fruit, "seeds-per-fruit", "Seeds per fruit",
                  "Mean sound seeds in a fruit, before the orchard's own counts.")
            .in("seeds")
            .between(0.1, 20.0)
            .advanced(),
        parameter(&Request::seeds_per_fruit_variance, "seeds-per-fruit-variance",
                  "Variance of seeds per fruit", "Variance of the sound seeds in a fruit.")
            .in("seeds squared")
            .between(0.1, 100.0)
            .advanced(),
        parameter(&Request::seed_to_seedling, "seed-to-seedling", "Seed to seedling",
                  "Share of sound seeds that become seedlings, before the orchard's own counts of sprouts.")
            .between(0.01, 1.0)
            .advanced(),
        parameter(&Request::worked_per_donor_flower, "worked-per-donor-flower", "Flowers served",
                  "Flowers that the pollen of one donor flower serves at full germination.")
            .in("flowers")
            .between(0.1, 100.0)
            .advanced(),
        parameter(&Request::pollen_per_flower, "pollen-per-flower", "Pollen per flower",
                  "Raw pollen of one donor flower, anther dust included.")
            .between(0.05, 10.0)
            .advanced(),
        parameter(&Request::usable_germination, "usable-germination", "Usable germination",
                  "A store in which less pollen than this would germinate is not planned on.")
            .between(0.01, 0.9)
            .advanced(),
    });
}

}  // namespace pipward::operation::detail
