// SPDX-License-Identifier: MIT
#include "pipward/operation/place/detail/tree_choice.h"

#include "pipward/book/book.h"
#include "pipward/cross/kept_tasks.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {

std::vector<Bound<TreeRequest>> tree_parameters() {
    return {
        book_parameter(&TreeRequest::book),
        parameter(
            &place::TreeChoice::labels, "trees", "Trees",
            "Labels of the trees, separated by commas; all that meet the other conditions where left out."),
        parameter(&place::TreeChoice::accession, "accessions", "Accessions",
                  "Only trees of these accessions, separated by commas."),
        parameter(&place::TreeChoice::block, "block", "Block", "Only trees of this block."),
        parameter(&place::TreeChoice::purpose, "purpose", "Purpose", "Only trees of this purpose."),
        parameter(&TreeRequest::tasks_on, "tasks-on", "Tasks on",
                  "Only trees with tasks of the season plan on this day."),
        parameter(&TreeRequest::urgency, "urgency", "Urgency",
                  "Only trees with tasks of the season plan of this urgency.")};
}

std::map<std::string, Sentence> planned_works(const TreeRequest& request) {
    if (!request.tasks_on && !request.urgency) {
        return {};
    }
    std::vector<cross::KeptTask> tasks;
    bool planned = false;
    for (const auto* name : {"field_task", "pollen_task"}) {  // at the flowers first
        if (const auto table = book::read_result(request.book, name)) {
            planned = true;
            std::ranges::move(cross::kept_tasks(*table), std::back_inserter(tasks));
        }
    }
    if (!planned) {
        throw Error(Trouble::input,
                    about_table(Level::error, "field_task", say("The book holds no plan of tasks."),
                                say("Make one with season-plan, then ask again.")));
    }
    return cross::works_at_trees(tasks, request.tasks_on, request.urgency);
}

std::vector<std::uint32_t> chosen_trees(const Orchard& orchard, const TreeRequest& request,
                                        const place::TreeDemand& demand, Findings& findings,
                                        const std::map<std::string, Sentence>& works) {
    place::TreeChoice choice = request;
    if (request.tasks_on || request.urgency) {
        choice.among.emplace();
        for (const auto& [label, work] : works) {
            choice.among->insert(label);
        }
    }
    return place::chosen_trees(orchard, choice, demand, findings);
}

}  // namespace pipward::operation::detail
