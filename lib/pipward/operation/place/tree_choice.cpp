// SPDX-License-Identifier: MIT
#include "pipward/operation/place/detail/tree_choice.h"

#include <algorithm>

#include "pipward/operation/season/kept_tasks.h"
#include "pipward/place/named_place.h"
#include "pipward/record/presence.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"
#include "pipward/value/sentence.h"

namespace pipward::operation::detail {
namespace {

bool is_blank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

bool fits(const Tree& tree, const TreeChoice& choice) {
    return (choice.accession.empty() || tree.accession == choice.accession) &&
           (choice.block.empty() || tree.block == choice.block) &&
           (!choice.purpose || tree.purpose == *choice.purpose);
}

std::vector<std::uint32_t> labelled(const Orchard& orchard, const TreeChoice& choice, Findings& findings) {
    std::vector<std::uint32_t> trees;
    for (const auto& label : listed_names(choice.labels)) {
        if (const auto tree = place::tree_labelled(orchard, label)) {
            trees.push_back(*tree);
        } else {
            findings.push_back(about_parameter("trees", label, say("The book has no tree with this label."),
                                               place::labels_like(orchard, label)));
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
        finding.message = say("The tree has no place on the map: it is left out.");
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

bool is_due(const KeptTask& task, const TreeChoice& choice) {
    const auto& day = choice.tasks_on;
    return (!choice.urgency || task.urgency == choice.urgency) &&
           (!day || ((!task.from || *task.from <= *day) && task.to && *day <= *task.to));
}

}  // namespace

bool TreeChoice::is_empty() const {
    return is_blank(labels) && accession.empty() && block.empty() && !purpose && !tasks_on && !urgency;
}

std::vector<Bound<TreeChoice>> tree_choice_parameters() {
    return {parameter(&TreeChoice::labels, "trees", "Trees",
                      "Labels of the trees, with commas between; all that fit the rest where left out."),
            parameter(&TreeChoice::accession, "of-accession", "Accession", "Only trees of this accession."),
            parameter(&TreeChoice::block, "of-block", "Block", "Only trees of this block."),
            parameter(&TreeChoice::purpose, "purpose", "Purpose", "Only trees that serve this purpose."),
            parameter(&TreeChoice::tasks_on, "tasks-on", "Tasks of the day",
                      "Only trees at which the season's plan has something to do on this day."),
            parameter(&TreeChoice::urgency, "urgency", "Urgency",
                      "Only trees at which the season's plan has something to do that is so urgent.")};
}

std::map<std::string, Sentence> planned_works(const std::string& location, const TreeChoice& choice) {
    const auto tasks = kept_tasks(location);
    if (!tasks) {
        throw Error(Trouble::input,
                    about_table(Level::error, "field_task", say("The book holds no plan of tasks."),
                                say("Make one with season-plan, then ask again.")));
    }
    std::map<std::string, Sentence> works;
    for (const auto& task : *tasks) {
        if (is_due(task, choice)) {
            auto& work = works[task.tree];
            work += verbatim(work.empty() ? "" : "; ");
            work += task.work;
        }
    }
    return works;
}

std::vector<ChosenTree> chosen_trees(const std::string& location, const Orchard& orchard,
                                     const TreeChoice& choice, Findings& findings, const TreeDemand& demand) {
    const bool by_task = choice.tasks_on || choice.urgency;
    const auto works = by_task ? planned_works(location, choice) : std::map<std::string, Sentence>{};
    std::vector<ChosenTree> chosen;
    for (const auto i : candidates(orchard, choice, demand, findings)) {
        const auto& tree = orchard.trees[i];
        const auto work = works.find(tree.label);
        if (!fits(tree, choice) || (by_task && work == works.end())) {
            continue;
        }
        if (!is_there(tree, demand) || (!tree.at && demand.with_place)) {
            findings.push_back(left_out(tree, demand));
            continue;
        }
        chosen.push_back({i, by_task ? work->second : Sentence{}});
    }
    return chosen;
}

}  // namespace pipward::operation::detail
