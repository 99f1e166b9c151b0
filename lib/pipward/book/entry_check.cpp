// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/book/entry_judgement.h"
#include "pipward/book/entry_rules.h"
#include "pipward/book/records.h"

namespace pipward {
namespace {

Error misused(const Entry& entry, std::string field, Sentence message, Sentence remedy) {
    return {Trouble::usage, error({entry.table, {}, field, {}}, std::move(message), std::move(remedy))};
}

const BookTable& table_of(const Entry& entry) {
    if (std::ranges::find(entry_tables(), entry.table) == entry_tables().end()) {
        throw misused(entry, {}, say("This table takes no entries."),
                      say("These do: {}.", fmt::format("{}", fmt::join(entry_tables(), ", "))));
    }
    const auto& table = *find_book_table(entry.table);
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

void judge_cells(Judgement& judgement) {
    for (const auto& column : judgement.table.columns) {
        const auto value = value_of(judgement.entry, column.name);
        auto wrong = column.initial.empty() || !std::holds_alternative<std::monostate>(value)
                         ? check_cell(column, value)
                         : std::nullopt;
        if (wrong) {
            wrong->table = judgement.table.name;
            wrong->row = judgement.row;
            if (column.domain == "bbch_stage" && !wrong->value.empty()) {
                wrong->message = say("The scale of pome fruit has no such stage.");
                wrong->remedy = near_stages(value);
            }
            judgement.findings.push_back(std::move(*wrong));
        }
    }
}

/// The day on which it was seen or done: the first required one, or that of washing.
std::string_view day_column(const BookTable& table) {
    const auto found = std::ranges::find_if(table.columns, [](const BookColumn& column) {
        return column.type == CellType::day && column.required;
    });
    return found == table.columns.end() ? "washed_on" : found->name;
}

Day day_of(const Judgement& judgement) {
    const auto value = value_of(judgement.entry, day_column(judgement.table));
    const auto* day = std::get_if<Day>(&value);
    return day == nullptr ? judgement.as_of : *day;
}

void judge_day(Judgement& judgement) {
    const auto column = day_column(judgement.table);
    if (day_of(judgement) > judgement.as_of) {
        judgement.findings.push_back(
            error(judgement.at(column), say("The day is still to come on {}.", to_iso(judgement.as_of)),
                  say("Note what was seen on the day or before it; correct the day.")));
    }
}

Findings said_of(const Orchard& orchard, Day as_of) {
    Findings findings;
    check_bloom_notes(orchard, as_of, findings);
    check_time_of_bloom(orchard, as_of, findings);
    check_pollen(orchard, as_of, findings);
    check_seed(orchard, as_of, findings);
    return findings;
}

// A row that is there already may come to look odd beside the new one; that is book-check's business.
bool is_of_the_entry(const Judgement& judgement, const Finding& finding) {
    return finding.table == judgement.table.name &&
           (!finding.row.text().starts_with("fid ") || finding.row == fid_name(0));
}

template <class Rows>
void judge_last(const Rows& rows, std::size_t before, const Orchard& orchard, Findings& findings) {
    if (rows.size() > before) {
        judge(rows.back(), orchard, findings);
    }
}

/// The rules of the whole book, asked without the entry and with it: what is said only then is the entry's.
void judge_by_the_book(Judgement& judgement, const BookRow& row) {
    auto orchard = judgement.book.orchard;
    orchard.weather.clear();
    const Day present = std::max(judgement.as_of, day_of(judgement));  // days to come are told already
    const auto before = said_of(orchard, present);
    const auto& old = judgement.book.orchard;
    add_record(orchard, judgement.table, row);
    for (auto& finding : said_of(orchard, present)) {
        if (is_of_the_entry(judgement, finding) && std::ranges::find(before, finding) == before.end()) {
            if (finding.row == fid_name(0)) {
                finding.row = judgement.row;
            }
            judgement.findings.push_back(std::move(finding));
        }
    }
    judge_last(orchard.bloom_notes, old.bloom_notes.size(), old, judgement.findings);
    judge_last(orchard.pollinations, old.pollinations.size(), old, judgement.findings);
    judge_last(orchard.fruits, old.fruits.size(), old, judgement.findings);
    judge_last(orchard.seed_lots, old.seed_lots.size(), old, judgement.findings);
    judge_last(orchard.sprout_counts, old.sprout_counts.size(), old, judgement.findings);
    judge_last(orchard.trait_scores, old.trait_scores.size(), old, judgement.findings);
}

// A cell of the schema's own type: whole numbers do for numbers.
Cell stored_form(const BookColumn& column, const Cell& value) {
    const auto* whole = std::get_if<std::int64_t>(&value);
    return column.type == CellType::number && whole != nullptr ? Cell{static_cast<double>(*whole)} : value;
}

BookRow row_of(const Judgement& judgement) {
    BookRow row;
    for (const auto& column : judgement.table.columns) {
        row.cells.push_back(stored_form(column, value_of(judgement.entry, column.name)));
    }
    return row;
}

}  // namespace

Cell value_of(const Entry& entry, std::string_view column) {
    const auto found = entry.values.find(std::string(column));
    return found == entry.values.end() ? Cell{} : found->second;
}

Findings check_entry(const BookReading& book, const Entry& entry, Day as_of) {
    const auto& table = table_of(entry);
    Judgement judgement{book, entry, table, as_of, row_name(entry, table)};
    const auto names = names_of(book.orchard);
    judge_cells(judgement);
    const bool readable = judgement.findings.empty();
    judge_names(judgement, names);
    judge_key(judgement, names);
    judge_day(judgement);
    if (readable) {
        judge_by_the_book(judgement, row_of(judgement));
    }
    return judgement.findings;
}

}  // namespace pipward
