// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_scores.h"

#include <algorithm>
#include <iterator>
#include <set>

#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"

namespace pipward::lineage {
namespace {

Sentence seen_words(const PedigreeGraph& graph, const KinTrait& kin) {
    const auto& name = graph.nodes[kin.node].name;
    if (kin.mean->by_blend) {
        return say("{} {:.3g} (blend, by its shares)", name, kin.mean->mean);
    }
    return mean_words(name, *kin.mean);
}

}  // namespace

std::vector<TraitScore> scores_until(const Orchard& orchard, Day as_of) {
    std::vector<TraitScore> scores;
    std::ranges::copy_if(orchard.trait_scores, std::back_inserter(scores),
                         [&](const TraitScore& score) { return score.scored_on <= as_of; });
    return scores;
}

std::vector<std::string> traits_of(const Orchard& orchard) {
    std::set<std::string> traits;
    for (const auto& score : orchard.trait_scores) {
        traits.insert(score.trait);
    }
    return {traits.begin(), traits.end()};
}

std::vector<std::string> scored_traits(const Orchard& orchard, const std::string& text,
                                       const std::string& key, Findings& findings) {
    const auto known = traits_of(orchard);
    if (text == "all") {
        return known;
    }
    auto wanted = listed_names(text);
    for (const auto& trait : wanted) {
        if (std::ranges::find(known, trait) == known.end()) {
            std::vector<Sentence> names;
            for (const auto& name : known) {
                names.push_back(verbatim(name));
            }
            findings.push_back(about_parameter(
                key, trait, say("This trait was not scored."),
                names.empty() ? say("Leave it out: the book has no scores.")
                              : say("The book has scores of: {}.", joined(names, verbatim(", ")))));
        }
    }
    return wanted;
}

std::map<int, std::vector<Sentence>> trait_lines(const PedigreeGraph& graph, const TraitMeans& means,
                                                 const std::vector<std::string>& traits) {
    std::map<int, std::vector<Sentence>> lines;
    for (const auto& trait : traits) {
        for (const auto& [accession, of_accession] : means) {
            const auto mean = of_accession.find(trait);
            const auto node = graph.number.find(accession);
            if (mean != of_accession.end() && node != graph.number.end()) {
                lines[node->second].push_back(mean_words(trait, mean->second));
            }
        }
    }
    return lines;
}

Sentence mean_words(const std::string& trait, const TraitMean& mean) {
    return mean.trees == 1 ? say("{} {:.3g} (1 tree)", trait, mean.mean)
                           : say("{} {:.3g} ({} trees)", trait, mean.mean, mean.trees);
}

Sentence seen_in_words(const PedigreeGraph& graph, const TraitDescent& descent) {
    std::vector<Sentence> parts;
    std::set<int> told;
    for (const auto& kin : descent.kin) {
        if (kin.mean && told.insert(kin.node).second) {
            parts.push_back(seen_words(graph, kin));
        }
    }
    if (parts.empty()) {
        parts.push_back(say("none of them"));
    }
    for (const auto who : {Relative::seed, Relative::pollen}) {
        const auto& kin = descent.of(who);
        if (kin.node >= 0 && !kin.mean && told.insert(kin.node).second) {
            parts.push_back(say("{} not scored", graph.nodes[kin.node].name));
        }
    }
    if (descent.of(Relative::seed).node < 0) {
        parts.push_back(say("seed parent unknown"));
    }
    if (descent.of(Relative::pollen).node < 0) {
        parts.push_back(say("pollen parent unknown"));
    }
    return joined(parts, verbatim("; "));
}

std::vector<int> parents_and_crossed(const Orchard& orchard, const PedigreeGraph& graph) {
    std::set<std::string> crossed;
    for (const auto& goal : orchard.goals) {
        crossed.insert({goal.seed_parent, goal.pollen_parent});
    }
    std::vector<int> nodes;
    for (const auto& accession : orchard.accessions) {
        const int node = graph.number.at(accession.name);
        if (!graph.children[node].empty() || crossed.contains(accession.name)) {
            nodes.push_back(node);
        }
    }
    return nodes;
}

}  // namespace pipward::lineage
