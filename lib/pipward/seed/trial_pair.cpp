// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/trial_pair.h"

#include <algorithm>

namespace pipward::seed::detail {
namespace {

math::HitsOf hits_of(const TrialArm& arm) {
    return {std::min(arm.germinated, arm.seeds), arm.seeds};
}

/// A lot counted later than the other would seem to germinate later.
bool counted_alike(const TrialArm& a, const TrialArm& b) {
    return !a.points.empty() &&
           std::ranges::equal(a.points, b.points, {}, &GerminationPoint::day, &GerminationPoint::day);
}

// The log-rank's p is for many seeds: with fewer germinated seeds expected than this in either lot it is not
// to be relied on (common practice, no source).
constexpr double least_expected = 5;

std::optional<double> p_of_time(const TrialArm& a, const TrialArm& b) {
    const auto test = counted_alike(a, b) ? log_rank(a.times, b.times) : std::nullopt;
    const bool enough = test && test->expected_a >= least_expected && test->expected_b >= least_expected;
    return enough ? std::optional{test->p} : std::nullopt;
}

void adjust(std::vector<TrialPair>& pairs) {
    std::vector<double> shares;
    std::vector<double> times;
    for (const auto& pair : pairs) {
        shares.push_back(pair.p_share);
        times.push_back(pair.p_time.value_or(1));
    }
    shares = math::holm_adjusted(shares);
    times = math::holm_adjusted(times);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        pairs[i].p_share = shares[i];
        if (pairs[i].p_time) {
            pairs[i].p_time = times[i];
        }
    }
}

TrialVerdict verdict_of(const TrialPair& pair, const TrialArm& a, const TrialArm& b, std::size_t pairs) {
    const double best = math::smallest_possible_p(a.seeds, b.seeds) * static_cast<double>(pairs);
    if (best >= trial_alpha) {
        return TrialVerdict::too_few;
    }
    if (pair.p_share < trial_alpha) {
        return TrialVerdict::more_germinate;
    }
    return pair.p_time && *pair.p_time < trial_alpha ? TrialVerdict::earlier : TrialVerdict::cannot_tell;
}

Sentence percent(double share) {
    return say("{:.0f} %", 100 * share);
}

Sentence more_words(const TrialPair& pair, const TrialArm& a, const TrialArm& b) {
    return say("Germination was higher with {} than with {}: {} against {} (p = {:.2g}).", arm_words(a),
               arm_words(b), percent(hits_of(a).share()), percent(hits_of(b).share()), pair.p_share);
}

Sentence earlier_words(const TrialPair& pair, const TrialArm& a, const TrialArm& b) {
    return say(
        "No difference in final germination, but {} germinated earlier than {}: half after {:.0f} and {:.0f} "
        "days (p = {:.2g}).",
        arm_words(a), arm_words(b), a.half_coolbear.value_or(0), b.half_coolbear.value_or(0), *pair.p_time);
}

Sentence too_few_words(const TrialArm& a, const TrialArm& b) {
    return say(
        "Too few seeds to compare {} and {}: even all of one against none of the other would not be "
        "significant.",
        arm_words(a), arm_words(b));
}

Sentence cannot_tell_words(const TrialPair& pair, const TrialArm& a, const TrialArm& b) {
    auto words = say("No significant difference between {} and {}: {} against {} (p = {:.2g}).", arm_words(a),
                     arm_words(b), percent(hits_of(a).share()), percent(hits_of(b).share()), pair.p_share);
    if (pair.seeds_to_settle) {
        words += verbatim(" ");
        words += say("If that difference is real, about {} seeds in each would show it with a power of 80 %.",
                     *pair.seeds_to_settle);
    }
    return words;
}

Sentence words_of(const TrialPair& pair, const TrialArm& a, const TrialArm& b) {
    switch (pair.verdict) {
        case TrialVerdict::more_germinate:
            return more_words(pair, a, b);
        case TrialVerdict::earlier:
            return earlier_words(pair, a, b);
        case TrialVerdict::too_few:
            return too_few_words(a, b);
        case TrialVerdict::cannot_tell:
            break;
    }
    return cannot_tell_words(pair, a, b);
}

/// The one that did better first. The log-rank sees the whole course, the day of the half is told for people.
void put_better_first(TrialPair& pair, const std::vector<TrialArm>& arms) {
    const auto half = [&](std::size_t i) { return arms[i].half_coolbear.value_or(1e9); };
    if (pair.verdict == TrialVerdict::earlier && half(pair.b) < half(pair.a)) {
        std::swap(pair.a, pair.b);
    }
}

}  // namespace

std::vector<TrialPair> compare_arms(const std::vector<TrialArm>& arms) {
    std::vector<TrialPair> pairs;
    for (std::size_t a = 0; a < arms.size(); ++a) {
        for (std::size_t b = a + 1; b < arms.size(); ++b) {
            TrialPair pair{a, b, math::fisher_exact(hits_of(arms[a]), hits_of(arms[b])),
                           p_of_time(arms[a], arms[b])};
            const double share_a = hits_of(arms[a]).share();
            const double share_b = hits_of(arms[b]).share();
            if (share_a != share_b) {
                pair.seeds_to_settle = math::number_to_settle(share_a, share_b);
            }
            pairs.push_back(std::move(pair));
        }
    }
    adjust(pairs);
    for (auto& pair : pairs) {
        pair.verdict = verdict_of(pair, arms[pair.a], arms[pair.b], pairs.size());
        put_better_first(pair, arms);
        pair.words = words_of(pair, arms[pair.a], arms[pair.b]);
    }
    return pairs;
}

}  // namespace pipward::seed::detail
