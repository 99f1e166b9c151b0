// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/lineage/line_graph.h"

/// Which noted trait stands with whom in a line.
namespace pipward::lineage {

/// Scores of one trait over the trees of an accession: each tree counts once, however often it was scored.
struct TraitMean {
    double mean = 0;  ///< in the trait's own unit
    int trees = 0;
    int first_year = 0;
    int last_year = 0;
    bool by_blend = false;  ///< the mean of a blend's scored members by their shares, an expectation
};

/// By accession, then by trait.
using TraitMeans = std::map<std::string, std::map<std::string, TraitMean>>;

TraitMeans trait_means(std::span<const Tree> trees, std::span<const TraitScore> scores);

enum class Relative { seed, pollen, seed_seed, seed_pollen, pollen_seed, pollen_pollen };
inline constexpr std::size_t relatives = 6;

struct KinTrait {
    int node = -1;                    ///< into LineGraph::nodes; -1 where nobody is known
    std::optional<TraitMean> mean{};  ///< nothing where nobody scored it
};

struct TraitDescent {
    int node = 0;
    std::string trait;
    std::optional<TraitMean> own;
    std::array<KinTrait, relatives> kin;  ///< by Relative

    const KinTrait& of(Relative who) const { return kin[static_cast<std::size_t>(who)]; }
};

/// Every trait that was scored of the accession, its parents or its grandparents, by name. A sport has its
/// original's parents and its own scores.
std::vector<TraitDescent> trait_descent(const LineGraph& graph, int node, const TraitMeans& means);

}  // namespace pipward::lineage
