// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_order.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace pipward {
namespace {

using Mixture = std::map<std::string, double>;  // share of the gamete by name
using Mixtures = std::map<std::string, Mixture>;

double share_of(const BlendMember& member, double when_missing) {
    return member.share ? std::max(0.0, member.share->value) : when_missing;
}

Mixture mixture_of(const std::vector<const BlendMember*>& members) {
    double told = 0;
    int missing = 0;
    for (const auto* member : members) {
        told += share_of(*member, 0);
        missing += member->share ? 0 : 1;
    }
    const double each = missing > 0 ? std::max(0.0, 1 - told) / missing : 0;
    Mixture mixture;
    for (const auto* member : members) {
        mixture[member->member] += share_of(*member, each) / std::max(1.0, told);
    }
    return mixture;
}

Mixtures mixtures_of(std::span<const BlendMember> blends) {
    std::map<std::string, std::vector<const BlendMember*>> members;
    for (const auto& blend : blends) {
        members[blend.name].push_back(&blend);
    }
    Mixtures mixtures;
    for (const auto& [name, of_blend] : members) {
        mixtures[name] = mixture_of(of_blend);
    }
    return mixtures;
}

// The pedigree as it is written: accessions numbered in the order of the records, then names without one.
class Written {
  public:
    Written(std::span<const Accession> accessions, std::span<const BlendMember> blends)
        : blends_(mixtures_of(blends)) {
        std::vector<const Accession*> first_records;
        for (const auto& accession : accessions) {
            if (number.try_emplace(accession.name, static_cast<int>(members.size())).second) {
                members.push_back({accession.name, {}, {}, accession.ploidy.value_or(2) == 2});
                first_records.push_back(&accession);
            }
        }
        for (std::size_t i = 0; i < first_records.size(); ++i) {
            auto seed = parents_of(first_records[i]->seed_parent);
            auto pollen = parents_of(first_records[i]->pollen_parent);
            members[i].seed = std::move(seed);
            members[i].pollen = std::move(pollen);
        }
    }

    std::vector<PedigreeMember> members;
    std::map<std::string, int> number;

  private:
    std::vector<ParentShare> parents_of(const std::optional<std::string>& name) {
        if (!name || name->empty()) {
            return {};
        }
        const auto blend = blends_.find(*name);
        if (number.contains(*name) || blend == blends_.end()) {
            return {{number_of(*name), 1.0}};
        }
        std::vector<ParentShare> parents;
        for (const auto& [member, share] : blend->second) {
            parents.push_back({number_of(member), share});
        }
        return parents;
    }

    int number_of(const std::string& name) {
        const auto [entry, added] = number.try_emplace(name, static_cast<int>(members.size()));
        if (added) {
            members.push_back({name, {}, {}, true});
        }
        return entry->second;
    }

    Mixtures blends_;
};

Finding loop_finding(const std::vector<PedigreeMember>& members, std::span<const int> loop) {
    std::string way = members[loop.front()].name;
    for (const int member : loop.subspan(1)) {
        way += " -> " + members[member].name;
    }
    const auto& name = members[loop.front()].name;
    return {Level::error,
            "accession",
            name,
            "seed_parent, pollen_parent",
            fmt::format("{} -> {}", way, name),
            say("An accession is its own ancestor: each is recorded as a child of the next."),
            say("Correct or clear one of these parents.")};
}

// Depth first with a stack of our own: a pedigree may be deeper than the program's stack.
class Walk {
  public:
    explicit Walk(const std::vector<PedigreeMember>& members) : members_(members), state_(members.size()) {}

    void from(int start) {
        if (state_[start] == State::new_here) {
            enter(start);
        }
        while (!path_.empty()) {
            step();
        }
    }

    std::vector<int> order;
    Findings loops;

  private:
    enum class State : unsigned char { new_here, on_path, done };

    void enter(int member) {
        state_[member] = State::on_path;
        path_.push_back(member);
        next_.push_back(0);
    }

    void step() {
        const auto& member = members_[path_.back()];
        const std::size_t which = next_.back()++;
        if (which < member.seed.size()) {
            visit(member.seed[which].parent);
        } else if (which < member.seed.size() + member.pollen.size()) {
            visit(member.pollen[which - member.seed.size()].parent);
        } else {
            leave();
        }
    }

    void visit(int parent) {
        if (state_[parent] == State::new_here) {
            enter(parent);
        } else if (state_[parent] == State::on_path) {
            const auto begin = std::ranges::find(path_, parent);
            loops.push_back(loop_finding(members_, {begin, path_.end()}));
        }
    }

    void leave() {
        state_[path_.back()] = State::done;
        order.push_back(path_.back());
        path_.pop_back();
        next_.pop_back();
    }

    const std::vector<PedigreeMember>& members_;
    std::vector<State> state_;
    std::vector<int> path_;
    std::vector<std::size_t> next_;  // parent to look at, one a member of the path
};

void renumber(std::vector<ParentShare>& parents, const std::vector<int>& place) {
    for (auto& parent : parents) {
        parent.parent = place[parent.parent];
    }
}

}  // namespace

PedigreeOrder pedigree_order(std::span<const Accession> accessions, std::span<const BlendMember> blends) {
    const Written written(accessions, blends);
    Walk walk(written.members);
    for (std::size_t i = 0; i < written.members.size(); ++i) {
        walk.from(static_cast<int>(i));
    }
    std::vector<int> place(written.members.size());
    for (std::size_t i = 0; i < walk.order.size(); ++i) {
        place[walk.order[i]] = static_cast<int>(i);
    }
    PedigreeOrder result{{}, {}, std::move(walk.loops)};
    for (const int member : walk.order) {
        auto& added = result.members.emplace_back(written.members[member]);
        renumber(added.seed, place);
        renumber(added.pollen, place);
        result.number[added.name] = place[member];
    }
    return result;
}

}  // namespace pipward
