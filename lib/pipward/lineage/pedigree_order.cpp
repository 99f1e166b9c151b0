// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_order.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/lineage/detail/written_pedigree.h"

namespace pipward::lineage {
namespace {

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
            say("An accession is its own ancestor: each is recorded as an offspring of the next."),
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

bool is_mixture(const std::vector<ParentShare>& parents) {
    return parents.size() > 1 || (!parents.empty() && parents.front().share < 1);
}

void inherit(PedigreeMember& member, const std::vector<PedigreeMember>& before) {
    member.calculated = member.diploid;
    member.expected = is_mixture(member.seed) || is_mixture(member.pollen);
    for (const auto* parents : {&member.seed, &member.pollen}) {
        for (const auto& parent : *parents) {
            member.calculated = member.calculated && before[parent.parent].calculated;
            member.expected = member.expected || before[parent.parent].expected;
        }
    }
}

}  // namespace

PedigreeOrder pedigree_order(std::span<const Accession> accessions, std::span<const BlendMember> blends) {
    auto written = detail::written_pedigree(accessions, blends);
    Walk walk(written.members);
    for (std::size_t i = 0; i < written.members.size(); ++i) {
        walk.from(static_cast<int>(i));
    }
    std::vector<int> place(written.members.size());
    for (std::size_t i = 0; i < walk.order.size(); ++i) {
        place[walk.order[i]] = static_cast<int>(i);
    }
    PedigreeOrder result{{}, {}, std::move(written.circles)};
    result.loops.insert(result.loops.end(), walk.loops.begin(), walk.loops.end());
    for (auto& [name, number] : written.number) {
        result.number.emplace_hint(result.number.end(), name, place[number]);
    }
    for (const int member : walk.order) {
        auto& added = result.members.emplace_back(std::move(written.members[member]));
        renumber(added.seed, place);
        renumber(added.pollen, place);
        if (walk.loops.empty()) {
            inherit(added, result.members);
        }
    }
    return result;
}

}  // namespace pipward::lineage
