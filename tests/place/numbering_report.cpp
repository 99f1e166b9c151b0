// SPDX-License-Identifier: MIT
// How many trees are numbered right, wrong or left open on orchards whose truth is known: the table of
// docs/method.md. `full` tries every combination many times over.
#include <fmt/format.h>

#include <array>

#include "place/made_orchard.h"

namespace pipward::testing {
namespace {

struct Sum {
    int right = 0;
    int wrong = 0;
    int open = 0;
    int odd = 0;
    void add(const Score& score) {
        right += score.right;
        wrong += score.wrong;
        open += score.open;
        odd += score.wrong_oddities;
    }
};

void report(double ratio_low, double ratio_high, int seeds, bool per_axis) {
    for (const double missing : {0.0, 0.1, 0.2}) {
        Sum sum;
        int orchards = 0;
        for (const double distance : {3.0, 4.0, 5.0}) {
            for (const double spacing : {1.0, 1.5, 2.0, 2.5, 3.0}) {
                for (const double noise : {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.75, 1.0, 1.5, 2.0}) {
                    const double ratio = noise / spacing;
                    if (ratio <= ratio_low || ratio > ratio_high + 1e-9) {
                        continue;
                    }
                    for (int seed = 1; seed <= seeds; ++seed) {
                        OrchardForm form;
                        form.row_distance = distance;
                        form.spacing = spacing;
                        form.noise = noise * (per_axis ? std::sqrt(2.0) : 1.0);
                        form.missing = missing;
                        form.seed = static_cast<std::uint64_t>(seed);
                        const auto orchard = made_orchard(form);
                        RecoveryRule rule;
                        rule.bearing = 70;
                        const auto got = recover_rows(orchard.seen, rule);
                        const auto score = score_of(orchard, got);
                        sum.add(score);
                        ++orchards;
                        if (score.wrong > 0 || score.wrong_oddities > 0) {
                            fmt::print(stderr,
                                       "D {} s {} noise {} missing {} seed {}: right {} wrong {} open {} odd "
                                       "{}; found D {:.3f} s {:.3f} noise {:.3f} {:.3f}\n",
                                       distance, spacing, noise, missing, seed, score.right, score.wrong,
                                       score.open, score.wrong_oddities, got.row_distance.value,
                                       got.spacing.value, got.noise_across.value, got.noise_along.value);
                        }
                    }
                }
            }
        }
        const double all = sum.right + sum.wrong + sum.open;
        fmt::print("| {:.2f}-{:.2f}{} | {:.0f} % | {} | {} | {:.2f} % | {} | {:.2f} % | {} |\n", ratio_low,
                   ratio_high, per_axis ? " each axis" : "", 100 * missing, orchards, all,
                   100 * sum.right / all, sum.wrong, 100 * sum.open / all, sum.odd);
    }
}

}  // namespace
}  // namespace pipward::testing

int main(int count, char**) {
    const int seeds = count > 1 ? 10 : 2;
    const std::array<double, 7> bounds{0, 0.1, 0.15, 0.2, 0.25, 0.35, 2.0};
    for (std::size_t i = 1; i < bounds.size(); ++i) {
        pipward::testing::report(bounds[i - 1], bounds[i], seeds, false);
    }
    pipward::testing::report(0.2, 0.25, seeds, true);
}
