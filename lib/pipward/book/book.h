// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/book_at.h"
#include "pipward/record/orchard.h"
#include "pipward/record/table.h"
#include "pipward/value/finding.h"

/// The orchard book: one GeoPackage (OGC 12-128r18), or a PostGIS database named "PG:...", read and written
/// through one OGR code path. The only room that knows OGR.
namespace pipward::book {

/// Makes a new, empty book with every table, field domain, alias, description and relation.
/// `crs` is any coordinate system that OGR understands ("EPSG:32632").
/// Throws Error (access) where the file exists already or cannot be written, (usage) for an unknown crs.
void create_book(const std::string& path, const std::string& crs);

/// Whether a location names a database server ("PG:..." or "postgresql://...") rather than a file.
bool is_on_server(const std::string& location);

/// A book's location as it may be shown and kept: a server's without its password.
std::string shown_location(const std::string& location);

/// A book, as far as it can be read.
struct BookReading {
    Orchard orchard;    ///< empty tables for those that are missing or were not asked for
    Findings findings;  ///< every value that could not be read: such rows or fields are left out of `orchard`
};

/// Reads the whole book. Throws Error (access) when it cannot be opened or is not a book at all, naming what
/// it is. A missing table is an error finding; nothing is written.
BookReading read_book(const BookAt& book);

/// The same of some tables only, for work that needs no more: nothing is said of the others.
BookReading read_tables(const BookAt& book, const std::set<std::string>& tables);

/// Whether the file is whole as a database, which reading alone need not show: damage, spatial indexes that
/// do not fit their rows, locations stored in another coordinate system than their layer's. Nothing of a book
/// on a server. Throws Error (access) where it cannot be opened.
Findings check_file(const BookAt& book);

/// What could not be read, or not wholly: rows by the name that their findings give them, by table. A table
/// that could not be read at all has no rows here.
using UnreadRows = std::map<std::string, std::set<std::string>>;
/// Out of the findings of read_book() or read_tables().
UnreadRows unread_in(const Findings& findings);

/// Rules between rows and tables: names that nothing answers to, doubles, impossible days and temperatures
/// ... Pure: needs no file. `as_of` tells what lies in the future. What rows of `unread` would have held is
/// not taken for missing.
Findings check_orchard(const Orchard& orchard, Day as_of, const UnreadRows& unread = {});

/// The bloom observations, by fid, that check_orchard() names as too far from the book's usual time of bloom:
/// their day or stage cannot be right, and nothing should be calculated from them.
std::set<std::int64_t> misdated_observations(const Orchard& orchard, Day as_of);

/// Replaces whole result tables, all in one short transaction: wholly old or wholly new, whatever happens.
/// Refuses names that are not result_table_names() of schema.h, and a table of such a name that is not marked
/// as a result of ours. Throws Error (access) with the reason; then nothing was changed.
void replace_results(const BookAt& book, std::span<const Table> results,
                     Patience patience = default_patience);

/// Reads a result table back, or nothing where the book has none of that name.
std::optional<Table> read_result(const BookAt& book, const std::string& name);

/// Adds weather rows of one station by day, in one transaction. The station must exist. A day that the book
/// has is replaced where `replace_existing` says so, and a forecast always by an observation.
struct WeatherWritten {
    int added = 0;      ///< days that the book did not have
    int replaced = 0;   ///< days whose values are now others
    int unchanged = 0;  ///< days left as they stand in the book
};
/// Throws Error (input) with findings where a day cannot be taken, (access) where the book cannot be written;
/// then nothing was written.
WeatherWritten write_weather(const BookAt& book, const std::vector<WeatherDay>& days, bool replace_existing);
/// What write_weather() would do; nothing is written.
WeatherWritten weigh_weather(const BookAt& book, const std::vector<WeatherDay>& days, bool replace_existing);

/// A column of append_rows() that is not a field: the row's geometry as well-known text. For lines and
/// polygons; points are better given by Row::at, which keeps the height.
inline constexpr std::string_view wkt_column = "geom_wkt";

/// Adds rows to a user's table in one transaction. Columns are matched by name; those not given take the
/// schema's initial value or stay unknown. Every cell is checked against the schema before anything is
/// written: throws Error (input) with all findings, (usage) for a table that the schema does not have,
/// (access) where the book cannot be written. For makers of sample books and imports.
void append_rows(const BookAt& book, const Table& rows);

}  // namespace pipward::book
