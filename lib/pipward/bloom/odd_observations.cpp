// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/odd_observations.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <tuple>

#include "pipward/math/quantile.h"
#include "pipward/math/robust.h"

namespace pipward::bloom::detail {
namespace {

// Common practice, no source.
constexpr double unlikely_disagreement = 8;  // days, between the first and the last
// Only where the rest agree so much better without one of two than without the other can one say which is
// odd.
constexpr double clearly_closer = 2.0 / 3;

using Spring = std::vector<Told>;

Finding odd(const StageSeen& seen) {
    Finding finding;
    finding.level = Level::warning;
    finding.table = "bloom_observation";
    finding.row = fmt::format("fid {}", seen.fid);
    finding.field = "observed_on";
    finding.value = to_iso(seen.observed_on);
    return finding;
}

// Stages of one tree, the farther one seen first.
struct Backwards {
    const StageSeen* before = nullptr;
    const StageSeen* after = nullptr;
};

const std::string& bearer(const StageSeen& seen) {
    return seen.tree.empty() ? seen.accession : seen.tree;
}

Finding comes_after(const Backwards& pair) {
    auto finding = odd(*pair.after);
    finding.message =
        say("Stage {} on {} comes after stage {}, observed on {} (fid {}).", pair.after->stage.code,
            bearer(*pair.after), pair.before->stage.code, to_iso(pair.before->observed_on), pair.before->fid);
    finding.remedy = say("Check the dates, the stages and the tree of both observations.");
    return finding;
}

Finding comes_before(const Backwards& pair) {
    auto finding = odd(*pair.before);
    finding.message =
        say("Stage {} on {} comes before stage {}, observed on {} (fid {}).", pair.before->stage.code,
            bearer(*pair.before), pair.after->stage.code, to_iso(pair.after->observed_on), pair.after->fid);
    finding.remedy = say("Check the date, the stage and the tree: the spring's other observations agree.");
    return finding;
}

std::vector<Backwards> running_backwards(std::span<const StageSeen> stages) {
    std::map<std::tuple<std::string, std::string, Season>, const StageSeen*> farthest;
    std::vector<Backwards> pairs;
    for (const auto& seen : stages) {
        auto& before = farthest[{seen.tree, seen.accession, seen.season}];
        if (before != nullptr && before->observed_on < seen.observed_on && seen.stage < before->stage) {
            pairs.push_back({before, &seen});
        }
        if (before == nullptr || before->stage <= seen.stage) {
            before = &seen;
        }
    }
    return pairs;
}

using SpringOf = std::map<const StageSeen*, const Spring*>;

SpringOf springs_by_observation(const std::vector<Spring>& springs) {
    SpringOf of;
    for (const auto& spring : springs) {
        for (const auto& told : spring) {
            of.emplace(told.seen, &spring);
        }
    }
    return of;
}

// How far an observation lies from the middle of those that are not of the pair; nothing where there are
// none.
std::optional<double> apart_from_others(const Spring& spring, const StageSeen& one, const Backwards& pair) {
    std::vector<double> others;
    double own = 0;
    for (const auto& told : spring) {
        own = told.seen == &one ? told.full_bloom : own;
        if (told.seen != pair.before && told.seen != pair.after) {
            others.push_back(told.full_bloom);
        }
    }
    return others.empty() ? std::nullopt : std::optional{std::abs(own - math::median(others))};
}

bool the_first_is_odd(const Backwards& pair, const SpringOf& springs) {
    const auto before = springs.find(pair.before);
    const auto after = springs.find(pair.after);
    if (before == springs.end() || after == springs.end() || before->second != after->second) {
        return false;
    }
    const auto first = apart_from_others(*before->second, *pair.before, pair);
    const auto second = apart_from_others(*after->second, *pair.after, pair);
    return first && second && *second < clearly_closer * *first;
}

bool disagree(const Told& one, const Told& other) {
    const double usual = std::hypot(one.seen->place.sd_days, other.seen->place.sd_days);
    return std::abs(one.full_bloom - other.full_bloom) >
           std::max(unlikely_disagreement, math::unlikely_deviations * usual);
}

struct Rest {
    std::size_t without = 0;
    int disagreements = 0;
    double range = 0;  // days, from the first to the last
};

Rest rest_without(const Spring& spring, std::size_t without) {
    Rest rest{without, 0, 0};
    for (std::size_t i = 0; i < spring.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (i != without && j != without) {
                rest.disagreements += disagree(spring[i], spring[j]) ? 1 : 0;
                rest.range = std::max(rest.range, std::abs(spring[i].full_bloom - spring[j].full_bloom));
            }
        }
    }
    return rest;
}

bool agrees(const Spring& spring) {
    for (std::size_t i = 0; i < spring.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            if (disagree(spring[i], spring[j])) {
                return false;
            }
        }
    }
    return true;
}

