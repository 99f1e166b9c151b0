// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"
#include "pipward/record/presence.h"

namespace pipward::book::detail {
namespace {

void check_subject(const BloomNote& noted, const OrchardIndex& book, Findings& findings) {
    if (!noted.tree && !noted.accession) {
        findings.push_back(error({"bloom_note", fid_name(noted.fid), "tree"},
                                 say("The note names neither a tree nor an accession."),
                                 say("Fill in one of them.")));
    }
    if (!noted.tree || !noted.accession) {
        return;
    }
    const auto* tree = book.tree(*noted.tree);
    if (tree != nullptr && tree->accession && *tree->accession != *noted.accession) {
        findings.push_back(error({"bloom_note", fid_name(noted.fid), "accession", *noted.accession},
                                 say("The note's tree {} is {}.", *noted.tree, *tree->accession),
                                 say("Correct the tree or the accession, or leave the accession out.")));
    }
}

void check_day(const BloomNote& noted, const OrchardIndex& book, Day as_of, Findings& findings) {
    const Whereabouts place{"bloom_note", fid_name(noted.fid), "noted_on", to_iso(noted.noted_on)};
    if (noted.noted_on > as_of) {
        findings.push_back(warning(place,
                                   say("The note lies in the future of {}; it is not used.", to_iso(as_of)),
                                   say("Correct the day if it is wrong.")));
    }
    if (const auto* tree = book.tree(noted.tree.value_or(""))) {
        check_tree_stands(place, *tree, noted.noted_on, findings);
    }
}

}  // namespace

void check_tree_stands(const Whereabouts& place, const Tree& tree, Day day, Findings& findings) {
    if (!planted_by(tree, day)) {
        findings.push_back(
            warning(place, say("Tree {} was planted only on {}.", tree.label, to_iso(*tree.planted_on)),
                    say("Correct one of the two days.")));
    }
    // On the very day of its removal a tree may still be looked at.
    if (removed_by(tree, day - 1)) {
        findings.push_back(warning(place,
                                   say("Tree {} was removed on {}.", tree.label, to_iso(*tree.removed_on)),
                                   say("Correct one of the two days.")));
    }
}

void check_bloom_notes(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& noted : book.orchard().bloom_notes) {
        check_subject(noted, book, findings);
        check_day(noted, book, as_of, findings);
    }
}

}  // namespace pipward::book::detail
