// SPDX-License-Identifier: MIT
// Prints how well each method forecasts cherry bloom at Washington: the figures of the method notes.
// Not a test: built with the tests, run by hand. With the word "ladder" the dates go through the stage
// ladder.
#include <fmt/core.h>

#include <chrono>
#include <cstdlib>
#include <string>

#include "pipward/bloom/forward.h"
#include "pipward/bloom/skill.h"
#include "washington.h"

namespace pipward::testing {
namespace {

std::string lead_text(const bloom::SkillScore& score) {
    if (score.training_seasons) {
        return fmt::format("{} seasons", *score.training_seasons);
    }
    return score.lead_days ? fmt::format("{} days", *score.lead_days) : "known";
}

void print(const std::vector<bloom::SkillScore>& scores) {
    fmt::print("{:10} {:16} {:>6} {:>6} {:>6} {:>7} {:>7} {:>8}\n", "weather", "method", "rmse", "mae",
               "bias", "in 3 d", "in 5 d", "in p10-90");
    for (const auto& score : scores) {
        fmt::print("{:10} {:16} {:6.2f} {:6.2f} {:6.2f} {:6.0f}% {:6.0f}% {:7.0f}%  n {} in {}{}\n",
                   lead_text(score), bloom::to_text(score.method), score.rmse, score.mae, score.bias,
                   100 * score.within_3_days, 100 * score.within_5_days, 100 * score.coverage_80,
                   score.observations, score.seasons, score.chosen ? " *" : "");
    }
}

// Forward in time, as bloom_report does it: only earlier springs teach and lend their days.
void print_forward(const Washington& washington) {
    auto orchard = peak_bloom_notes(washington);
    for (auto& seen : orchard.bloom_observations) {
        seen.open_percent.reset();
    }
    orchard.accessions.push_back({});
    orchard.accessions.back().name = "Yoshino cherry";
    constexpr Day long_ago_over{1000000};
    const Station station;
    const bloom::ForwardGround ground{orchard, station, washington_latitude, long_ago_over,
                                      washington.seasons};
    const bloom::ForwardRequest request{{{2, 1}, {2, 15}, {3, 1}, {3, 15}, {4, 1}}, 1960, {}};
    for (const auto& score : bloom::forward_scores(bloom::forward_cases(ground, request))) {
        if (score.accession.empty()) {
            fmt::print(
                "issued {:02}-{:02} {:16} rmse {:5.2f} bias {:5.2f} crps {:5.2f} in p10-90 {:3.0f}% n {}\n",
                score.issued.month, score.issued.day, bloom::to_text(score.method), score.rmse, score.bias,
                score.crps, 100 * score.inside_80, score.n);
        }
    }
}

int report(bool by_ladder) {
    const auto washington = read_washington();
    if (!washington) {
        fmt::print("The shared file bloom/washington-76-seasons.txt is not here.\n");
        return 3;
    }
    const auto curves = curves_of(washington->seasons, washington_latitude);
    const auto observations =
        by_ladder ? bloom::observe(peak_bloom_notes(*washington), {}, Hemisphere::north, {1000000}, curves)
                        .observations
                  : peak_bloom_days(*washington);
    for (const int training : {3, 5, 8, 15}) {
        const bloom::SkillRequest request{
            training == 3 ? std::vector<int>{0, 14, 30, 60} : std::vector<int>{}, training, false};
        print(bloom::score_methods(observations, curves, washington->seasons, washington_latitude, {},
                                   request));
    }
    print_forward(*washington);
    const auto model = bloom::fit(bloom::BloomMethod::averaged, observations, curves, {});
    fmt::print("season sd {:.2f} own sd {:.2f}\n", model.season_sd_days, model.own_sd_days);
    for (std::size_t j = 0; j < model.weights.size(); ++j) {
        if (model.weights[j] > 0.03) {
            fmt::print("{:6.3f} {}\n", model.weights[j],
                       bloom::structure_name(bloom::BloomMethod::averaged, static_cast<int>(j)));
        }
    }
    return 0;
}

}  // namespace
}  // namespace pipward::testing

int main(int count, char** words) {
    return pipward::testing::report(count > 1 && std::string(words[1]) == "ladder");
}
