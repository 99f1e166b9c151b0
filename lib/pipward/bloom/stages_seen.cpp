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

Finding about_note(const BloomNote& note, Level level) {
    Finding finding;
    finding.level = level;
    finding.table = "bloom_note";
    finding.row = fmt::format("fid {}", note.fid);
    return finding;
}

Finding without_accession(const BloomNote& note) {
    auto finding = about_note(note, Level::warning);
    finding.field = note.tree ? "tree" : "accession";
    finding.value = note.tree.value_or("");
    finding.message = note.tree ? say("The note's tree is not in the book, or has no accession.")
                                : say("The note names neither a tree nor an accession.");
    finding.remedy = say("Give the accession that was seen in bloom; the note is not used.");
    return finding;
}

Finding not_a_bloom_stage(const BloomNote& note) {
    auto finding = about_note(note, Level::note);
    finding.field = "bbch";
    finding.value = fmt::format("{}", note.bbch.code);
    finding.message = say("This stage tells too little of bloom and is not used to foretell it.");
    finding.remedy = say("Stages 51 to 69 are used.");
    return finding;
}

Finding nothing_open(const BloomNote& note) {
    auto finding = about_note(note, Level::warning);
    finding.field = "open_percent";
    finding.value = "0";
    finding.message = say("The note says that no flower was open, but its stage says that some were.");
    finding.remedy =
        say("Give a stage before 60, or the share that was open; until then it counts as not yet "
            "in bloom.");
    return finding;
}

Finding running_backwards(const StageSeen& earlier, const StageSeen& later) {
    Finding finding;
    finding.level = Level::warning;
    finding.table = "bloom_note";
    finding.row = fmt::format("fid {}", later.fid);
    finding.field = "noted_on";
    finding.value = to_iso(later.noted_on);
    finding.message = say("Stage {} on {} comes after stage {}, noted on {} (fid {}).", later.stage.code,
                          later.tree.empty() ? later.accession : later.tree, earlier.stage.code,
                          to_iso(earlier.noted_on), earlier.fid);
    finding.remedy = say("Check the dates, the stages and the tree of both notes.");
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

std::optional<std::string> noted_accession(const BloomNote& note, const Tree* tree) {
    return tree != nullptr && tree->accession ? tree->accession : note.accession;
}

CelsiusStep noted_offset(const BloomNote& note, const Tree* tree, const std::string& accession,
                         const OrchardIndex& book, const Station& station) {
    return tree != nullptr ? tree_offset(*tree, station)
                           : mean_offset(book.trees_of(accession, note.noted_on), station);
}

std::optional<Share> noted_share(const BloomNote& note) {
    const bool opening = note.bbch >= first_bloom && note.bbch <= full_bloom;
    return note.open_percent && opening ? std::optional{Share{*note.open_percent / 100}} : std::nullopt;
}

// Stages of winter rest, of buds, leaves and flower buds come before bloom; those of shoots and the next
// winter may come after it.
constexpr Bbch last_leaf_stage{19};
constexpr Bbch first_bud_stage{51};

bool stands_before_bloom(const BloomNote& note) {
    const bool of_buds = note.bbch <= last_leaf_stage || note.bbch >= first_bud_stage;
    return (of_buds && note.bbch < first_bloom) || (note.open_percent && *note.open_percent == 0);
}

struct SeasonOfTree {
    std::string tree;
    std::string accession;
    Season season;

    auto operator<=>(const SeasonOfTree&) const = default;
};

void add_backwards(Findings& findings, const std::vector<StageSeen>& stages) {
    std::map<SeasonOfTree, const StageSeen*> farthest;
    for (const auto& seen : stages) {
        auto& before = farthest[{seen.tree, seen.accession, seen.season}];
        if (before != nullptr && before->noted_on < seen.noted_on && seen.stage < before->stage) {
            findings.push_back(running_backwards(*before, seen));
        }
        if (before == nullptr || before->stage <= seen.stage) {
            before = &seen;
        }
    }
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
    for (const auto& note : orchard.bloom_notes) {
        if (note.noted_on > as_of) {
            continue;
        }
        const auto* tree = note.tree ? book.tree(*note.tree) : nullptr;
        const auto accession = noted_accession(note, tree);
        if (accession && stands_before_bloom(note)) {
            report.not_yet.push_back({*accession, noted_offset(note, tree, *accession, book, station),
                                      season_of(note.noted_on, hemisphere), note.noted_on});
        }
        if (!accession) {
            report.findings.push_back(without_accession(note));
        } else if (note.bbch >= first_bloom && stands_before_bloom(note)) {
            report.findings.push_back(nothing_open(note));
        } else if (!ladder_place(note.bbch, {}) && !stands_before_bloom(note)) {
            report.findings.push_back(not_a_bloom_stage(note));
        } else if (ladder_place(note.bbch, {})) {
            StageSeen seen{note.fid,
                           tree != nullptr ? tree->label : "",
                           *accession,
                           noted_offset(note, tree, *accession, book, station),
                           season_of(note.noted_on, hemisphere),
                           note.noted_on,
                           note.bbch,
                           {},
                           species_of(book, *accession).value_or(""),
                           noted_share(note)};
            seen.place = place_of(seen, usual_ladder(seen.species));
            report.stages.push_back(std::move(seen));
        }
    }
    std::ranges::sort(report.stages, [](const StageSeen& a, const StageSeen& b) {
        return std::tie(a.noted_on, a.fid) < std::tie(b.noted_on, b.fid);
    });
    add_backwards(report.findings, report.stages);
    return report;
}

}  // namespace pipward::bloom