// Those without which the rest agree best. Of two observations one cannot say which is odd, so both are.
std::vector<std::size_t> apart_in(const Spring& spring) {
    std::vector<Rest> rests;
    for (std::size_t i = 0; i < spring.size(); ++i) {
        rests.push_back(rest_without(spring, i));
    }
    const auto best = std::ranges::min(rests, {}, [](const Rest& r) {
        return std::pair{r.disagreements, r.range};
    });
    std::vector<std::size_t> apart;
    for (const auto& rest : rests) {
        if (rest.disagreements == best.disagreements && best.range >= clearly_closer * rest.range) {
            apart.push_back(rest.without);
        }
    }
    return apart;
}

Finding stands_apart(const Spring& spring, std::size_t which) {
    std::vector<double> others;
    for (std::size_t i = 0; i < spring.size(); ++i) {
        if (i != which) {
            others.push_back(spring[i].full_bloom);
        }
    }
    const auto& told = spring[which];
    const double apart = told.full_bloom - math::median(others);
    auto finding = odd(*told.seen);
    finding.message = apart > 0 ? say("By this observation full bloom of {} is {:.0f} days later than by the "
                                      "spring's other observations.",
                                      told.seen->accession, apart)
                                : say("By this observation full bloom of {} is {:.0f} days earlier than by "
                                      "the spring's other observations.",
                                      told.seen->accession, -apart);
    finding.remedy = say("Check the date, the stage and the tree.");
    return finding;
}

// Each observation once, however often it contradicts.
class OddOnes {
  public:
    void add(const StageSeen* seen, Finding finding) {
        if (named_.insert(seen).second) {
            findings_.push_back(std::move(finding));
        }
    }
    bool has(const StageSeen* seen) const { return named_.contains(seen); }
    Findings take() { return std::move(findings_); }

  private:
    std::set<const StageSeen*> named_;
    Findings findings_;
};

void add_backwards(OddOnes& named, std::span<const StageSeen> stages, const SpringOf& springs) {
    for (const auto& pair : running_backwards(stages)) {
        if (the_first_is_odd(pair, springs)) {
            named.add(pair.before, comes_before(pair));
        } else {
            named.add(pair.after, comes_after(pair));
        }
    }
}

void add_apart(OddOnes& named, const Spring& spring) {
    Spring left;
    std::ranges::copy_if(spring, std::back_inserter(left),
                         [&](const Told& told) { return !named.has(told.seen); });
    if (agrees(left)) {
        return;
    }
    for (const auto which : apart_in(left)) {
        named.add(left[which].seen, stands_apart(left, which));
    }
}

}  // namespace

void add_odd_observations(Findings& findings, std::span<const StageSeen> stages,
                          const std::vector<Spring>& springs) {
    OddOnes named;
    add_backwards(named, stages, springs_by_observation(springs));
    for (const auto& spring : springs) {
        add_apart(named, spring);
    }
    std::ranges::move(named.take(), std::back_inserter(findings));
}

}  // namespace pipward::bloom::detail
