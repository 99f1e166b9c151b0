// SPDX-License-Identifier: MIT
#include "pipward/place/detail/index_parts.h"

#include <algorithm>
#include <map>
#include <set>
#include <unordered_map>

#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

using Trees = std::vector<std::uint32_t>;
using TreesByName = std::unordered_map<std::string_view, Trees>;  // asked by name only, never walked

const Trees& trees_of(const TreesByName& by_name, std::string_view name) {
    static const Trees no_trees;
    const auto found = by_name.find(name);
    return found == by_name.end() ? no_trees : found->second;
}

/// Walks over the records once and notes every way from a text to a tree.
class Filler {
  public:
    Filler(const Orchard& orchard, NamePool& names, FamilyTable& families, RemarkPool& remarks)
        : orchard_(orchard), names_(names), families_(families), remarks_(remarks) {}

    void fill() {
        collect();
        name_trees();
        name_accessions();
        name_tags();
        find_families();
        name_crosses();
        name_lots();
        take_notes();
        names_.finish();
        remarks_.finish();
    }

  private:
    void collect() {
        for (std::uint32_t i = 0; i < orchard_.trees.size(); ++i) {
            const auto& tree = orchard_.trees[i];
            by_label_[tree.label].push_back(i);
            if (tree.accession) {
                by_accession_[*tree.accession].push_back(i);
            }
        }
        for (std::uint32_t i = 0; i < orchard_.goals.size(); ++i) {
            const auto& goal = orchard_.goals[i];
            crosses_by_parts_[parts_key(folded_text(goal.code))].push_back(i);
            crosses_by_parents_[{goal.seed_parent, goal.pollen_parent}].push_back(i);
        }
        children_.resize(orchard_.goals.size());
    }

    void lead_all(std::uint32_t name, const Trees& trees) {
        for (const auto tree : trees) {
            names_.lead(name, tree);
        }
    }

    void name_trees() {
        for (std::uint32_t i = 0; i < orchard_.trees.size(); ++i) {
            names_.lead(names_.add(MatchKind::label, orchard_.trees[i].label), i);
        }
    }

    // Also names that stand at trees and nowhere else.
    void name_accessions() {
        std::unordered_map<std::string_view, bool> named;
        const auto name = [&](const std::string& accession) {
            const auto& trees = trees_of(by_accession_, accession);
            if (!trees.empty() && named.emplace(accession, true).second) {
                lead_all(names_.add(MatchKind::accession, accession), trees);
            }
        };
        for (const auto& accession : orchard_.accessions) {
            name(accession.name);
        }
        for (const auto& tree : orchard_.trees) {
            if (tree.accession) {
                name(*tree.accession);
            }
        }
    }

    void name_tags() {
        for (const auto& work : orchard_.pollinations) {
            lead_all(names_.add(MatchKind::tag, work.tag), trees_of(by_label_, work.tree));
        }
    }

    // The crosses that an accession came of: those whose code its name begins with, else those of its
    // parents.
    Trees crosses_of(const Accession& accession) const {
        auto parts = name_parts(folded_text(accession.name));
        for (; !parts.empty(); parts.pop_back()) {
            const auto found = crosses_by_parts_.find(put_together(parts));
            if (found != crosses_by_parts_.end()) {
                return found->second;
            }
        }
        const auto found = crosses_by_parents_.find(
            {accession.seed_parent.value_or(""), accession.pollen_parent.value_or("")});
        const bool bred =
            accession.kind == AccessionKind::seedling || accession.kind == AccessionKind::selection;
        return bred && found != crosses_by_parents_.end() ? found->second : Trees{};
    }

    static std::string put_together(const std::vector<std::string>& parts) {
        std::string text;
        for (const auto& part : parts) {
            text += (text.empty() ? "" : " ") + part;
        }
        return text;
    }

    using Families = std::map<std::pair<std::string_view, std::string_view>, Family>;

    void find_families() {
        Families families;
        for (const auto& accession : orchard_.accessions) {
            const auto& trees = trees_of(by_accession_, accession.name);
            if (trees.empty()) {
                continue;
            }
            const auto crosses = crosses_of(accession);
            for (const auto cross : crosses) {
                children_[cross].insert(children_[cross].end(), trees.begin(), trees.end());
            }
            if (accession.seed_parent && accession.pollen_parent) {
                add_siblings(families[{*accession.seed_parent, *accession.pollen_parent}], accession,
                             crosses);
            }
        }
        for (auto& [parents, family] : families) {
            family.seed_parent = parents.first;
            family.pollen_parent = parents.second;
            family.seed_key = squeezed(folded_text(parents.first));
            family.pollen_key = squeezed(folded_text(parents.second));
            families_.add(std::move(family));
        }
    }

    void add_siblings(Family& family, const Accession& accession, const Trees& crosses) const {
        const std::string code = crosses.empty() ? "" : orchard_.goals[crosses.front()].code;
        const std::string_view key = *family.codes.insert(squeezed(folded_text(code))).first;
        for (const auto tree : trees_of(by_accession_, accession.name)) {
            family.siblings.push_back({tree, sibling_number(accession, orchard_.trees[tree], code), key});
        }
    }

