// SPDX-License-Identifier: MIT
#include "pipward/place/tree_story.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/record/presence.h"

namespace pipward::place {
namespace {

Sentence with_remark(const Sentence& words, const std::optional<std::string>& remark) {
    return remark ? words + verbatim(". " + *remark) : words;
}

bool is_about(const BloomObservation& observation, const Tree& tree) {
    return observation.tree ? *observation.tree == tree.label
                            : observation.accession && observation.accession == tree.accession;
}

TreeEvent event_of(const BloomObservation& observation) {
    auto words = say("{} (BBCH {})", filled(words_of(observation.bbch), {}), observation.bbch.code);
    if (observation.open_percent) {
        words = say("{}, {} % open", words, *observation.open_percent);
    }
    return {observation.observed_on, TreeEventKind::bloom, with_remark(words, observation.remark)};
}

TreeEvent event_of(const Pollination& work) {
    return {work.pollinated_on, TreeEventKind::pollination,
            with_remark(say("{} flowers pollinated for {}, tag {}", work.flowers, work.cross, work.tag),
                        work.remark)};
}

// Traits are named as the breeder names columns: "fruit_mass_g".
Sentence trait_words(const TraitScore& score) {
    auto trait = score.trait;
    std::ranges::replace(trait, '_', ' ');
    return with_remark(verbatim(fmt::format("{} {}", trait, score.score)), score.remark);
}

void add_scores(const Orchard& orchard, const Tree& tree, std::vector<TreeEvent>& events) {
    std::map<Day, std::vector<Sentence>> by_day;
    for (const auto& score : orchard.trait_scores) {
        if (score.tree == tree.label) {
            by_day[score.scored_on].push_back(trait_words(score));
        }
    }
    for (const auto& [day, scores] : by_day) {
        events.push_back({day, TreeEventKind::score, joined(scores, verbatim(", "))});
    }
}

}  // namespace

Sentence standing_of(const Tree& tree, Day as_of) {
    if (stands_on(tree, as_of)) {
        return say("standing");
    }
    if (!removed_by(tree, as_of)) {
        return say("to be planted {}", to_iso(*tree.planted_on));
    }
    const auto words = say("removed {}", to_iso(*tree.removed_on));
    return tree.remark ? words + verbatim(": " + *tree.remark) : words;
}

std::vector<TreeEvent> story_of(const Orchard& orchard, const Tree& tree, std::size_t limit) {
    std::vector<TreeEvent> events;
    for (const auto& observation : orchard.bloom_observations) {
        if (is_about(observation, tree)) {
            events.push_back(event_of(observation));
        }
    }
    for (const auto& work : orchard.pollinations) {
        if (work.tree == tree.label) {
            events.push_back(event_of(work));
        }
    }
    add_scores(orchard, tree, events);
    std::ranges::stable_sort(events, std::ranges::greater{}, &TreeEvent::day);
    events.resize(std::min(limit, events.size()));
    return events;
}

}  // namespace pipward::place
