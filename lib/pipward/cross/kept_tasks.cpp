// SPDX-License-Identifier: MIT
#include "pipward/cross/kept_tasks.h"

#include <algorithm>
#include <array>

namespace pipward::cross {
namespace {

/// The cell of a column; an unknown where the table has none of that name.
Cell cell_in(const Table& table, const Row& row, std::string_view column) {
    const auto found = std::ranges::find(table.shape.columns, column, &Column::name);
    return found == table.shape.columns.end()
               ? Cell{}
               : row.cells[static_cast<std::size_t>(found - table.shape.columns.begin())];
}

std::string text_in(const Table& table, const Row& row, std::string_view column) {
    const auto cell = cell_in(table, row, column);
    const auto* text = std::get_if<std::string>(&cell);
    return text == nullptr ? std::string{} : *text;
}

std::optional<Day> day_in(const Table& table, const Row& row, std::string_view column) {
    const auto cell = cell_in(table, row, column);
    const auto* day = std::get_if<Day>(&cell);
    return day == nullptr ? std::nullopt : std::optional{*day};
}

std::optional<Urgency> urgency_of(const std::string& word) {
    for (const auto& entry : words(Urgency{})) {
        if (to_text(entry.value) == word) {
            return entry.value;
        }
    }
    return std::nullopt;
}

/// A code of the plan in words.
Sentence work_words(const std::string& code) {
    static const std::array words{say("pollinate"), say("bag"),        say("unbag"),
                                  say("collect"),   say("cut branch"), say("test lot")};
    const auto* const found = std::ranges::find(words, code, &Sentence::text);
    return found == words.end() ? verbatim(code) : *found;
}

KeptTask task_of(const Table& table, const Row& row) {
    const auto cross = text_in(table, row, "cross");
    return {text_in(table, row, "tree"),
            say("{} {}", work_words(text_in(table, row, "work")),
                cross.empty() ? text_in(table, row, "donor") : cross),
            urgency_of(text_in(table, row, "urgency")), day_in(table, row, "do_from"),
            day_in(table, row, "do_to")};
}

bool is_due(const KeptTask& task, const std::optional<Day>& day, const std::optional<Urgency>& urgency) {
    return (!urgency || task.urgency == urgency) &&
           (!day || ((!task.from || *task.from <= *day) && task.to && *day <= *task.to));
}

}  // namespace

std::vector<KeptTask> kept_tasks(const Table& tasks) {
    std::vector<KeptTask> kept;
    for (const auto& row : tasks.rows) {
        kept.push_back(task_of(tasks, row));
    }
    std::erase_if(kept, [](const KeptTask& task) { return task.tree.empty(); });
    return kept;
}

std::map<std::string, Sentence> works_at_trees(const std::vector<KeptTask>& tasks,
                                               const std::optional<Day>& day,
                                               const std::optional<Urgency>& urgency) {
    std::map<std::string, Sentence> works;
    for (const auto& task : tasks) {
        if (is_due(task, day, urgency)) {
            auto& work = works[task.tree];
            work += verbatim(work.empty() ? "" : "; ");
            work += task.work;
        }
    }
    return works;
}

}  // namespace pipward::cross
