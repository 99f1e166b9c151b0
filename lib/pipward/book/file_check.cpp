// SPDX-License-Identifier: MIT
#include "pipward/book/detail/file_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <filesystem>

#include "pipward/book/book.h"
#include "pipward/book/detail/check.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

// What the database says of rows that the schema would not have let in is told row by row elsewhere.
bool is_about_values(const std::string& said) {
    constexpr std::array starts{"NULL value in", "CHECK constraint failed", "non-INT value", "non-"};
    return std::ranges::any_of(starts, [&](const char* start) {
        return said.starts_with(start) && said.find("entry in index") == std::string::npos;
    });
}

int damages(detail::Session& session, std::string_view check) {
    int number = 0;
    for (const auto& row : detail::query(session, fmt::format("PRAGMA {}", check))) {
        const auto said = row.empty() ? std::string{} : row[0].value_or("");
        number += said == "ok" || is_about_values(said) ? 0 : 1;
    }
    return number;
}

Finding damaged(int number) {
    return detail::error({},
                         number == 1 ? say("The file is damaged in one place.")
                                     : say("The file is damaged in {} places.", number),
                         say("Restore it from a backup, or copy what can still be read into a new book. Do "
                             "not write to it."));
}

struct GeometryTable {
    std::string name;
    std::string column;
    std::string srs;
};

std::vector<GeometryTable> geometry_tables(detail::Session& session) {
    std::vector<GeometryTable> tables;
    for (const auto& row :
         detail::query(session, "SELECT table_name, column_name, srs_id FROM gpkg_geometry_columns")) {
        const auto name = row[0].value_or("");
        const auto results = result_table_names();
        if (find_book_table(name) != nullptr || std::ranges::find(results, name) != results.end()) {
            tables.push_back({name, row[1].value_or(""), row[2].value_or("0")});
        }
    }
    return tables;
}

std::string index_of(const GeometryTable& table) {
    return fmt::format("rtree_{}_{}", table.name, table.column);
}

Finding bad_index(const GeometryTable& table) {
    return detail::error(
        {table.name, {}, table.column},
        say("The spatial index of the table does not fit its rows: a map or a search may miss some of them, "
            "and writing may fail."),
        say("Rebuild the layer's spatial index in a GIS, or copy the table into a new book."));
}

// A program that closes a file with such a log takes the log into the file and says so in its head.
bool log_may_be_lost(detail::Session& session, const std::string& location) {
    std::error_code none;
    const auto mode = detail::query(session, "PRAGMA journal_mode").at(0).at(0).value_or("");
    const auto size = std::filesystem::file_size(location + "-wal", none);
    return mode == "wal" && (none || size == 0);
}

std::string first_word(detail::Session& session, const std::string& sql) {
    const auto rows = detail::query(session, sql);
    return rows.empty() || rows[0].empty() ? std::string{} : rows[0][0].value_or("");
}

bool index_fits(detail::Session& session, const GeometryTable& table) {
    const auto index = index_of(table);
    if (!detail::has_table(session, index)) {
        return true;
    }
    try {
        const auto rows =
            fmt::format("SELECT 0 + COUNT(*) FROM {0} WHERE {1} IS NOT NULL AND NOT ST_IsEmpty({1})",
                        detail::quoted_name(table.name), detail::quoted_name(table.column));
        const auto indexed = fmt::format("SELECT 0 + COUNT(*) FROM {}", detail::quoted_name(index));
        return first_word(session, fmt::format("SELECT rtreecheck({})", detail::quoted_text(index))) ==
                   "ok" &&
               first_word(session, rows) == first_word(session, indexed);
    } catch (const detail::OgrTrouble& trouble) {
        if (trouble.locked()) {
            throw;
        }
        return false;
    }
}

void check_systems(detail::Session& session, const GeometryTable& table, Findings& findings) {
    const auto sql = fmt::format(
        "SELECT CAST(rowid AS TEXT), CAST(ST_SRID({0}) AS TEXT) FROM {1} WHERE {0} IS NOT NULL AND "
        "ST_SRID({0}) <> {2} LIMIT 100",
        detail::quoted_name(table.column), detail::quoted_name(table.name), table.srs);
    for (const auto& row : detail::query(session, sql)) {
        findings.push_back(detail::error(
            {table.name, fmt::format("fid {}", row[0].value_or("")), table.column, row[1].value_or("")},
            say("Its location is stored in another coordinate system than that of the layer ({}).",
                table.srs),
            say("Move it through a GIS that transforms it, or draw it again.")));
    }
}

Error damaged_file(const std::string& location) {
    return detail::access_error(
        location, say("The file is damaged, and nothing is written to it."),
        say("Restore it from a backup, or copy what can still be read into a new book."));
}

// A table that is damaged says so above; its rows then cannot be asked.
void check_geometries(detail::Session& session, Findings& findings) {
    for (const auto& table : geometry_tables(session)) {
        if (!index_fits(session, table)) {
            findings.push_back(bad_index(table));
        }
        check_systems(session, table, findings);
    }
}

}  // namespace

Findings detail::check_file(Session& session) {
    Findings findings;
    if (session.server) {
        return findings;
    }
    if (const int number = damages(session, "integrity_check(100)"); number > 0) {
        findings.push_back(damaged(number));
        return findings;
    }
    check_geometries(session, findings);
    return findings;
}

void detail::refuse_damaged_file(Session& session, const std::string& location) {
    if (!session.server && damages(session, "quick_check(100)") > 0) {
        throw damaged_file(location);
    }
}

bool detail::is_large_file(Session& session) {
    constexpr double large = 32e6;  // bytes: some hundredths of a second
    const auto number = [&](const char* pragma) {
        return std::strtod(first_word(session, pragma).c_str(), nullptr);
    };
    return !session.server && number("PRAGMA page_count") * number("PRAGMA page_size") > large;
}

void detail::refuse_damaged_tables(Session& session, const std::string& location,
                                   const std::vector<std::string>& tables) {
    for (const auto& table : tables) {
        if (has_table(session, table) &&
            damages(session, fmt::format("quick_check({})", quoted_text(table))) > 0) {
            throw damaged_file(location);
        }
    }
}

Findings check_file(const BookAt& book) {
    Findings findings;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        findings = detail::check_file(session);
        if (!session.server && log_may_be_lost(session, book.location)) {
            findings.push_back(detail::warning({},
                                               say("The file was copied while another program had it open, "
                                                   "or has it open now: its latest changes stand "
                                                   "in a log of their own, and there is none beside it."),
                                               say("If no program has it open, look for what was entered "
                                                   "last; copy a book with book-backup, or after "
                                                   "closing it everywhere.")));
        }
    });
    return findings;
}

}  // namespace pipward::book
