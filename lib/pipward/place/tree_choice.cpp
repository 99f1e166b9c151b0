// SPDX-License-Identifier: MIT
#include "pipward/place/tree_choice.h"

#include <algorithm>

#include "pipward/place/named_place.h"
#include "pipward/record/presence.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"
#include "pipward/value/plain_text.h"

namespace pipward::place {
namespace {

bool is_listed(const std::optional<std::string>& name, const std::string& names) {
    const auto listed = listed_names(names);
    return name && std::ranges::find(listed, *name) != listed.end();
}

bool fits(const Tree& tree, const TreeChoice& choice) {
    return (choice.accession.empty() || is_listed(tree.accession, choice.accession)) &&
           (choice.block.empty() || tree.block == choice.block) &&
           (!choice.purpose || tree.purpose == *choice.purpose) &&
           (!choice.among || choice.among->contains(tree.label));
}

std::vector<std::uint32_t> labelled(const Orchard& orchard, const TreeChoice& choice, Findings& findings) {
    std::vector<std::uint32_t> trees;
    for (const auto& label : listed_names(choice.labels)) {
        if (const auto tree = tree_labelled(orchard, label)) {
            trees.push_back(*tree);
        } else {
            findings.push_back(about_parameter("trees", label, say("The book has no tree with this label."),
                                               labels_like(orchard, label)));
        }
    }
    std::ranges::sort(trees);
    trees.erase(std::unique(trees.begin(), trees.end()), trees.end());
    return trees;
}

bool is_there(const Tree& tree, const TreeDemand& demand) {
    return (demand.removed_too || !removed_by(tree, demand.as_of)) &&
           (demand.to_come_too || planted_by(tree, demand.as_of));
}

std::vector<std::uint32_t> candidates(const Orchard& orchard, const TreeChoice& choice,
                                      const TreeDemand& demand, Findings& findings) {
    if (!is_blank(choice.labels)) {
        return labelled(orchard, choice, findings);
    }
    std::vector<std::uint32_t> trees;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        if (is_there(orchard.trees[i], demand)) {
            trees.push_back(i);
        }
    }
    return trees;
}

Finding left_out(const Tree& tree, const TreeDemand& demand) {
    auto finding = about_table(Level::warning, "tree", {}, {});
    finding.row = tree.label;
    if (is_there(tree, demand)) {
        finding.message = say("The tree has no location on the map: it is left out.");
        finding.remedy = say("Draw it on the map.");
    } else if (removed_by(tree, demand.as_of)) {
        finding.field = "removed_on";
        finding.value = to_iso(*tree.removed_on);
        finding.message = say("The tree was removed: it is left out.");
    } else {
        finding.field = "planted_on";
        finding.value = to_iso(*tree.planted_on);
        finding.message = say("The tree is not planted yet: it is left out.");
    }
    return finding;
}

}  // namespace

bool TreeChoice::is_empty() const {
    return is_blank(labels) && accession.empty() && block.empty() && !purpose && !among;
}

std::vector<std::uint32_t> chosen_trees(const Orchard& orchard, const TreeChoice& choice,
                                        const TreeDemand& demand, Findings& findings) {
    std::vector<std::uint32_t> chosen;
    for (const auto i : candidates(orchard, choice, demand, findings)) {
        const auto& tree = orchard.trees[i];
        if (!fits(tree, choice)) {
            continue;
        }
        if (!is_there(tree, demand) || (!tree.at && demand.with_place)) {
            findings.push_back(left_out(tree, demand));
            continue;
        }
        chosen.push_back(i);
    }
    return chosen;
}

}  // namespace pipward::place
