// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/day.h"
#include "pipward/value/sentence.h"
#include "pipward/value/spoken.h"

/// A result as any host can show it and the book can keep it: typed, described columns and rows of cells.
namespace pipward::record {

/// What a column's cells hold where they are known.
enum class CellType {
    text,    ///< std::string or Sentence
    whole,   ///< std::int64_t
    number,  ///< double, finite, in the column's unit
    day,     ///< Day
    yes_no,  ///< bool
};

/// The type's word as above, for scripts: "boolean".
std::string_view to_text(CellType type);

/// A word of a closed list as it is stored, and as people read it: "chill_then_heat", "chill then heat".
struct CodeWord {
    std::string code;   ///< the same in every language
    std::string plain;  ///< as people read it; to_plain_text() puts it in the place of the code

    bool operator==(const CodeWord&) const = default;
};

/// What stands in one column of a result.
struct Column {
    /// For scripts and the book, with the unit at its end where it has one: "spacing_m".
    std::string name;
    CellType type = CellType::text;  ///< of every cell that is known
    std::string unit;                ///< empty where none applies
    std::string label;               ///< for people, sentence case: "Full bloom, median"
    std::string description;         ///< one sentence
    /// Of a column that holds words of a closed list, one or several with ", " between; else empty. Scripts
    /// and the book get the code, people the plain word.
    std::vector<CodeWord> words{};
};

/// Nothing (std::monostate) is an unknown. A sentence is text as well, which spoken() puts in the words of a
/// host.
struct Cell : std::variant<std::monostate, std::string, std::int64_t, double, Day, bool, Sentence> {
    using variant::variant;
    // Out of line, as every source that fills a table copies rows of them.
    Cell();
    Cell(const Cell& other);
    Cell(Cell&& other) noexcept;
    Cell& operator=(const Cell& other);
    Cell& operator=(Cell&& other) noexcept;
    ~Cell();
};

/// What a table of results looks like before it has rows: declared once, by the operation that makes it.
struct TableShape {
    std::string name;             ///< as in the book: "bloom_window"
    std::string title;            ///< for people: "Bloom windows"
    std::string description;      ///< one sentence
    bool has_points = false;      ///< a layer with one point a row
    std::vector<Column> columns;  ///< in the order in which they are shown
    bool has_lines = false;       ///< a layer with one line a row; never together with points
};

/// One result.
struct Row {
    std::vector<Cell> cells;          ///< as many as the shape has columns
    std::optional<MapPoint> at{};     ///< in the book's coordinate system
    std::vector<MapPoint> line = {};  ///< the same, of at least two points; empty where the row has none
};

/// A result with its rows; whatever shows or keeps it needs nothing else.
struct Table {
    TableShape shape;       ///< as declared
    std::vector<Row> rows;  ///< in the order in which people should read them

    Table();
    Table(const Table& other);
    Table(Table&& other) noexcept;
    Table& operator=(const Table& other);
    Table& operator=(Table&& other) noexcept;
    ~Table();
    Table(TableShape columns, std::vector<Row> content);
};

/// A cell of an optional value: nothing where there is none.
template <class T>
Cell cell(const std::optional<T>& value) {
    return value ? Cell{*value} : Cell{};
}

/// "LINESTRING (522400 5331200,522436.96 5331210.78)": well-known text, heights left out, twelve digits
/// (less than a millimetre); empty for fewer than two points.
std::string line_wkt(const std::vector<MapPoint>& line);

/// The table with its sentences as text, in the words of a host.
Table spoken(Table table, const Wording& wording);

/// A column for hosts that have text only: the rows' lines as well-known text.
inline constexpr std::string_view line_column = "geom_wkt";
/// The table with its lines as a last column of that name; as it is where it has none.
Table with_lines_as_text(const Table& table);

/// As written in CSV and on a terminal: days ISO 8601, numbers shortest that reads back the same, unknown
/// empty.
std::string to_text(const Cell& cell);
/// The same for people: words of a closed list plain, everything else as it stands.
std::string to_plain_text(const Column& column, const Cell& cell);

}  // namespace pipward::record
