// SPDX-License-Identifier: MIT
#include "pipward/operation/take_out_planting.h"

#include <set>

#include "pipward/operation/complaint.h"

namespace pipward::operation {
namespace {

struct Names {
    std::set<std::string> trees;
    std::set<std::string> accessions;
};

Names names_in(const Orchard& orchard, const std::string& note) {
    Names names;
    for (const auto& tree : orchard.trees) {
        if (tree.note == note) {
            names.trees.insert(tree.label);
        }
    }
    for (const auto& accession : orchard.accessions) {
        if (accession.note == note) {
            names.accessions.insert(accession.name);
        }
    }
    return names;
}

void tell(Findings& findings, const char* table, const std::string& name) {
    findings.push_back({Level::error, table, name, "", "",
                        say("It refers to {}, which is of this planting.", name),
                        say("Take that back first, or leave the planting.")});
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
    for (const auto& note : orchard.bloom_notes) {
        check("bloom_note", names.trees, note.tree);
        check("bloom_note", names.accessions, note.accession);
    }
    for (const auto& work : orchard.pollinations) {
        check("pollination", names.trees, work.tree);
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
    }
    for (const auto& tree : orchard.trees) {
        if (!names.trees.contains(tree.label)) {
            check("tree", names.accessions, tree.accession);
        }
    }
    return findings;
}

}  // namespace

std::string planting_note(const std::string& name) {
    return "planting " + name;
}

book::BookChange planting_taken_out(const Orchard& orchard, const std::string& note) {
    const auto names = names_in(orchard, note);
    if (names.trees.empty()) {
        throw Error(
            Trouble::input,
            about_parameter("planting", note, say("The book has no trees of this planting."),
                            say("Name it as it stands in the trees' notes, without the word planting.")));
    }
    if (auto findings = what_refers(orchard, names); !findings.empty()) {
        throw Error(Trouble::input, std::move(findings));
    }
    book::BookChange change;
    for (const auto& tree : orchard.trees) {
        if (tree.note == note) {
            change.removed.push_back({"tree", tree.fid, tree.label, {{"label", tree.label}, {"note", note}}});
        }
    }
    for (const auto& accession : orchard.accessions) {
        if (accession.note == note) {
            change.removed.push_back(
                {"accession", accession.fid, accession.name, {{"name", accession.name}, {"note", note}}});
        }
    }
    return change;
}

}  // namespace pipward::operation
