// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "pipward/book/detail/check.h"
#include "pipward/record/presence.h"

namespace pipward::book::detail {
namespace {

void check_row_of(const Tree& tree, const std::set<std::pair<std::string, std::string>>& rows,
                  Findings& findings) {
    if (!tree.row) {
        return;
    }
    if (!tree.block) {
        findings.push_back(warning({"tree", tree.label, "row", *tree.row},
                                   say("The tree has a row but no block."),
                                   say("Rows are counted within blocks: fill in the block.")));
    } else if (!rows.contains({*tree.block, *tree.row})) {
        findings.push_back(error({"tree", tree.label, "row", *tree.row},
                                 say("Block {} has no row of this name.", *tree.block),
                                 say("Draw the row or correct its name.")));
    }
}

void check_days_of(const Tree& tree, Day as_of, Findings& findings) {
    if (tree.planted_on && tree.removed_on && *tree.removed_on < *tree.planted_on) {
        findings.push_back(error({"tree", tree.label, "removed_on", to_iso(*tree.removed_on)},
                                 say("The tree was removed before it was planted."),
                                 say("Correct one of the two days.")));
    }
    if (!planted_by(tree, as_of)) {
        findings.push_back(warning({"tree", tree.label, "planted_on", to_iso(*tree.planted_on)},
                                   say("The day of planting lies in the future."),
                                   say("Correct it if that is not meant.")));
    }
}

// Seedlings under test may well have no accession of their own; parents are nothing without one.
void check_meaning(const Tree& tree, Findings& findings) {
    const bool matters = tree.purpose == TreePurpose::parent || tree.purpose == TreePurpose::pollinizer;
    if (matters && !tree.accession) {
        findings.push_back(
            warning({"tree", tree.label, "accession"},
                    say("The accession of this tree is not known, so its bloom cannot be forecast."),
                    say("Fill in its accession.")));
    }
}

struct Spot {
    std::string block;
    std::string row;
    int position = 0;

    auto operator<=>(const Spot&) const = default;
};
using Holders = std::map<Spot, std::vector<const Tree*>>;

// A tree may be entered that is to follow another once that one has gone.
void check_spot_of(const Tree& tree, Holders& taken, Findings& findings) {
    auto& holders = taken[{tree.block.value_or(""), *tree.row, *tree.position}];
    const auto other =
        std::ranges::find_if(holders, [&](const Tree* holder) { return stand_together(*holder, tree); });
    if (other != holders.end()) {
        findings.push_back(
            error({"tree", tree.label, "position", std::to_string(*tree.position)},
                  say("Tree {} stands at the same position of row {}.", (*other)->label, *tree.row),
                  say("Correct a position, or give the older tree its day of removal.")));
    }
    holders.push_back(&tree);
}

}  // namespace

void check_trees(const Orchard& orchard, Day as_of, Findings& findings) {
    std::set<std::pair<std::string, std::string>> rows;
    for (const auto& row : orchard.rows) {
        rows.insert({row.block, row.name});
    }
    Holders taken;
    for (const auto& tree : orchard.trees) {
        check_row_of(tree, rows, findings);
        check_days_of(tree, as_of, findings);
        check_meaning(tree, findings);
        if (tree.row && tree.position && !removed_by(tree, as_of)) {
            check_spot_of(tree, taken, findings);
        }
    }
}

}  // namespace pipward::book::detail
