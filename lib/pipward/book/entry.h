// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/book.h"

/// Single entries into the tables that people fill in: a stage seen at a tree, a branch pollinated, fruit
/// harvested ... An entry is a row of its own, or completes one that the book has: it fills cells that were
/// empty and changes none. Each is judged against the whole book before it is written, and can be taken back.
namespace pipward::book {

/// A row to be written: its cells by column name. Columns that are not given stay unknown.
struct Entry {
    std::string table;                   ///< one of entry_tables()
    std::map<std::string, Cell> values;  ///< by column, of the column's type
    std::optional<MapPoint> at{};        ///< of a table of points, in the book's coordinate system
    /// Whether it fills cells that the row of its name lacks, instead of being a row of its own.
    bool completes = false;
};

/// The tables that take entries.
std::span<const std::string_view> entry_tables();

/// What it says, for people: "Bloom observation: tree LO-04-07, noted on 2026-05-12, BBCH stage 61 (about 10
/// % of flowers open)".
Sentence in_words(const Entry& entry);

/// Everything that is wrong or doubtful about the entry, seen against the book as it is: cells that the
/// schema does not allow, names that nothing answers to (with the nearest that exist), names taken already,
/// days to come, and whatever the rules of check_orchard() say of the book with the entry that they do not
/// say of it without. Pure. Throws Error (usage) for a table that takes no entries or a column that it does
/// not have.
Findings check_entry(const BookReading& book, const Entry& entry, Day as_of);

/// The same of several entries of one table, each judged against the book with those before it in it, at the
/// price of little more than one: what is said of each. A name that is taken, by the book or by an earlier
/// entry, is told, and the rules of the whole book are then not asked about that entry.
std::vector<Findings> check_entries(const BookReading& book, std::span<const Entry> entries, Day as_of);

/// A row that was written, by its table and number, with what stood in it right afterwards.
struct AddedRow {
    std::string table;     ///< one of entry_tables(), or one that layers are imported into
    std::int64_t fid = 0;  ///< the row's number
    std::string content;  ///< "column: value" lines in the schema's order, unknown ones left out; "geom" last
    /// The columns that were filled in a row which was there before; empty where the row itself is new.
    std::vector<std::string> filled{};

    bool operator==(const AddedRow&) const = default;
};

/// What it says, for people, as in_words() of the entry.
Sentence in_words(const AddedRow& row);

/// How an added row is named: "bloom_observation/412".
std::string name_of(const AddedRow& row);

/// What became of an entry that was written.
struct EntryAdded {
    AddedRow row;       ///< with its number
    Findings findings;  ///< warnings and notes; errors are thrown
};

/// Checks the entry against the book and writes it, in one short transaction in which the book also
/// remembers it as its last entry. Throws Error: (input) with all findings where one is an error, (usage) as
/// check_entry(), (access) where the book cannot be written; then nothing was written.
EntryAdded add_entry(const BookAt& book, const Entry& entry, Day as_of, Patience patience = default_patience);

/// What became of several.
struct EntriesAdded {
    std::vector<AddedRow> rows;      ///< empty where an error kept them all from being written
    std::vector<Findings> findings;  ///< of each entry
};

/// Checks entries of one table against a reading of the book, as check_entries(), and writes them all in one
/// transaction where none has an error; the book remembers them as one. Throws Error as add_entry(), but for
/// the errors of the entries, which are returned.
EntriesAdded add_entries(const BookAt& book, const BookReading& reading, std::span<const Entry> entries,
                         Day as_of, Patience patience = default_patience);

/// What stands in every row of a table that takes entries.
std::vector<AddedRow> rows_of_entries(const BookAt& book, const std::string& table);

/// The entries that the book remembers and still has, the newest first.
std::vector<AddedRow> remembered_entries(const BookAt& book);

/// The same by what was written at once: one row, or all that one file brought, in the file's order.
std::vector<std::vector<AddedRow>> remembered_batches(const BookAt& book);

/// Removes exactly that row; of a row that was completed, empties again what was filled. Throws Error (input)
/// and changes nothing where the row is gone, was changed since, or other rows refer to it; (access) where
/// the book cannot be written.
void take_back(const BookAt& book, const AddedRow& row, Patience patience = default_patience);

/// The same of several rows in one transaction: all of them, or none with every reason. They may refer to one
/// another.
void take_back(const BookAt& book, std::span<const AddedRow> rows, Patience patience = default_patience);

}  // namespace pipward::book
