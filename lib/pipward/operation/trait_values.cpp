// SPDX-License-Identifier: MIT
#include "pipward/operation/trait_values.h"

#include <fmt/format.h>

#include "pipward/operation/complaint.h"
#include "pipward/value/nearest.h"

namespace pipward::operation {
namespace {

void refuse_unknown_trait(const Orchard& orchard, const std::string& trait, std::string_view key) {
    std::set<std::string> scored;
    for (const auto& score : orchard.trait_scores) {
        scored.insert(score.trait);
    }
    if (scored.contains(trait)) {
        return;
    }
    constexpr std::size_t most_listed = 12;
    const std::vector<std::string> known(scored.begin(), scored.end());
    const auto near = known.size() > most_listed ? nearest_few(trait, known) : known;
    throw Error(Trouble::input,
                about_parameter(std::string(key), trait, say("No tree was scored for this trait."),
                                known.empty()  ? say("The book has no scores yet; note them with note-score.")
                                : near.empty() ? say("Ask for a trait that was scored.")
                                               : say("The traits that were scored are: {}.",
                                                     fmt::format("{}", fmt::join(near, ", ")))));
}

Finding left_out(const TraitScore& score, Sentence why, Sentence remedy) {
    return {Level::warning, "trait_score", score.tree, "tree", score.tree, std::move(why), std::move(remedy)};
}

std::map<std::string, const Tree*> trees_by_label(const Orchard& orchard) {
    std::map<std::string, const Tree*> trees;
    for (const auto& tree : orchard.trees) {
        trees.try_emplace(tree.label, &tree);
    }
    return trees;
}

void add_score(TraitScores& scores, const lineage::PedigreeOrder& order, const std::string& accession,
               const TraitScore& score) {
    scores.of[accession].push_back(score.score);
    const auto member = order.number.find(accession);
    if (member == order.number.end() || !order.members[member->second].reckoned) {
        return;
    }
    const auto next = static_cast<int>(scores.years.size());
    const int group = scores.years.try_emplace(parts_of(score.scored_on).year, next).first->second;
    scores.records.push_back({member->second, group, score.score});
    scores.members.insert(member->second);
}

}  // namespace

TraitScores scores_of(const Orchard& orchard, const lineage::PedigreeOrder& order, const std::string& trait,
                      Day as_of, std::string_view key) {
    refuse_unknown_trait(orchard, trait, key);
    TraitScores scores;
    const auto trees = trees_by_label(orchard);
    std::set<std::string> told;
    for (const auto& score : orchard.trait_scores) {
        if (score.trait != trait || score.scored_on > as_of) {
            continue;
        }
        const auto tree = trees.find(score.tree);
        if (tree != trees.end() && tree->second->accession) {
            add_score(scores, order, *tree->second->accession, score);
        } else if (told.insert(score.tree).second) {
            scores.left_out.push_back(left_out(score,
                                               say("The scores of this tree are left out: nobody wrote down "
                                                   "which accession it is."),
                                               say("Give the tree its accession.")));
        }
    }
    return scores;
}

lineage::BreedingValues values_of(const TraitScores& scores, const lineage::KinshipFactors& factors,
                                  lineage::ScoreVariance variance, const std::string& trait, Day as_of,
                                  std::string_view key) {
    if (scores.records.size() < least_scores || scores.members.size() < least_accessions) {
        throw Error(Trouble::input,
                    about_parameter(
                        std::string(key), trait,
                        say("Too few scores: {} of {} diploid accessions up to {}. Breeding values need {} "
                            "scores of {} accessions, or they tell of chance.",
                            scores.records.size(), scores.members.size(), to_iso(as_of), least_scores,
                            least_accessions),
                        say("Score more trees, or look at the scores themselves.")));
    }
    auto values = lineage::breeding_values(factors, scores.records, variance);
    if (!values) {
        throw Error(Trouble::input,
                    about_parameter(std::string(key), trait, say("The equations cannot be solved."),
                                    say("Look for scores that are far out of the way.")));
    }
    return std::move(*values);
}

double score_variance(const TraitScores& scores) {
    std::map<int, std::pair<double, int>> sums;
    for (const auto& record : scores.records) {
        auto& [sum, number] = sums[record.group];
        sum += record.score;
        ++number;
    }
    double squares = 0;
    for (const auto& record : scores.records) {
        const auto& [sum, number] = sums.at(record.group);
        const double off = record.score - sum / number;
        squares += off * off;
    }
    const auto free = static_cast<double>(scores.records.size()) - static_cast<double>(sums.size());
    return free > 0 ? squares / free : 0;
}

}  // namespace pipward::operation
