// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/lineage/pedigree_graph.h"

/// Which noted trait stands with whom in a line.
namespace pipward::lineage {

/// Scores of one trait over the trees of an accession: each tree counts once, however often it was scored.
struct TraitMean {
    double mean = 0;        ///< in the trait's own unit
    int trees = 0;          ///< scored, 1 or more; of a blend, those of all its members
    int first_year = 0;     ///< of scoring
    int last_year = 0;      ///< of scoring
    bool by_blend = false;  ///< the mean of a blend's scored members by their shares, an expectation
};

/// By accession, then by trait.
using TraitMeans = std::map<std::string, std::map<std::string, TraitMean>>;

/// Scores of trees that are not recorded, or whose accession is not known, are passed over.
TraitMeans trait_means(std::span<const Tree> trees, std::span<const TraitScore> scores);

/// Parents and grandparents, named by the way back: `seed_pollen` is the pollen parent of the seed parent.
enum class Relative {
    seed,          ///< seed parent
    pollen,        ///< pollen parent, or a blend
    seed_seed,     ///< grandparent
    seed_pollen,   ///< grandparent, or a blend
    pollen_seed,   ///< grandparent
    pollen_pollen  ///< grandparent, or a blend
};
inline constexpr std::size_t relatives = 6;  ///< how many Relative distinguishes

/// One relative and what it scored.
struct KinTrait {
    int node = -1;                    ///< into PedigreeGraph::nodes; -1 where nobody is known
    std::optional<TraitMean> mean{};  ///< nothing where nobody scored it
};

/// One trait, of an accession and of those that it came of.
struct TraitDescent {
    int node = 0;                         ///< into PedigreeGraph::nodes
    std::string trait;                    ///< as it was scored
    std::optional<TraitMean> own;         ///< nothing where the accession itself was not scored
    std::array<KinTrait, relatives> kin;  ///< by Relative

    /// The same by name.
    const KinTrait& of(Relative who) const { return kin[static_cast<std::size_t>(who)]; }
};

/// Every trait that was scored of the accession, its parents or its grandparents, by name. A sport has its
/// original's parents and its own scores.
std::vector<TraitDescent> trait_descent(const PedigreeGraph& graph, int node, const TraitMeans& means);

}  // namespace pipward::lineage
