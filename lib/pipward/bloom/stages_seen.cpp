// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <tuple>

#include "pipward/bloom/observation.h"
#include "pipward/record/descent.h"
#include "pipward/record/orchard_index.h"

namespace pipward::bloom {
namespace {

CelsiusStep whole_steps(double degrees) {
    return offset_step * (std::round(degrees / offset_step.degrees) + 0.0);  // + 0.0: never minus zero
}

Finding about_observation(const BloomObservation& observation, Level level) {
    Finding finding;
    finding.level = level;
    finding.table = "bloom_observation";
    finding.row = fmt::format("fid {}", observation.fid);
    return finding;
}

Finding without_accession(const BloomObservation& observation) {
    auto finding = about_observation(observation, Level::warning);
    finding.field = observation.tree ? "tree" : "accession";
    finding.value = observation.tree.value_or("");
    finding.message = observation.tree ? say("The observed tree is not in the book, or has no accession.")
                                       : say("The observation names neither a tree nor an accession.");
    finding.remedy = say("Give the accession that was observed; the observation is not used.");
    return finding;
}

Finding not_a_bloom_stage(const BloomObservation& observation) {
    auto finding = about_observation(observation, Level::notice);
    finding.field = "bbch";
    finding.value = fmt::format("{}", observation.bbch.code);
    finding.message = say("This stage says too little about bloom and is not used to forecast it.");
    finding.remedy = say("Stages 51 to 69 are used.");
    return finding;
}

Finding nothing_open(const BloomObservation& observation) {
    auto finding = about_observation(observation, Level::warning);
    finding.field = "open_percent";
    finding.value = "0";
    finding.message = say("The observation says that no flower was open, but its stage says that some were.");
    finding.remedy =
        say("Give a stage before 60, or the share that was open; until then it counts as not yet "
            "in bloom.");
    return finding;
}

CelsiusStep mean_offset(const std::vector<const Tree*>& trees, const Station& station) {
    if (trees.empty()) {
        return {};
    }
    double steps = 0;
    for (const auto* tree : trees) {
        steps += std::round(tree_offset(*tree, station).degrees / offset_step.degrees);
    }
    return offset_step * (std::round(steps / static_cast<double>(trees.size())) + 0.0);
}

std::optional<std::string> observed_accession(const BloomObservation& observation, const Tree* tree) {
    return tree != nullptr && tree->accession ? tree->accession : observation.accession;
}

CelsiusStep observed_offset(const BloomObservation& observation, const Tree* tree,
                            const std::string& accession, const OrchardIndex& book, const Station& station) {
    return tree != nullptr ? tree_offset(*tree, station)
                           : mean_offset(book.trees_of(accession, observation.observed_on), station);
}

std::optional<Share> observed_share(const BloomObservation& observation) {
    const bool opening = observation.bbch >= first_bloom && observation.bbch <= full_bloom;
    return observation.open_percent && opening ? std::optional{Share{*observation.open_percent / 100}}
                                               : std::nullopt;
}

// Stages of winter rest, of buds, leaves and flower buds come before bloom; those of shoots and the next
// winter may come after it.
constexpr Bbch last_leaf_stage{19};
constexpr Bbch first_bud_stage{51};

bool stands_before_bloom(const BloomObservation& observation) {
    const bool of_buds = observation.bbch <= last_leaf_stage || observation.bbch >= first_bud_stage;
    return (of_buds && observation.bbch < first_bloom) ||
           (observation.open_percent && *observation.open_percent == 0);
}

}  // namespace

CelsiusStep tree_offset(const Tree& tree, const Station& station) {
    auto height = tree.elevation;
    if (!height && tree.at) {
        height = tree.at->height;
    }
    return height ? whole_steps(-lapse_per_metre * (height->value - station.elevation.value)) : CelsiusStep{};
}

StageLadder Ladders::of(const std::string& species) const {
    const auto found = by_species.find(species);
    return found == by_species.end() ? usual_ladder(species) : found->second;
}

LadderPlace place_of(const StageSeen& seen, const StageLadder& ladder) {
    auto place = ladder_place(seen.stage, ladder).value_or(LadderPlace{});
    if (seen.open) {
        place.after_full = ladder_place_of_share(*seen.open, ladder);
    }
    return place;
}

StagesReport stages_seen(const Orchard& orchard, const Station& station, Hemisphere hemisphere, Day as_of) {
    StagesReport report;
    const OrchardIndex book(orchard);
    for (const auto& observation : orchard.bloom_observations) {
        if (observation.observed_on > as_of) {
            continue;
        }
        const auto* tree = observation.tree ? book.tree(*observation.tree) : nullptr;
        const auto accession = observed_accession(observation, tree);
        if (accession && stands_before_bloom(observation)) {
            report.not_yet.push_back(
                {*accession, observed_offset(observation, tree, *accession, book, station),
                 season_of(observation.observed_on, hemisphere), observation.observed_on});
        }
        if (!accession) {
            report.findings.push_back(without_accession(observation));
        } else if (observation.bbch >= first_bloom && stands_before_bloom(observation)) {
            report.findings.push_back(nothing_open(observation));
        } else if (!ladder_place(observation.bbch, {}) && !stands_before_bloom(observation)) {
            report.findings.push_back(not_a_bloom_stage(observation));
        } else if (ladder_place(observation.bbch, {})) {
            StageSeen seen{observation.fid,
                           tree != nullptr ? tree->label : "",
                           *accession,
                           observed_offset(observation, tree, *accession, book, station),
                           season_of(observation.observed_on, hemisphere),
                           observation.observed_on,
                           observation.bbch,
                           {},
                           species_of(book, *accession).value_or(""),
                           observed_share(observation)};
            seen.place = place_of(seen, usual_ladder(seen.species));
            report.stages.push_back(std::move(seen));
        }
    }
    std::ranges::sort(report.stages, [](const StageSeen& a, const StageSeen& b) {
        return std::tie(a.observed_on, a.fid) < std::tie(b.observed_on, b.fid);
    });
    return report;
}

}  // namespace pipward::bloom
