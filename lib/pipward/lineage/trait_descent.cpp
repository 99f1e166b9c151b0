// SPDX-License-Identifier: MIT
#include "pipward/lineage/trait_descent.h"

#include <algorithm>
#include <set>

#include "pipward/record/name_index.h"

namespace pipward::lineage {
namespace {

struct Scores {
    double sum = 0;
    int count = 0;
};

struct Collected {
    std::map<std::string_view, Scores> by_tree;
    int first_year = 9999;
    int last_year = 0;
};

TraitMean mean_of(const Collected& collected) {
    double sum = 0;
    for (const auto& [tree, scores] : collected.by_tree) {
        sum += scores.sum / scores.count;
    }
    const auto trees = static_cast<int>(collected.by_tree.size());
    return {sum / trees, trees, collected.first_year, collected.last_year, false};
}

std::optional<TraitMean> known_mean(const std::string& name, const std::string& trait,
                                    const TraitMeans& means) {
    const auto of_name = means.find(name);
    if (of_name == means.end()) {
        return std::nullopt;
    }
    const auto found = of_name->second.find(trait);
    return found == of_name->second.end() ? std::nullopt : std::optional{found->second};
}

std::optional<TraitMean> blend_mean(const PedigreeGraph& graph, int blend, const std::string& trait,
                                    const TraitMeans& means) {
    TraitMean all{0, 0, 9999, 0, true};
    double weight = 0;
    for (const auto& link : graph.parents[blend]) {
        if (const auto mean = known_mean(graph.nodes[link.parent].name, trait, means)) {
            all.mean += mean->mean * link.share;
            weight += link.share;
            all.trees += mean->trees;
            all.first_year = std::min(all.first_year, mean->first_year);
            all.last_year = std::max(all.last_year, mean->last_year);
        }
    }
    all.mean /= weight > 0 ? weight : 1;
    return weight > 0 ? std::optional{all} : std::nullopt;
}

int parent_of(const PedigreeGraph& graph, int node, PedigreeRole role) {
    while (node >= 0) {
        const auto* sport = graph.parent(node, PedigreeRole::sport);
        if (sport == nullptr) {
            break;
        }
        node = sport->parent;
    }
    const auto* link = node < 0 ? nullptr : graph.parent(node, role);
    return link == nullptr ? -1 : link->parent;
}

std::array<int, relatives> kin_of(const PedigreeGraph& graph, int node) {
    using enum PedigreeRole;
    const int mother = parent_of(graph, node, seed);
    const int father = parent_of(graph, node, pollen);
    return {mother,
            father,
            parent_of(graph, mother, seed),
            parent_of(graph, mother, pollen),
            parent_of(graph, father, seed),
            parent_of(graph, father, pollen)};
}

std::optional<TraitMean> mean_at(const PedigreeGraph& graph, int node, const std::string& trait,
                                 const TraitMeans& means) {
    if (node < 0) {
        return std::nullopt;
    }
    return graph.nodes[node].is_blend ? blend_mean(graph, node, trait, means)
                                      : known_mean(graph.nodes[node].name, trait, means);
}

std::set<std::string> all_traits(const TraitMeans& means) {
    std::set<std::string> traits;
    for (const auto& [accession, of_accession] : means) {
        for (const auto& [trait, mean] : of_accession) {
            traits.insert(trait);
        }
    }
    return traits;
}

}  // namespace

TraitMeans trait_means(std::span<const Tree> trees, std::span<const TraitScore> scores) {
    const ByName<Tree> by_label(trees, &Tree::label);
    std::map<std::string, std::map<std::string, Collected>> collected;
    for (const auto& score : scores) {
        const auto* tree = by_label.find(score.tree);
        if (tree == nullptr || !tree->accession) {
            continue;
        }
        auto& all = collected[*tree->accession][score.trait];
        auto& of_tree = all.by_tree[score.tree];
        of_tree.sum += score.score;
        ++of_tree.count;
        const int year = parts_of(score.scored_on).year;
        all.first_year = std::min(all.first_year, year);
        all.last_year = std::max(all.last_year, year);
    }
    TraitMeans means;
    for (const auto& [accession, traits] : collected) {
        for (const auto& [trait, all] : traits) {
            means[accession][trait] = mean_of(all);
        }
    }
    return means;
}

std::vector<TraitDescent> trait_descent(const PedigreeGraph& graph, int node, const TraitMeans& means) {
    const auto kin = kin_of(graph, node);
    std::vector<TraitDescent> found;
    for (const auto& trait : all_traits(means)) {
        TraitDescent descent{node, trait, mean_at(graph, node, trait, means), {}};
        bool is_scored = descent.own.has_value();
        for (std::size_t i = 0; i < relatives; ++i) {
            descent.kin[i] = {kin[i], mean_at(graph, kin[i], trait, means)};
            is_scored = is_scored || descent.kin[i].mean;
        }
        if (is_scored) {
            found.push_back(std::move(descent));
        }
    }
    return found;
}

}  // namespace pipward::lineage
