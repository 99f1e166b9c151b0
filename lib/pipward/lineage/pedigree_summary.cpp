// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_summary.h"

namespace pipward::lineage {
namespace {

Sentence founders_of(const PedigreeGraph& graph, const std::vector<AncestorShare>& shares) {
    std::vector<Sentence> parts;
    std::size_t founders = 0;
    for (const auto& share : shares) {
        if (share.is_founder && ++founders <= most_founders_named) {
            parts.push_back(say("{:.3g} % of {}", 100 * share.share, graph.nodes[share.node].name));
        }
    }
    if (founders > most_founders_named) {
        parts.push_back(say("{} more", founders - most_founders_named));
    }
    return joined(parts, verbatim(", "));
}

double unknown_of(const std::vector<AncestorShare>& shares) {
    double unknown = 0;
    for (const auto& share : shares) {
        unknown += share.unknown_share;
    }
    return unknown;
}

Sentence ancestors_of(const PedigreeGraph& graph, const std::string& name,
                      const std::vector<AncestorShare>& shares) {
    const auto founders = founders_of(graph, shares);
    if (shares.size() == 1) {
        return say("No parent of {} is recorded.", name);
    }
    return shares.size() == 2 ? say("{} descends from 1 ancestor and is expected to have {}.", name, founders)
                              : say("{} descends from {} ancestors and is expected to have {}.", name,
                                    shares.size() - 1, founders);
}

}  // namespace

Sentence pedigree_summary(const PedigreeGraph& graph, int subject, const std::vector<AncestorShare>& shares,
                      std::size_t descendants) {
    std::vector<Sentence> parts{ancestors_of(graph, graph.nodes[subject].name, shares)};
    if (const double unknown = unknown_of(shares); unknown > 0) {
        parts.push_back(say("From unknown parents: {:.3g} %.", 100 * unknown));
    }
    parts.push_back(say("Descendants in the book: {}.", descendants));
    return joined(parts, verbatim(" "));
}

Sentence share_note(const PedigreeGraph& graph, const AncestorShare& share) {
    std::vector<Sentence> remarks;
    if (share.nearest == 0) {
        remarks.push_back(say("The same genes: one is a sport or clone of the other."));
    }
    if (share.by_blend) {
        remarks.push_back(say("By a pollen blend, weighted by its shares."));
    }
    if (share.unknown_share > 0) {
        remarks.push_back(say("One of its parents is not known."));
    }
    if (share.is_founder && graph.nodes[share.node].record == nullptr) {
        remarks.push_back(say("The book has its name only."));
    }
    return joined(remarks, verbatim(" "));
}

}  // namespace pipward::lineage
