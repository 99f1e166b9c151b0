// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <typeindex>
#include <vector>

#include "pipward/book/heading.h"
#include "pipward/record/table.h"
#include "pipward/value/finding.h"

/// The schema of the orchard book as data, each column bound to the field of the record that it fills.
/// Creation, reading and writing, checks, value lists, adoption by heading and the documentation all come
/// from these tables: a column is added in its group of tables (schema_*.cpp) and in its record, nowhere
/// else.
namespace pipward::book {

/// What the rows of a table are on the map.
enum class GeometryKind {
    none,    ///< a table without places
    point,   ///< with a height where it is known
    line,    ///< of one part
    polygon  ///< an area
};

/// For people.
Sentence to_text(GeometryKind kind);

/// One choice of a closed list: the value as stored (a number is written in digits) and what it means.
struct Choice {
    std::string value;      ///< never empty
    std::string meaning;    ///< in English; see meaning_of() of schema_words.h
    KnownWords known_as{};  ///< what people write instead: "mother" for "parent"
};

inline constexpr double no_upper_end = 1e9;  ///< stands where the trade sets none

/// What a column may hold: one of `choices`, or where there are none, a number from `low` to `high`, both
/// included.
struct FieldDomain {
    std::string_view name;           ///< as columns call it
    std::string_view description;    ///< for people
    CellType type = CellType::text;  ///< of `choices` or of `low` and `high`
    std::vector<Choice> choices;     ///< in the order of value lists; empty for a range
    double low = 0;                  ///< in the column's unit; not looked at where there are choices
    double high = 0;                 ///< in the column's unit; no_upper_end for none
};

/// A column whose text must be found in another table's column. `within` names a column that both tables
/// have and that must agree as well: row "4" of block "North" is another row than row "4" of block "South".
struct Reference {
    std::string_view table;     ///< of the schema
    std::string_view column;    ///< of that table
    std::string_view within{};  ///< empty where the text alone names the row
};

/// What the cells of a column say. Whether it belongs to the table's key is the table's to tell.
enum class ColumnRole {
    name,       ///< the row's own name, alone or within what the rest of its key names
    reference,  ///< the name of another row
    day,        ///< a calendar day
    stage,      ///< a growth stage on the BBCH scale
    share,      ///< a part of a whole, 0 to 1
    choice,     ///< one of a closed list
    number,     ///< any other number, counted or measured
    text,       ///< a few words
    remark,     ///< a text that may be longer than a line
};

/// A value of an open column that people call otherwise: "Malus domestica" is "apple" to them.
struct UsualValue {
    std::string value;      ///< as stored
    KnownWords known_as{};  ///< what people write instead
};

/// How one field of a record is read and filled. The record is one of the column's table.
struct BoundField {
    std::function<Cell(const void* record)> show;  ///< unknown where the record's optional is empty
    /// Of a cell that check_cell() has nothing against; an unknown leaves the record's initial value.
    std::function<void(const Cell& cell, void* record)> fill;
};

/// A column of a table, and all that follows from it.
struct BookColumn {
    std::string_view name;                ///< as stored; once released it is never renamed
    CellType type = CellType::text;       ///< of its cells
    bool required = false;                ///< never unknown
    std::string_view label;               ///< for people, sentence case
    std::string_view description;         ///< one sentence
    std::string_view unit{};              ///< empty where none applies
    std::string_view domain{};            ///< name of a FieldDomain, empty where anything of the type goes
    std::vector<Reference> references{};  ///< the name must answer to one of these; empty where free
    std::string_view initial{};           ///< what a new row gets, as SQL text; empty for unknown
    ColumnRole role = ColumnRole::text;   ///< what its cells say
    KnownWords known_as{};                ///< headings of people's own files, besides name and label
    std::vector<UsualValue> usual{};      ///< of an open column
    Sentence refers_to{};          ///< what its names are names of, in a sentence: "accession or blend"
    std::string_view passport{};   ///< the MCPD descriptor that tells it, or a part of it; empty for none
    bool told_with_trees = false;  ///< of accessions: a layer of trees may tell it of them
    Sentence tab{};                ///< of the form that it stands on; empty for the first one
    std::string_view
        shown_before{};          ///< the column that it precedes on its tab; empty for the schema's order
    std::string label_inside{};  ///< the label in the middle of a sentence: "BBCH stage", "noted on"
    BoundField field{};          ///< of the table's record
};

/// A row of a book's table as cells.
struct BookRow {
    std::int64_t fid = 0;          ///< its number; 0 for a row that is not in a book yet
    std::vector<Cell> cells;       ///< in the order of the schema's columns
    std::optional<MapPoint> at{};  ///< of a table of points; nothing where it is not known
    std::vector<MapPoint> line{};  ///< of a table of lines; empty where it is not known
};

/// How a table's records are reached in an orchard.
struct BoundRecords {
    std::type_index type = typeid(void);                            ///< of one record
    std::function<void(Orchard& orchard, const BookRow& row)> add;  ///< the row's required cells are known
    std::function<BookRow(const void* record)> show;                ///< with its number and its place
    /// In the orchard's order; none is null.
    std::function<std::vector<const void*>(const Orchard& orchard)> all;
    /// Takes the record of that number out; nothing where there is none.
    std::function<void(Orchard& orchard, std::int64_t fid)> remove;
};

/// A table of the book, bound to the records of an orchard.
struct BookTable {
    std::string_view name;                       ///< as stored; once released it is never renamed
    std::string_view title;                      ///< for people
    std::string_view description;                ///< one sentence
    GeometryKind geometry = GeometryKind::none;  ///< of its rows
    std::vector<std::string_view> key;  ///< columns that together name one row; empty where rows have no name
    std::vector<BookColumn> columns;    ///< without number and geometry, in the book's order
    Sentence
        row_words{};  ///< one row in the middle of a sentence: "pollen lot"; empty where none refers to it
    Sentence
        entry_words{};  ///< what a single entry is called: "Bloom observation"; empty where it takes none
    bool takes_layers = false;      ///< rows may come from a layer of the user's own
    bool needs_place = false;       ///< a row without a place on the map is of no use
    bool long_series = false;       ///< rows by the thousand, which nobody looks at one by one
    std::string_view day_column{};  ///< when it was seen or done; empty where rows have no such day
    BoundRecords records{};         ///< how they are reached
};

/// Every table of a book that people fill in, parents before those that refer to them. What is made with a
/// schema (sentences as well) refers to it: it lives as long as the program.
using Schema = std::span<const BookTable>;

/// The released schema.
Schema book_tables();
/// Every domain that a column names.
std::span<const FieldDomain> field_domains();

/// The table, column or domain of that name, or null.
const BookTable* find_book_table(std::string_view name, Schema schema = book_tables());
/// Null where the table has no such column.
const BookColumn* find_column(const BookTable& table, std::string_view name);
/// Null for an unknown or empty name.
const FieldDomain* find_domain(std::string_view name);

/// The table whose rows are such records. There is one for each record of Orchard.
const BookTable& table_of_type(std::type_index record);
/// The same by the record's type.
template <class Record>
const BookTable& table_of_records() {
    return table_of_type(typeid(Record));
}

/// The column of ColumnRole::name, or null where rows have no name of their own.
const BookColumn* name_column(const BookTable& table);
/// The column that is the whole key, or null where it takes more than one or rows have none.
const BookColumn* key_column(const BookTable& table);
/// The column by which people name a row: its own name where only a day stands beside it in the key ("tag"),
/// else key_column().
const BookColumn* naming_column(const BookTable& table);

/// The column that a heading means: by the column's name, else by its label, else by a word that people use.
/// Capitals, blanks, accents and a unit in brackets do not matter. Null where none is meant, and where the
/// same word fits two columns.
const BookColumn* column_headed(const BookTable& table, std::string_view heading);

/// The choice that people mean by a text, in any writing, by the stored word or another; null for none.
const Choice* choice_called(const FieldDomain& domain, std::string_view text);
/// The stored form of what people write in a column: the word of a closed list, the usual value of an open
/// one; the text itself where the schema knows no other.
std::string as_stored(const BookColumn& column, std::string_view text);

/// The only tables that replace_results() will ever write.
std::span<const std::string_view> result_table_names();

/// What is wrong with `value` in this column by its type, domain and being required, and what to do about
/// it; nothing where it is fine. `table` and `row` of the finding are left to the caller.
std::optional<Finding> check_cell(const BookColumn& column, const Cell& value);

}  // namespace pipward::book
