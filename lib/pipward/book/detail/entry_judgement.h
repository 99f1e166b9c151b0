// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "pipward/book/detail/check.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

/// Inside of the room: an entry while it is judged, and the judging of its cells, its day and its names.
namespace pipward::book::detail {

/// The entry's cell, unknown where it gives none.
Cell value_of(const Entry& entry, std::string_view column);

/// The names of a book while entries are judged one after the other: it grows with them.
struct KnownNames {
    KnownNames(const BookReading& reading, Schema tables);

    const BookReading& book;
    Schema schema;
    Names names;
    std::set<std::string> earlier{};             ///< keys of entries judged before this one
    std::map<std::string, std::string> folds{};  ///< the entries' table: names by their folded form
    std::map<std::pair<std::string, std::string>, Sentence> remedies{};  ///< by table and unknown name
};

/// An entry seen against the book.
struct Judgement {
    const Entry& entry;
    const BookTable& table;
    Day as_of;
    std::string row;  ///< how findings name it
    Findings findings{};

    Whereabouts at(std::string_view column) const {
        return {table.name, row, column, to_text(value_of(entry, column))};
    }
};

/// The tables of the schema that take entries.
std::vector<std::string_view> entry_tables_of(Schema schema);
/// The entry's table. Throws Error (usage) where it takes no entries or lacks one of the columns.
const BookTable& entry_table(const Entry& entry, Schema schema);
/// How findings name the entry: its key, or "new entry".
std::string row_name(const Entry& entry, const BookTable& table);

/// Cells that the schema does not allow.
void judge_cells(Judgement& judgement);
/// The day of the entry; the as-of day where it has none.
Day day_of(const Judgement& judgement);
/// A day to come.
void judge_day(Judgement& judgement);
/// Names that nothing answers to, with the nearest that exist.
void judge_names(Judgement& judgement, KnownNames& known);
/// The row's own name, where it must be its alone. False where it is taken already.
bool judge_key(Judgement& judgement, const KnownNames& known);
/// Makes the entry's own name known to those after it.
void add_key(const Judgement& judgement, KnownNames& known);
/// Fills `folds` for entries of this table.
void fold_names(const BookTable& table, KnownNames& known);

}  // namespace pipward::book::detail
