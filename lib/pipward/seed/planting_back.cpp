// SPDX-License-Identifier: MIT
#include "pipward/seed/planting_back.h"

#include <set>

#include "pipward/value/complaint.h"

namespace pipward::seed {
namespace {

struct Names {
    std::set<std::string> trees;
    std::set<std::string> accessions;
};

Names names_in(const Orchard& orchard, const std::string& remark) {
    Names names;
    for (const auto& tree : orchard.trees) {
        if (tree.remark == remark) {
            names.trees.insert(tree.label);
        }
    }
    for (const auto& accession : orchard.accessions) {
        if (accession.remark == remark) {
            names.accessions.insert(accession.name);
        }
    }
    return names;
}

void tell(Findings& findings, const char* table, const std::string& name) {
    findings.push_back({Level::error, table, name, "", "",
                        say("It refers to {}, which is of this planting.", name),
                        say("Undo that first, or leave the planting.")});
}

/// What the book holds of these trees and accessions besides themselves.
Findings what_refers(const Orchard& orchard, const Names& names) {
    Findings findings;
    const auto check = [&](const char* table, const std::set<std::string>& among,
                           const std::optional<std::string>& name) {
        if (name && among.contains(*name)) {
            tell(findings, table, *name);
        }
    };
    for (const auto& remark : orchard.bloom_observations) {
        check("bloom_observation", names.trees, remark.tree);
        check("bloom_observation", names.accessions, remark.accession);
    }
    for (const auto& work : orchard.pollinations) {
        check("pollination", names.trees, work.tree);
    }
    for (const auto& work : orchard.branch_works) {
        check("branch_work", names.trees, work.tree);
    }
    for (const auto& score : orchard.trait_scores) {
        check("trait_score", names.trees, score.tree);
    }
    for (const auto& goal : orchard.goals) {
        check("cross_goal", names.accessions, goal.seed_parent);
        check("cross_goal", names.accessions, goal.pollen_parent);
    }
    for (const auto& lot : orchard.pollen_lots) {
        check("pollen_lot", names.accessions, lot.donor);
    }
    for (const auto& member : orchard.blend_members) {
        check("blend", names.accessions, member.member);
    }
    for (const auto& accession : orchard.accessions) {
        check("accession", names.accessions, accession.seed_parent);
        check("accession", names.accessions, accession.pollen_parent);
        check("accession", names.accessions, accession.sport_of);
    }
    for (const auto& tree : orchard.trees) {
        if (!names.trees.contains(tree.label)) {
            check("tree", names.accessions, tree.accession);
        }
    }
    return findings;
}

}  // namespace

std::string planting_remark(const std::string& name) {
    return "planting " + name;
}

PlantingRows planting_to_take_back(const Orchard& orchard, const std::string& remark) {
    const auto names = names_in(orchard, remark);
    if (names.trees.empty()) {
        throw Error(Trouble::input,
                    about_parameter("planting", remark, say("The book has no trees of this planting."),
                                    say("Name it as in the trees' remarks, without the word planting.")));
    }
    if (auto findings = what_refers(orchard, names); !findings.empty()) {
        throw Error(Trouble::input, std::move(findings));
    }
    PlantingRows rows;
    for (const auto& tree : orchard.trees) {
        if (tree.remark == remark) {
            rows.trees.push_back(&tree);
        }
    }
    for (const auto& accession : orchard.accessions) {
        if (accession.remark == remark) {
            rows.accessions.push_back(&accession);
        }
    }
    for (const auto& withdrawal : orchard.seed_withdrawals) {
        if (withdrawal.remark == remark) {
            rows.withdrawals.push_back(&withdrawal);
        }
    }
    return rows;
}

}  // namespace pipward::seed
