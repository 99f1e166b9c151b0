// SPDX-License-Identifier: MIT
#include <map>

#include "pipward/book/check.h"

namespace pipward::book {
namespace {

using TreeByLabel = std::map<std::string, const Tree*>;

void check_subject(const BloomNote& noted, const TreeByLabel& trees, Findings& findings) {
    if (!noted.tree && !noted.accession) {
        findings.push_back(error({"bloom_note", fid_name(noted.fid), "tree"},
                                 say("The note names neither a tree nor an accession."),
                                 say("Fill in one of them.")));
    }
    if (!noted.tree || !noted.accession) {
        return;
    }
    const auto found = trees.find(*noted.tree);
    if (found != trees.end() && found->second->accession && *found->second->accession != *noted.accession) {
        findings.push_back(error({"bloom_note", fid_name(noted.fid), "accession", *noted.accession},
                                 say("The note's tree {} is {}.", *noted.tree, *found->second->accession),
                                 say("Correct the tree or the accession, or leave the accession out.")));
    }
}

void check_day(const BloomNote& noted, const TreeByLabel& trees, Day as_of, Findings& findings) {
    const Whereabouts place{"bloom_note", fid_name(noted.fid), "noted_on", to_iso(noted.noted_on)};
    if (noted.noted_on > as_of) {
        findings.push_back(warning(place,
                                   say("The note lies in the future of {}; it is not used.", to_iso(as_of)),
                                   say("Correct the day if it is wrong.")));
    }
    const auto found = noted.tree ? trees.find(*noted.tree) : trees.end();
    if (found == trees.end()) {
        return;
    }
    check_tree_stands(place, *found->second, noted.noted_on, findings);
}

}  // namespace

void check_tree_stands(const Whereabouts& place, const Tree& tree, Day day, Findings& findings) {
    if (tree.planted_on && day < *tree.planted_on) {
        findings.push_back(
            warning(place, say("Tree {} was planted only on {}.", tree.label, to_iso(*tree.planted_on)),
                    say("Correct one of the two days.")));
    }
    if (tree.removed_on && day > *tree.removed_on) {
        findings.push_back(warning(place,
                                   say("Tree {} was removed on {}.", tree.label, to_iso(*tree.removed_on)),
                                   say("Correct one of the two days.")));
    }
}

void check_bloom_notes(const Orchard& orchard, Day as_of, Findings& findings) {
    TreeByLabel trees;
    for (const auto& tree : orchard.trees) {
        trees.emplace(tree.label, &tree);
    }
    for (const auto& noted : orchard.bloom_notes) {
        check_subject(noted, trees, findings);
        check_day(noted, trees, as_of, findings);
    }
}

}  // namespace pipward::book
