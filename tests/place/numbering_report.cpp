// SPDX-License-Identifier: MIT
// How many trees are numbered right, wrong or left open on orchards whose truth is known: the table of
// docs/method.md.
#include <fmt/format.h>

#include <vector>

#include "place/made_orchard.h"

namespace pipward::testing {
namespace {

struct Range {
    double low;
    double high;  ///< of noise / spacing
    bool each_axis = false;
};

std::vector<OrchardForm> forms_in(const Range& range, double missing) {
    std::vector<OrchardForm> forms;
    for (const double distance : {3.0, 4.0, 5.0}) {
        for (const double spacing : {1.0, 1.5, 2.0, 2.5, 3.0}) {
            for (const double noise : {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.75, 1.0, 1.5, 2.0}) {
                if (noise / spacing > range.low && noise / spacing <= range.high + 1e-9) {
                    OrchardForm form;
                    form.row_distance = distance;
                    form.spacing = spacing;
                    form.noise = noise * (range.each_axis ? std::sqrt(2.0) : 1.0);
                    form.missing = missing;
                    forms.push_back(form);
                }
            }
        }
    }
    return forms;
}

Score numbered(OrchardForm form, int seeds) {
    Score sum;
    for (int seed = 1; seed <= seeds; ++seed) {
        form.seed = static_cast<std::uint64_t>(seed);
        const auto orchard = made_orchard(form);
        place::RecoveryRule rule;
        rule.bearing_deg = 70;
        sum += score_of(orchard, place::recover_rows(orchard.seen, rule));
    }
    return sum;
}

void report(const Range& range, int seeds) {
    for (const double missing : {0.0, 0.1, 0.2}) {
        Score sum;
        for (const auto& form : forms_in(range, missing)) {
            sum += numbered(form, seeds);
        }
        fmt::print("| {:.2f} to {:.2f}{} | {:.0f} % | {} | {:.2f} % | {} | {:.2f} % | {} |\n", range.low,
                   range.high, range.each_axis ? " on each axis" : "", 100 * missing, sum.trees(),
                   100 * sum.share(sum.right), sum.wrong, 100 * sum.share(sum.open), sum.wrong_oddities);
    }
}

}  // namespace
}  // namespace pipward::testing

// Two orchards of each kind; ten with any argument.
int main(int count, char**) {
    using pipward::testing::Range;
    using pipward::testing::report;
    const int seeds = count > 1 ? 10 : 2;
    for (const auto& range : {Range{0, 0.1}, Range{0.1, 0.15}, Range{0.15, 0.2}, Range{0.2, 0.25},
                              Range{0.25, 0.35}, Range{0.35, 2}, Range{0.2, 0.25, true}}) {
        report(range, seeds);
    }
}
