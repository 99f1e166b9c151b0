// SPDX-License-Identifier: MIT
#include "pipward/operation/tree_choice.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

#include "pipward/operation/complaint.h"
#include "pipward/operation/place_reading.h"
#include "pipward/value/sentence.h"

namespace pipward::operation {
namespace {

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    const auto last = text.find_last_not_of(" \t\r\n");
    return first == std::string_view::npos ? "" : std::string(text.substr(first, last - first + 1));
}

std::vector<std::string> listed(std::string_view text) {
    std::vector<std::string> names;
    while (true) {
        const auto end = text.find_first_of(",;\n");
        if (auto name = trimmed(text.substr(0, end)); !name.empty()) {
            names.push_back(std::move(name));
        }
        if (end == std::string_view::npos) {
            return names;
        }
        text.remove_prefix(end + 1);
    }
}

bool fits(const Tree& tree, const TreeChoice& choice) {
    return (choice.accession.empty() || tree.accession == choice.accession) &&
           (choice.block.empty() || tree.block == choice.block) &&
           (!choice.purpose || tree.purpose == *choice.purpose);
}

std::vector<std::uint32_t> labelled(const Orchard& orchard, const TreeChoice& choice, Findings& findings) {
    std::vector<std::uint32_t> trees;
    for (const auto& label : listed(choice.labels)) {
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

std::vector<std::uint32_t> candidates(const Orchard& orchard, const TreeChoice& choice,
                                      const TreeDemand& demand, Findings& findings) {
    if (!trimmed(choice.labels).empty()) {
        return labelled(orchard, choice, findings);
    }
    std::vector<std::uint32_t> trees;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        if (demand.removed_too || !orchard.trees[i].removed_on) {
            trees.push_back(i);
        }
    }
    return trees;
}

Finding left_out(const Tree& tree, const TreeDemand& demand) {
    const bool gone = tree.removed_on && !demand.removed_too;
    return {Level::warning,
            "tree",
            tree.label,
            gone ? "removed_on" : "",
            gone ? to_iso(*tree.removed_on) : "",
            gone ? say("The tree was removed: it is left out.")
                 : say("The tree has no place on the map: it is left out."),
            gone ? Sentence{} : say("Draw it on the map.")};
}

// The text of a column of a result's row; empty where the table has none of that name.
std::string text_in(const Table& table, const Row& row, std::string_view column) {
    const auto found = std::ranges::find(table.shape.columns, column, &Column::name);
    return found == table.shape.columns.end()
               ? std::string{}
               : to_text(row.cells[static_cast<std::size_t>(found - table.shape.columns.begin())]);
}

bool is_due(const Table& table, const Row& row, const TreeChoice& choice) {
    const std::string urgency(choice.urgency ? cross::to_text(*choice.urgency) : "");
    const auto day = choice.tasks_on ? to_iso(*choice.tasks_on) : std::string{};
    return (urgency.empty() || text_in(table, row, "urgency") == urgency) &&
           (day.empty() || (text_in(table, row, "do_from") <= day && day <= text_in(table, row, "do_to")));
}

// A code of the plan in words.
Sentence work_words(const std::string& code) {
    static const std::array words{say("pollinate"), say("bag"),        say("unbag"),
                                  say("gather"),    say("cut branch"), say("test lot")};
    const auto* const found = std::ranges::find(words, code, &Sentence::text);
    return found == words.end() ? verbatim(code) : *found;
}

// "pollinate 26-01": what and for which cross, or whose pollen.
Sentence work_of(const Table& table, const Row& row) {
    const auto cross = text_in(table, row, "cross");
    return say("{} {}", work_words(text_in(table, row, "work")),
               cross.empty() ? text_in(table, row, "donor") : cross);
}

}  // namespace

bool TreeChoice::is_empty() const {
    return trimmed(labels).empty() && accession.empty() && block.empty() && !purpose && !tasks_on && !urgency;
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
    std::map<std::string, Sentence> works;
    bool planned = false;
    for (const auto* name : {"field_task", "pollen_task"}) {
        const auto table = book::read_result(location, name);
        planned = planned || table.has_value();
        for (const auto& row : table ? table->rows : std::vector<Row>{}) {
            const auto label = text_in(*table, row, "label");
            if (!label.empty() && is_due(*table, row, choice)) {
                auto& work = works[label];
                work += verbatim(work.empty() ? "" : "; ");
                work += work_of(*table, row);
            }
        }
    }
    if (!planned) {
        throw Error(Trouble::input,
                    about_table(Level::error, "field_task", say("The book holds no plan of tasks."),
                                say("Make one with season-plan, then ask again.")));
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
        if ((tree.removed_on && !demand.removed_too) || (!tree.at && demand.with_place)) {
            findings.push_back(left_out(tree, demand));
            continue;
        }
        chosen.push_back({i, by_task ? work->second : Sentence{}});
    }
    return chosen;
}

}  // namespace pipward::operation
