// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"
#include "pipward/record/presence.h"

namespace pipward::book::detail {
namespace {

void check_subject(const BloomObservation& observed, const OrchardIndex& book, Findings& findings) {
    if (!observed.tree && !observed.accession) {
        findings.push_back(error({"bloom_observation", fid_name(observed.fid), "tree"},
                                 say("The observation names neither a tree nor an accession."),
                                 say("Fill in one of them.")));
    }
    if (!observed.tree || !observed.accession) {
        return;
    }
    const auto* tree = book.tree(*observed.tree);
    if (tree != nullptr && tree->accession && *tree->accession != *observed.accession) {
        findings.push_back(
            error({"bloom_observation", fid_name(observed.fid), "accession", *observed.accession},
                  say("The observed tree {} is {}.", *observed.tree, *tree->accession),
                  say("Correct the tree or the accession, or leave the accession out.")));
    }
}

void check_day(const BloomObservation& observed, const OrchardIndex& book, Day as_of, Findings& findings) {
    const Whereabouts place{"bloom_observation", fid_name(observed.fid), "observed_on",
                            to_iso(observed.observed_on)};
    if (observed.observed_on > as_of) {
        findings.push_back(
            warning(place, say("The observation lies in the future of {}; it is not used.", to_iso(as_of)),
                    say("Correct the day if it is wrong.")));
    }
    if (const auto* tree = book.tree(observed.tree.value_or(""))) {
        check_tree_stands(place, *tree, observed.observed_on, findings);
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

void check_bloom_observations(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& observed : book.orchard().bloom_observations) {
        check_subject(observed, book, findings);
        check_day(observed, book, as_of, findings);
    }
}

}  // namespace pipward::book::detail
