// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/book/detail/entry_judgement.h"
#include "pipward/book/detail/entry_rules.h"

namespace pipward::book::detail {
namespace {

Error misused(const Entry& entry, std::string field, Sentence message, Sentence remedy) {
    return {Trouble::usage, error({entry.table, {}, field, {}}, std::move(message), std::move(remedy))};
}

// The remedy for a stage lists the neighbours instead of all fifty.
Sentence near_stages(const Cell& cell) {
    const auto* code = std::get_if<std::int64_t>(&cell);
    Sentence below;
    for (const auto& stage : bbch_stages()) {
        if (code != nullptr && stage.stage.code > *code) {
            return below.empty() ? say("The first is {}.", stage.stage.code)
                                 : say("The nearest are {} and {} ({}).", below, stage.stage.code,
                                       filled(stage.words, {}));
        }
        below = say("{} ({})", stage.stage.code, filled(stage.words, {}));
    }
    return say("The last is {}.", below);
}

}  // namespace

Cell value_of(const Entry& entry, std::string_view column) {
    const auto found = entry.values.find(std::string(column));
    return found == entry.values.end() ? Cell{} : found->second;
}

const BookTable& entry_table(const Entry& entry, Schema schema) {
    const auto* found = find_book_table(entry.table, schema);
    if (found == nullptr || found->entry_words.empty()) {
        throw misused(entry, {}, say("This table takes no entries."),
                      say("These do: {}.", fmt::format("{}", fmt::join(entry_tables_of(schema), ", "))));
    }
    const auto& table = *found;
    for (const auto& [name, value] : entry.values) {
        if (find_column(table, name) == nullptr) {
            throw misused(entry, name, say("The table has no such column."),
                          say("Use the columns of the schema."));
        }
    }
    return table;
}

std::string row_name(const Entry& entry, const BookTable& table) {
    const auto name = table.key.empty() ? std::string{} : to_text(value_of(entry, table.key.front()));
    return name.empty() ? new_row : name;
}

void judge_cells(Judgement& judgement) {
    for (const auto& column : judgement.table.columns) {
        const auto value = value_of(judgement.entry, column.name);
        auto wrong = column.initial.empty() || !std::holds_alternative<std::monostate>(value)
                         ? check_cell(column, value)
                         : std::nullopt;
        if (wrong) {
            wrong->table = judgement.table.name;
            wrong->row = judgement.row;
            if (column.role == ColumnRole::stage && !wrong->value.empty()) {
                wrong->message = say("The scale of pome fruit has no such stage.");
                wrong->remedy = near_stages(value);
            }
            judgement.findings.push_back(std::move(*wrong));
        }
    }
}

Day day_of(const Judgement& judgement) {
    const auto value = value_of(judgement.entry, judgement.table.day_column);
    const auto* day = std::get_if<Day>(&value);
    return day == nullptr ? judgement.as_of : *day;
}

void judge_day(Judgement& judgement) {
    const auto column = judgement.table.day_column;
    if (day_of(judgement) > judgement.as_of) {
        judgement.findings.push_back(
            error(judgement.at(column), say("The day is still to come on {}.", to_iso(judgement.as_of)),
                  say("Record what was seen on the day or before it; correct the date.")));
    }
}

}  // namespace pipward::book::detail
