// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_values.h"

#include <fmt/format.h>

#include "pipward/record/orchard_index.h"
#include "pipward/value/complaint.h"
#include "pipward/value/nearest.h"

namespace pipward::lineage {
namespace {

void refuse_unknown_trait(const Orchard& orchard, const TraitQuestion& question) {
    const auto& trait = question.trait;
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
    throw Error(
        Trouble::input,
        about_parameter(question.key, trait, say("No tree was scored for this trait."),
                        known.empty()  ? say("The book has no scores yet; record them with record-score.")
                        : near.empty() ? say("Choose a trait that was scored.")
                                       : say("The traits that were scored are: {}.",
                                             fmt::format("{}", fmt::join(near, ", ")))));
}

Finding left_out(const TraitScore& score, Sentence why, Sentence remedy) {
    return {Level::warning, "trait_score", score.tree, "tree", score.tree, std::move(why), std::move(remedy)};
}

void add_score(TraitScores& scores, const PedigreeOrder& order, const std::string& accession,
               const TraitScore& score) {
    scores.of[accession].push_back(score.score);
    const auto member = order.number.find(accession);
    if (member == order.number.end() || !order.members[member->second].calculated) {
        return;
    }
    const auto next = static_cast<int>(scores.years.size());
    const int group = scores.years.try_emplace(parts_of(score.scored_on).year, next).first->second;
    scores.records.push_back({member->second, group, score.score});
    scores.members.insert(member->second);
}

}  // namespace

TraitScores scores_of(const Orchard& orchard, const PedigreeOrder& order, const TraitQuestion& question) {
    refuse_unknown_trait(orchard, question);
    TraitScores scores;
    const OrchardIndex book(orchard);
    std::set<std::string> told;
    for (const auto& score : orchard.trait_scores) {
        if (score.trait != question.trait || score.scored_on > question.as_of) {
            continue;
        }
        const auto* tree = book.tree(score.tree);
        if (tree != nullptr && tree->accession) {
            add_score(scores, order, *tree->accession, score);
        } else if (told.insert(score.tree).second) {
            scores.left_out.push_back(
                left_out(score, say("The scores of this tree are left out: its accession is not recorded."),
                         say("Give the tree its accession.")));
        }
    }
    return scores;
}

BreedingValues values_of(const TraitScores& scores, const KinshipFactors& factors, ScoreVariance variance,
                         const TraitQuestion& question) {
    if (scores.records.size() < least_scores || scores.members.size() < least_accessions) {
        throw Error(
            Trouble::input,
            about_parameter(question.key, question.trait,
                            say("Too few scores: {} of {} diploid accessions up to {}. Breeding values need "
                                "{} scores of {} accessions, otherwise they only reflect chance.",
                                scores.records.size(), scores.members.size(), to_iso(question.as_of),
                                least_scores, least_accessions),
                            say("Score more trees, or check the scores.")));
    }
    auto values = breeding_values(factors, scores.records, variance);
    if (!values) {
        throw Error(Trouble::input,
                    about_parameter(question.key, question.trait, say("The equations cannot be solved."),
                                    say("Check for outlying scores.")));
    }
    return std::move(*values);
}

double score_variance(const TraitScores& scores) {
    struct Sum {
        double score = 0;
        int records = 0;
    };
    std::map<int, Sum> sums;
    for (const auto& record : scores.records) {
        auto& sum = sums[record.group];
        sum.score += record.score;
        ++sum.records;
    }
    double squares = 0;
    for (const auto& record : scores.records) {
        const auto& sum = sums.at(record.group);
        const double off = record.score - sum.score / sum.records;
        squares += off * off;
    }
    const auto free = static_cast<double>(scores.records.size()) - static_cast<double>(sums.size());
    return free > 0 ? squares / free : 0;
}

}  // namespace pipward::lineage