    // A cross leads to its seedlings; before there are any, to the trees worked for it; before that, to the
    // seed parent.
    void name_crosses() {
        std::unordered_map<std::string_view, Trees> pollinated;
        for (const auto& work : orchard_.pollinations) {
            const auto& trees = trees_of(by_label_, work.tree);
            auto& all = pollinated[work.cross];
            all.insert(all.end(), trees.begin(), trees.end());
        }
        for (std::uint32_t i = 0; i < orchard_.goals.size(); ++i) {
            const auto& goal = orchard_.goals[i];
            const auto& flowers = trees_of(pollinated, goal.code);
            if (!children_[i].empty()) {
                lead_all(names_.add(MatchKind::cross_child, goal.code), children_[i]);
            }
            if (!flowers.empty()) {
                lead_all(names_.add(MatchKind::cross_pollinated, goal.code), flowers);
            }
            if (children_[i].empty() && flowers.empty()) {
                lead_all(names_.add(MatchKind::cross_parent, goal.code),
                         trees_of(by_accession_, goal.seed_parent));
            }
        }
    }

    // A pollen lot leads to the flowers that it was used on, else to the trees of its donor; a seed lot to
    // the seedlings of its cross, else to the trees that bore the seed.
    void name_lots() {
        std::unordered_map<std::string_view, Trees> used;
        std::unordered_map<std::string_view, Trees> bore;
        for (const auto& work : orchard_.pollinations) {
            const auto& trees = trees_of(by_label_, work.tree);
            auto& all = bore[work.cross];
            all.insert(all.end(), trees.begin(), trees.end());
            if (work.lot) {
                auto& flowers = used[*work.lot];
                flowers.insert(flowers.end(), trees.begin(), trees.end());
            }
        }
        std::unordered_map<std::string_view, std::uint32_t> crosses;
        for (std::uint32_t i = 0; i < orchard_.goals.size(); ++i) {
            crosses.emplace(orchard_.goals[i].code, i);
        }
        std::set<std::string_view> named;
        for (const auto& lot : orchard_.pollen_lots) {
            const auto& flowers = trees_of(used, lot.code);
            name_lot(MatchKind::pollen_lot, lot.code,
                     flowers.empty() ? trees_of(by_accession_, lot.donor) : flowers);
            named.insert(lot.code);
        }
        for (const auto& work : orchard_.pollinations) {
            if (work.lot && named.insert(*work.lot).second) {
                name_lot(MatchKind::pollen_lot, *work.lot, trees_of(used, *work.lot));
            }
        }
        for (const auto& lot : orchard_.seed_lots) {
            const auto cross = crosses.find(lot.cross);
            const bool has_children = cross != crosses.end() && !children_[cross->second].empty();
            name_lot(MatchKind::seed_lot, lot.code,
                     has_children ? children_[cross->second] : trees_of(bore, lot.cross));
        }
    }

    void name_lot(MatchKind kind, const std::string& code, const Trees& trees) {
        if (!trees.empty()) {
            lead_all(names_.add(kind, code), trees);
        }
    }

    void take_remark(const std::optional<std::string>& remark, const Trees& trees) {
        if (!remark || remark->empty() || trees.empty()) {
            return;
        }
        const auto number = remarks_.add(*remark);
        for (const auto tree : trees) {
            remarks_.lead(number, tree);
        }
    }

    void take_notes() {
        for (std::uint32_t i = 0; i < orchard_.trees.size(); ++i) {
            take_remark(orchard_.trees[i].remark, {i});
        }
        for (const auto& accession : orchard_.accessions) {
            take_remark(accession.remark, trees_of(by_accession_, accession.name));
        }
        for (const auto& seen : orchard_.bloom_observations) {
            take_remark(seen.remark, seen.tree ? trees_of(by_label_, *seen.tree)
                                               : trees_of(by_accession_, seen.accession.value_or("")));
        }
        for (const auto& work : orchard_.pollinations) {
            take_remark(work.remark, trees_of(by_label_, work.tree));
        }
        for (const auto& score : orchard_.trait_scores) {
            take_remark(score.remark, trees_of(by_label_, score.tree));
        }
        for (std::uint32_t i = 0; i < orchard_.goals.size(); ++i) {
            take_remark(orchard_.goals[i].remark, children_[i]);
        }
    }

    const Orchard& orchard_;
    NamePool& names_;
    FamilyTable& families_;
    RemarkPool& remarks_;
    TreesByName by_label_;
    TreesByName by_accession_;
    std::unordered_map<std::string, Trees> crosses_by_parts_;
    std::map<std::pair<std::string, std::string>, Trees> crosses_by_parents_;
    std::vector<Trees> children_;  // by cross goal
};

}  // namespace

void fill_index(const Orchard& orchard, NamePool& names, FamilyTable& families, RemarkPool& remarks) {
    Filler(orchard, names, families, remarks).fill();
}

}  // namespace pipward::place::detail
