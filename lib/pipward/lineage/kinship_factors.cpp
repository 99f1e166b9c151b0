// SPDX-License-Identifier: MIT
// Notation: s, p the gametes of a member's seed and pollen side, each a mixture of parents; F = s'Ap / 2 and
// D = 1 - (s'As + p'Ap) / 4, which are a_ii - 1 and a_ii - w'Aw of the average relationship, w = (s + p) / 2.
#include "pipward/lineage/kinship_factors.h"

#include <algorithm>
#include <map>

#include "pipward/lineage/detail/kinship_sweep.h"

namespace pipward::lineage {
namespace {

GeneFlow flow_of(std::span<const PedigreeMember> members) {
    GeneFlow flow{{0}, {}};
    std::map<int, double> shares;
    for (const auto& member : members) {
        shares.clear();
        for (const auto* side : {&member.seed, &member.pollen}) {
            for (const auto& parent : *side) {
                shares[parent.parent] += member.calculated ? parent.share / 2 : 0;
            }
        }
        for (const auto& [parent, share] : shares) {
            if (share > 0) {
                flow.parents.push_back({parent, share});
            }
        }
        flow.first.push_back(flow.parents.size());
    }
    return flow;
}

// The different gametes of one side, and which one each member came of; -1 for unknown.
struct Side {
    std::vector<Gamete> gametes;
    std::vector<int> of_member;
};

Side side_of(std::span<const PedigreeMember> members, Gamete PedigreeMember::*side) {
    Side result;
    std::vector<int> single(members.size(), -1);
    std::map<std::vector<std::pair<int, double>>, int> mixed;
    for (const auto& member : members) {
        const auto& gamete = member.*side;
        if (gamete.empty() || !member.calculated) {
            result.of_member.push_back(-1);
            continue;
        }
        std::vector<std::pair<int, double>> key;
        int* number = &single[gamete.front().parent];
        if (gamete.size() > 1 || gamete.front().share != 1) {
            for (const auto& parent : gamete) {
                key.emplace_back(parent.parent, parent.share);
            }
            number = &mixed.try_emplace(key, -1).first->second;
        }
        if (*number < 0) {
            *number = static_cast<int>(result.gametes.size());
            result.gametes.push_back(gamete);
        }
        result.of_member.push_back(*number);
    }
    return result;
}

std::vector<std::vector<int>> members_by_gamete(const Side& side) {
    std::vector<std::vector<int>> members(side.gametes.size());
    for (std::size_t i = 0; i < side.of_member.size(); ++i) {
        if (side.of_member[i] >= 0) {
            members[side.of_member[i]].push_back(static_cast<int>(i));
        }
    }
    return members;
}

bool all_before(const Gamete& gamete, int member) {
    return std::ranges::all_of(gamete, [&](const ParentShare& parent) { return parent.parent < member; });
}

std::vector<bool> is_parent(const GeneFlow& flow) {
    std::vector<bool> marked(flow.members());
    for (const auto& parent : flow.parents) {
        marked[parent.parent] = true;
    }
    return marked;
}

// Columns of A are needed for the gametes of the side that has fewer of them, here the rows; and only between
// parents, which few members of an orchard are.
class Factoring {
  public:
    explicit Factoring(std::span<const PedigreeMember> members)
        : factors_{flow_of(members), std::vector<double>(members.size()),
                   std::vector<double>(members.size())},
          rows_(side_of(members, &PedigreeMember::seed)),
          mates_(side_of(members, &PedigreeMember::pollen)),
          parents_(detail::marked_part(factors_.flow, is_parent(factors_.flow), place_)),
          parent_sampling_(parents_.members()),
          columns_(parents_) {
        if (mates_.gametes.size() < rows_.gametes.size()) {
            std::swap(rows_, mates_);
        }
        of_row_ = members_by_gamete(rows_);
    }

    KinshipFactors run() {
        const int members = factors_.flow.members();
        for (int i = 0; i < members; ++i) {
            const int row = rows_.of_member[i];
            if (row >= done_) {
                sweep_rows_before(i);
            }
            factors_.sampling[i] = std::max(0.0, 1 - (own(rows_, i) + own(mates_, i)) / 4);
            if (place_[i] >= 0) {
                parent_sampling_[place_[i]] = factors_.sampling[i];
            }
        }
        return std::move(factors_);
    }

  private:
    Gamete in_parents(const Gamete& gamete) const {
        Gamete placed = gamete;
        for (auto& parent : placed) {
            parent.parent = place_[parent.parent];
        }
        return placed;
    }

    // Gametes are numbered as they are first met, so those that wait are all from `done_` on.
    void sweep_rows_before(int member) {
        std::vector<Gamete> placed;
        for (std::size_t row = done_; row < rows_.gametes.size() && placed.size() < detail::sweep_lanes;
             ++row) {
            if (!all_before(rows_.gametes[row], member)) {
                break;
            }
            placed.push_back(in_parents(rows_.gametes[row]));
        }
        columns_.run(parent_sampling_, placed, mates_of(static_cast<int>(placed.size())));
        for (std::size_t lane = 0; lane < placed.size(); ++lane, ++done_) {
            for (const int child : of_row_[done_]) {
                const int mate = mates_.of_member[child];
                if (mate >= 0) {
                    factors_.inbreeding[child] = swept(mates_.gametes[mate], lane) / 2;
                }
            }
        }
    }

    std::vector<int> mates_of(int rows) const {
        std::vector<int> mates;
        for (int row = done_; row < done_ + rows; ++row) {
            for (const int child : of_row_[row]) {
                const int mate = mates_.of_member[child];
                if (mate >= 0) {
                    for (const auto& parent : mates_.gametes[mate]) {
                        mates.push_back(place_[parent.parent]);
                    }
                }
            }
        }
        return mates;
    }

    double swept(const Gamete& gamete, std::size_t lane) const {
        double sum = 0;
        for (const auto& parent : gamete) {
            sum += parent.share * columns_.at(place_[parent.parent])[lane];
        }
        return sum;
    }

    // g'Ag of the gamete that a member came of.
    double own(const Side& side, int member) {
        const int number = side.of_member[member];
        if (number < 0) {
            return 0;
        }
        const auto& gamete = side.gametes[number];
        if (gamete.size() == 1) {
            const auto& only = gamete.front();
            return only.share * only.share * (1 + factors_.inbreeding[only.parent]);
        }
        const auto [known, added] = own_of_mixture_.try_emplace({&side, number}, 0);
        if (added) {
            const auto placed = in_parents(gamete);
            std::vector<int> wanted;
            for (const auto& parent : placed) {
                wanted.push_back(parent.parent);
            }
            columns_.run(parent_sampling_, std::span(&placed, 1), wanted);
            known->second = swept(gamete, 0);
        }
        return known->second;
    }

    KinshipFactors factors_;
    Side rows_;
    Side mates_;
    std::vector<int> place_;
    GeneFlow parents_;
    std::vector<double> parent_sampling_;
    detail::KinshipSweep columns_;
    std::vector<std::vector<int>> of_row_;
    std::map<std::pair<const Side*, int>, double> own_of_mixture_;
    int done_ = 0;
};

}  // namespace

KinshipFactors kinship_factors(std::span<const PedigreeMember> members) {
    return Factoring(members).run();
}

}  // namespace pipward::lineage
