// SPDX-License-Identifier: MIT
#include "bloom_walks.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "parents.h"
#include "planting.h"
#include "random_source.h"

namespace pipward::larkfold {
namespace {

/// From how many degree-days after full bloom to how many a walker writes the stage. Between the spans there
/// is nothing that the scale has a word for. Our own spans, close to the usual ones, not the planner's.
struct StageSpan {
    int bbch = 0;
    double from = 0;
    double to = 0;
    double open_percent = -1;  ///< written beside the stage; below zero: not counted
};
constexpr std::array stage_spans{
    StageSpan{57, -135, -105},   StageSpan{59, -96, -72},     StageSpan{60, -62, -46},
    StageSpan{61, -46, -32, 10}, StageSpan{62, -32, -20, 20}, StageSpan{63, -20, -11, 30},
    StageSpan{64, -11, -3, 40},  StageSpan{65, -3, 24},       StageSpan{67, 64, 92},
    StageSpan{69, 98, 128},
};
constexpr double reading_error = 6;

/// How many of the trees passed get a note, by spring; some springs there was other work.
constexpr std::array<double, 14> diligence{0.32, 0.29, 0.35, 0.27, 0.32, 0.21, 0.32,
                                           0.32, 0.13, 0.27, 0.35, 0.37, 0.32, 0.37};
constexpr int first_spring = 2012;
constexpr double count_chance = 0.4;
constexpr double single_tree_chance = 0.6;

const StageSpan* stage_at(double after_full) {
    for (const auto& span : stage_spans) {
        if (after_full >= span.from && after_full < span.to) {
            return &span;
        }
    }
    return nullptr;
}

struct Walk {
    std::string block;
    std::string observer;
};

const std::array<Walk, 2>& walks() {
    static const std::array<Walk, 2> both{{{"Lower", "walk A"}, {"Upper", "walk B"}}};
    return both;
}

std::vector<Day> walk_days(const Walk& walk, int year, TrueBloom& bloom) {
    RandomSource source(fmt::format("days of {} {}", walk.observer, year));
    const Day last = bloom.day_at(parent_named("Ridgewhistle"), year, 0, 132);
    std::vector<Day> days;
    for (Day day = bloom.day_at(parent_named("Larkfold Early"), year, 0, -120); day <= last;
         day = day + source.whole(3, 5)) {
        days.push_back(day);
    }
    return days;
}

std::vector<const Tree*> trees_in(const std::vector<Tree>& trees, const std::string& block,
                                  const std::string& accession, Day day) {
    std::vector<const Tree*> found;
    const auto labels = trees_of(trees, accession, day);
    for (const auto& tree : trees) {
        if (tree.block == block && std::ranges::count(labels, tree.label) > 0) {
            found.push_back(&tree);
        }
    }
    return found;
}

BloomObservation written(const Walk& walk, Day day, const Tree& tree, const StageSpan& stage,
                         RandomSource& source) {
    BloomObservation observation;
    observation.observed_on = day;
    observation.bbch = {stage.bbch};
    observation.observer = walk.observer;
    if (source.chance(single_tree_chance)) {
        observation.tree = tree.label;
    } else {
        observation.accession = tree.accession;
    }
    if (stage.open_percent >= 0 && source.chance(count_chance)) {
        observation.open_percent = stage.open_percent;
    }
    return observation;
}

/// Nothing where the walker passes by, or sees a stage that has no word.
std::optional<BloomObservation> observation_of(const Walk& walk, Day day, const Parent& parent,
                                               const std::vector<Tree>& trees, TrueBloom& bloom) {
    const auto here = trees_in(trees, walk.block, parent.name, day);
    RandomSource source(fmt::format("note {} {} {}", walk.observer, to_iso(day), parent.name));
    const auto spring = static_cast<std::size_t>(parts_of(day).year - first_spring);
    if (here.empty() || !source.chance(diligence[spring])) {
        return std::nullopt;
    }
    const Tree& tree = *here[static_cast<std::size_t>(source.whole(0, static_cast<int>(here.size()) - 1))];
    const double place = bloom.after_full(parent, day, warmer_than_station(*tree.elevation));
    const auto* stage = stage_at(place + reading_error * source.normal());
    return stage == nullptr ? std::nullopt : std::optional{written(walk, day, tree, *stage, source)};
}

std::vector<BloomObservation> observations_of(const Walk& walk, Day day, const std::vector<Tree>& trees,
                                              TrueBloom& bloom) {
    std::vector<BloomObservation> observations;
    for (const auto& parent : parents()) {
        if (parent.observed_from == 0 || parent.observed_from > parts_of(day).year) {
            continue;
        }
        if (auto observation = observation_of(walk, day, parent, trees, bloom)) {
            observations.push_back(std::move(*observation));
        }
    }
    return observations;
}

constexpr auto mistaken_accession = "Tansy Lane";
constexpr int mistaken_year = 2021;

bool is_of(const BloomObservation& observation, const std::vector<Tree>& trees, const std::string& accession,
           int year) {
    const bool named = observation.accession == accession;
    const bool on_its_tree = observation.tree && std::ranges::any_of(trees, [&](const Tree& tree) {
                                 return tree.label == *observation.tree && tree.accession == accession;
                             });
    return (named || on_its_tree) && parts_of(observation.observed_on).year == year;
}

/// Full bloom of one tree, noted on the right day but typed with the next month's number.
void plant_mistake(std::vector<BloomObservation>& observations, const std::vector<Tree>& trees,
                   TrueBloom& bloom) {
    std::erase_if(observations, [&](const BloomObservation& observation) {
        return is_of(observation, trees, mistaken_accession, mistaken_year);
    });
    const auto& parent = parent_named(mistaken_accession);
    auto typed = parts_of(bloom.day_at(parent, mistaken_year, 0, 0));
    typed.month += 1;
    BloomObservation observation;
    observation.tree = trees_of(trees, mistaken_accession, *make_day({mistaken_year, 5, 1})).front();
    observation.observed_on = *make_day(typed);
    observation.bbch = full_bloom;
    observation.observer = walks()[0].observer;
    observations.push_back(observation);
}

}  // namespace

std::vector<BloomObservation> bloom_observations(const std::vector<Tree>& trees, TrueBloom& bloom) {
    std::vector<BloomObservation> observations;
    const int springs = static_cast<int>(diligence.size());
    for (int year = first_spring; year < first_spring + springs; ++year) {
        for (const auto& walk : walks()) {
            for (const Day day : walk_days(walk, year, bloom)) {
                const auto more = observations_of(walk, day, trees, bloom);
                observations.insert(observations.end(), more.begin(), more.end());
            }
        }
    }
    plant_mistake(observations, trees, bloom);
    std::ranges::stable_sort(observations, {}, &BloomObservation::observed_on);
    return observations;
}

}  // namespace pipward::larkfold
