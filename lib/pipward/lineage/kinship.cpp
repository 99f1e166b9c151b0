// SPDX-License-Identifier: MIT
#include "pipward/lineage/kinship.h"

#include <algorithm>
#include <cstdint>
#include <mutex>
#include <unordered_map>
#include <vector>

#include "pipward/lineage/pedigree_order.h"
#include "pipward/value/finding.h"

namespace pipward::lineage {
namespace {

// Two members, the later in the order first: its parents all stand before it.
struct Pair {
    int later = 0;
    int earlier = 0;
};

Pair pair_of(int a, int b) {
    return {std::max(a, b), std::min(a, b)};
}

std::uint64_t key_of(Pair pair) {
    return (static_cast<std::uint64_t>(static_cast<std::uint32_t>(pair.later)) << 32) |
           static_cast<std::uint32_t>(pair.earlier);
}

}  // namespace

// Pairs are worked out when asked for and kept. A stack of our own: pedigrees may be deep.
struct Kinship::Pedigree {
    PedigreeOrder order;

    double between(int a, int b) const {
        const std::lock_guard held(lock);
        std::vector<Pair> waiting{pair_of(a, b)};
        while (!waiting.empty()) {
            const Pair pair = waiting.back();
            const std::size_t before = waiting.size();
            const double value = known.contains(key_of(pair)) ? 0 : from_parents(pair, waiting);
            if (waiting.size() == before) {
                known.emplace(key_of(pair), value);
                waiting.pop_back();
            }
        }
        return known.at(key_of(pair_of(a, b)));
    }

  private:
    // By the parents of the later of the two. Pairs not yet known are added to `waiting`, and then the value
    // means nothing.
    double from_parents(Pair pair, std::vector<Pair>& waiting) const {
        const auto& member = order.members[pair.later];
        if (pair.later == pair.earlier) {
            return (1 + inbreeding(member, waiting)) / 2;
        }
        return (mean(member.seed, pair.earlier, waiting) + mean(member.pollen, pair.earlier, waiting)) / 2;
    }

    double inbreeding(const PedigreeMember& member, std::vector<Pair>& waiting) const {
        double sum = 0;
        for (const auto& seed : member.seed) {
            sum += seed.share * mean(member.pollen, seed.parent, waiting);
        }
        return sum;
    }

    double mean(const std::vector<ParentShare>& parents, int other, std::vector<Pair>& waiting) const {
        double sum = 0;
        for (const auto& parent : parents) {
            const Pair pair = pair_of(parent.parent, other);
            const auto found = known.find(key_of(pair));
            if (found == known.end()) {
                waiting.push_back(pair);
            } else {
                sum += parent.share * found->second;
            }
        }
        return sum;
    }

    mutable std::mutex lock;
    mutable std::unordered_map<std::uint64_t, double> known;
};

Kinship::Kinship(std::span<const Accession> accessions, std::span<const BlendMember> blends) {
    auto order = pedigree_order(accessions, blends);
    if (!order.loops.empty()) {
        throw Error(Trouble::input, std::move(order.loops));
    }
    auto pedigree = std::make_shared<Pedigree>();
    pedigree->order = std::move(order);
    pedigree_ = std::move(pedigree);
}

std::optional<double> Kinship::between(const std::string& a, const std::string& b) const {
    const auto& order = pedigree_->order;
    const auto first = order.number.find(a);
    const auto second = order.number.find(b);
    if (first == order.number.end() || second == order.number.end()) {
        return std::nullopt;
    }
    const auto& one = order.members[first->second];
    const auto& other = order.members[second->second];
    const bool nothing_known = &one != &other && one.is_founder() && other.is_founder();
    if (nothing_known || !one.calculated || !other.calculated) {
        return std::nullopt;
    }
    return pedigree_->between(first->second, second->second);
}

}  // namespace pipward::lineage
