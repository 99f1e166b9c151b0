// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_graph.h"

#include <algorithm>
#include <set>

#include "pipward/lineage/detail/blend_mixtures.h"

namespace pipward::lineage {
namespace {

// The graph in the order of the records, before it is sorted.
class Written {
  public:
    Written(std::span<const Accession> accessions, std::span<const BlendMember> blends)
        : members_(detail::blend_mixtures(blends)) {
        for (const auto& accession : accessions) {
            if (number.try_emplace(accession.name, static_cast<int>(nodes.size())).second) {
                nodes.push_back({accession.name, &accession, false});
            }
        }
        const auto with_records = static_cast<int>(nodes.size());
        for (int node = 0; node < with_records; ++node) {
            link_parents(node, *nodes[node].record);
        }
    }

    std::vector<PedigreeNode> nodes;
    std::map<std::string, int> number;
    std::vector<PedigreeLink> links;  // by child, its seed parent first

  private:
    void link_parents(int node, const Accession& accession) {
        if (accession.sport_of && !accession.sport_of->empty()) {
            links.push_back({node, number_of(*accession.sport_of, false), PedigreeRole::sport, 1});
            return;
        }
        if (accession.seed_parent && !accession.seed_parent->empty()) {
            links.push_back({node, number_of(*accession.seed_parent, false), PedigreeRole::seed, 1});
        }
        if (accession.pollen_parent && !accession.pollen_parent->empty()) {
            links.push_back({node, number_of(*accession.pollen_parent, true), PedigreeRole::pollen, 1});
        }
    }

    int number_of(const std::string& name, bool may_be_blend) {
        const auto blend = members_.find(name);
        const bool is_blend = may_be_blend && blend != members_.end();
        const auto [entry, added] = number.try_emplace(name, static_cast<int>(nodes.size()));
        const int node = entry->second;
        if (added) {
            nodes.push_back({name, nullptr, is_blend});
        }
        if (added && is_blend) {
            for (const auto& [member, share] : blend->second) {
                links.push_back({node, number_of(member, false), PedigreeRole::member, share});
            }
        }
        return node;
    }

    detail::BlendMixtures members_;
};

// Places of the nodes with every parent before its children, founders in their own order; nodes on or behind
// a circle are left out.
std::vector<int> sorted_nodes(const Written& written) {
    std::vector<int> open(written.nodes.size());
    std::vector<std::vector<int>> children(written.nodes.size());
    for (const auto& link : written.links) {
        ++open[link.child];
        children[link.parent].push_back(link.child);
    }
    std::vector<int> order;
    for (std::size_t node = 0; node < written.nodes.size(); ++node) {
        if (open[node] == 0) {
            order.push_back(static_cast<int>(node));
        }
    }
    for (std::size_t next = 0; next < order.size(); ++next) {
        for (const int child : children[order[next]]) {
            if (--open[child] == 0) {
                order.push_back(child);
            }
        }
    }
    return order;
}

Findings circles(const Written& written, const std::vector<int>& order) {
    const std::set<int> sorted(order.begin(), order.end());
    Findings findings;
    for (std::size_t node = 0; node < written.nodes.size(); ++node) {
        if (!sorted.contains(static_cast<int>(node))) {
            findings.push_back({Level::error, "accession", written.nodes[node].name,
                                "seed_parent, pollen_parent, sport_of", "",
                                say("The accession is its own ancestor, or descends from one that is."),
                                say("See book-check, and correct the wrong one of these parents.")});
        }
    }
    return findings;
}

}  // namespace

const PedigreeLink* PedigreeGraph::parent(int node, PedigreeRole role) const {
    const auto found = std::ranges::find(parents[node], role, &PedigreeLink::role);
    return found == parents[node].end() ? nullptr : &*found;
}

double passed_on(const PedigreeLink& link) {
    return link.role == PedigreeRole::member ? link.share : link.role == PedigreeRole::sport ? 1.0 : 0.5;
}

int generations_of(const PedigreeLink& link) {
    return link.role == PedigreeRole::seed || link.role == PedigreeRole::pollen ? 1 : 0;
}

PedigreeGraph pedigree_graph(std::span<const Accession> accessions, std::span<const BlendMember> blends) {
    const Written written(accessions, blends);
    const auto order = sorted_nodes(written);
    if (order.size() < written.nodes.size()) {
        throw Error(Trouble::input, circles(written, order));
    }
    std::vector<int> place(order.size());
    PedigreeGraph graph;
    for (const int node : order) {
        place[node] = static_cast<int>(graph.nodes.size());
        graph.number[written.nodes[node].name] = place[node];
        graph.nodes.push_back(written.nodes[node]);
    }
    graph.parents.resize(order.size());
    graph.children.resize(order.size());
    for (auto link : written.links) {
        link.child = place[link.child];
        link.parent = place[link.parent];
        graph.parents[link.child].push_back(link);
        graph.children[link.parent].push_back(link);
    }
    for (auto& links : graph.children) {
        std::ranges::stable_sort(links, {}, &PedigreeLink::child);
    }
    return graph;
}

}  // namespace pipward::lineage
