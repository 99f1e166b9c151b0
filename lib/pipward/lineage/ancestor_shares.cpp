// SPDX-License-Identifier: MIT
#include "pipward/lineage/ancestor_shares.h"

#include <algorithm>
#include <limits>

namespace pipward::lineage {
namespace {

constexpr double rounding = 1e-9;

// What of a node's genes came from nobody that is known, where something of its parents is.
double unknown_part(const PedigreeGraph& graph, int node) {
    double known = 0;
    for (const auto& link : graph.parents[node]) {
        known += passed_on(link);
    }
    const double rest = 1 - known;
    return graph.parents[node].empty() || rest < rounding ? 0 : rest;
}

void pass_up(const AncestorShare& from, const PedigreeLink& link, AncestorShare& to) {
    to.share += from.share * passed_on(link);
    to.ways = std::min(most_ways, to.ways + from.ways);
    to.nearest = std::min(to.nearest, from.nearest + generations_of(link));
    to.farthest = std::max(to.farthest, from.farthest + generations_of(link));
    to.by_blend = to.by_blend || from.by_blend || link.role == PedigreeRole::member;
}

}  // namespace

std::vector<AncestorShare> ancestor_shares(const PedigreeGraph& graph, int subject) {
    std::vector<AncestorShare> of(graph.nodes.size());
    for (auto& share : of) {
        share.nearest = std::numeric_limits<int>::max() / 2;
    }
    of[subject] = {subject, 1, 0, 0, 1, false, false, 0};
    std::vector<AncestorShare> found;
    double lost_in_blends = 0;  // pollen of a blend that none of its members gave
    for (int node = subject; node >= 0; --node) {
        auto& share = of[node];
        if (share.ways == 0) {
            continue;
        }
        share.node = node;
        share.is_founder = graph.parents[node].empty();
        share.unknown_share = share.share * unknown_part(graph, node);
        for (const auto& link : graph.parents[node]) {
            pass_up(share, link, of[link.parent]);
        }
        if (graph.nodes[node].is_blend) {
            lost_in_blends += share.unknown_share;
        } else {
            found.push_back(share);
        }
    }
    found.front().unknown_share += lost_in_blends;
    std::ranges::sort(found, [&](const AncestorShare& a, const AncestorShare& b) {
        return a.share != b.share ? a.share > b.share : graph.nodes[a.node].name < graph.nodes[b.node].name;
    });
    const auto self = std::ranges::find(found, subject, &AncestorShare::node);
    std::rotate(found.begin(), self, self + 1);
    return found;
}

std::vector<double> shares_of_ancestor(const PedigreeGraph& graph, int ancestor) {
    std::vector<double> share(graph.nodes.size());
    share[ancestor] = 1;
    for (std::size_t node = static_cast<std::size_t>(ancestor) + 1; node < graph.nodes.size(); ++node) {
        for (const auto& link : graph.parents[node]) {
            share[node] += share[link.parent] * passed_on(link);
        }
    }
    return share;
}

std::vector<Descendant> descendants_of(const PedigreeGraph& graph, int ancestor) {
    const auto shares = shares_of_ancestor(graph, ancestor);
    std::vector<int> generation(graph.nodes.size(), -1);
    generation[ancestor] = 0;
    std::vector<Descendant> rows;
    for (std::size_t node = static_cast<std::size_t>(ancestor) + 1; node < graph.nodes.size(); ++node) {
        for (const auto& link : graph.parents[node]) {
            const int there = generation[link.parent] + generations_of(link);
            if (generation[link.parent] >= 0 && (generation[node] < 0 || there < generation[node])) {
                generation[node] = there;
            }
        }
        if (generation[node] >= 0 && !graph.nodes[node].is_blend) {
            rows.push_back({static_cast<int>(node), shares[node], generation[node]});
        }
    }
    std::ranges::stable_sort(rows, {}, [&](const Descendant& row) {
        return std::pair(row.generation, graph.nodes[row.node].name);
    });
    return rows;
}

}  // namespace pipward::lineage
