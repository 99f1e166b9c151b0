// SPDX-License-Identifier: MIT
#include "pipward/book/detail/entry_journal.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cstdlib>
#include <map>

#include "pipward/value/plain_text.h"

namespace pipward::book::detail {
namespace {

constexpr int kept_batches = 500;
constexpr int kept_rows = 20'000;

bool has_journal(Session& session) {
    return !query(session,
                  fmt::format(
                      fmt::runtime(session.server ? "SELECT 1 FROM pg_tables WHERE tablename = '{}'"
                                                  : "SELECT 1 FROM sqlite_master WHERE type = 'table' AND "
                                                    "name = '{}'"),
                      journal_table))
                .empty();
}

void make_journal(Session& session) {
    run_sql(session,
            fmt::format("CREATE TABLE IF NOT EXISTS {} (number {} NOT NULL, table_name TEXT NOT NULL, "
                        "row_number {} NOT NULL, content TEXT NOT NULL, batch {}, filled TEXT)",
                        journal_table,
                        session.server ? "BIGSERIAL PRIMARY KEY" : "INTEGER PRIMARY KEY AUTOINCREMENT",
                        session.server ? "BIGINT" : "INTEGER", session.server ? "BIGINT" : "INTEGER"));
}

// A book of an older release has a journal without batches, or without completed rows.
bool has_column(Session& session, const char* column) {
    const auto sql =
        session.server
            ? fmt::format(
                  "SELECT 1 FROM information_schema.columns WHERE table_name = '{}' AND "
                  "column_name = '{}'",
                  journal_table, column)
            : fmt::format("SELECT 1 FROM pragma_table_info('{}') WHERE name = '{}'", journal_table, column);
    return !query(session, sql).empty();
}

void want_column(Session& session, const char* column, const char* type) {
    if (!has_column(session, column)) {
        run_sql(session, fmt::format("ALTER TABLE {} ADD COLUMN {} {}", journal_table, column, type));
    }
}

std::string filled_of(const AddedRow& row) {
    return row.filled.empty() ? "NULL" : quoted_text(fmt::format("{}", fmt::join(row.filled, " ")));
}

std::string greatest_number(Session& session) {
    const auto rows = query(session, fmt::format("SELECT COALESCE(MAX(number), 0) FROM {}", journal_table));
    return rows.front().front().value_or("0");
}

// Many at a time: a statement takes longer to read than its rows to write.
void insert(Session& session, std::span<const AddedRow> rows, const std::string& batch) {
    constexpr std::size_t at_once = 200;
    for (std::size_t first = 0; first < rows.size(); first += at_once) {
        std::string values;
        for (const auto& row : rows.subspan(first, std::min(at_once, rows.size() - first))) {
            values +=
                fmt::format("{}({}, {}, {}, {}, {})", values.empty() ? "" : ", ", quoted_text(row.table),
                            row.fid, quoted_text(row.content), batch, filled_of(row));
        }
        run_sql(session,
                fmt::format("INSERT INTO {} (table_name, row_number, content, batch, filled) VALUES {}",
                            journal_table, values));
    }
}

// A batch is named by the number of its first row; a single entry has none. Whole batches are forgotten, and
// the newest never.
void forget_old(Session& session) {
    run_sql(
        session,
        fmt::format("DELETE FROM {0} WHERE COALESCE(batch, number) < (SELECT MAX(COALESCE(batch, number)) "
                    "FROM {0}) AND (COALESCE(batch, number) <= (SELECT MAX(number) FROM {0}) - {1} OR "
                    "COALESCE(batch, number) <= (SELECT COALESCE(batch, number) FROM {0} GROUP BY "
                    "COALESCE(batch, number) ORDER BY COALESCE(batch, number) DESC LIMIT 1 OFFSET {2}))",
                    journal_table, kept_rows, kept_batches));
}

// The row stays, and may have been filled before: only the latest filling goes.
void forget_filling(Session& session, const AddedRow& row) {
    run_sql(session,
            fmt::format("DELETE FROM {0} WHERE number = (SELECT MAX(number) FROM {0} WHERE table_name = {1} "
                        "AND row_number = {2} AND filled = {3})",
                        journal_table, quoted_text(row.table), row.fid, filled_of(row)));
}

}  // namespace

void remember(Session& session, std::span<const AddedRow> rows) {
    make_journal(session);
    want_column(session, "batch", session.server ? "BIGINT" : "INTEGER");
    want_column(session, "filled", "TEXT");
    insert(session, rows.first(std::min<std::size_t>(rows.size(), 1)), "NULL");
    if (rows.size() > 1) {
        const auto batch = greatest_number(session);
        run_sql(session, fmt::format("UPDATE {} SET batch = number WHERE number = {}", journal_table, batch));
        insert(session, rows.subspan(1), batch);
    }
    forget_old(session);
}

void forget(Session& session, std::span<const AddedRow> rows) {
    if (!has_journal(session)) {
        return;
    }
    constexpr std::size_t at_once = 500;
    for (std::size_t first = 0; first < rows.size(); first += at_once) {
        std::map<std::string, std::string> numbers;
        for (const auto& row : rows.subspan(first, std::min(at_once, rows.size() - first))) {
            if (!row.filled.empty()) {
                forget_filling(session, row);
                continue;
            }
            auto& list = numbers[row.table];
            list += fmt::format("{}{}", list.empty() ? "" : ", ", row.fid);
        }
        for (const auto& [table, list] : numbers) {
            run_sql(session, fmt::format("DELETE FROM {} WHERE table_name = {} AND row_number IN ({})",
                                         journal_table, quoted_text(table), list));
        }
    }
}

std::vector<std::vector<AddedRow>> remembered(Session& session) {
    std::vector<std::vector<AddedRow>> batches;
    if (!has_journal(session)) {
        return batches;
    }
    const auto* const batch = has_column(session, "batch") ? "COALESCE(batch, number)" : "number";
    const auto* const filled = has_column(session, "filled") ? "filled" : "NULL";
    std::string last;
    for (const auto& row :
         query(session, fmt::format("SELECT table_name, row_number, content, {0}, {1} FROM {2} ORDER BY {0} "
                                    "DESC, number",
                                    batch, filled, journal_table))) {
        if (const auto of = row[3].value_or(""); batches.empty() || of != last) {
            batches.emplace_back();
            last = of;
        }
        batches.back().push_back({row[0].value_or(""),
                                  std::strtoll(row[1].value_or("0").c_str(), nullptr, 10),
                                  row[2].value_or(""), words_in(row[4].value_or(""))});
    }
    return batches;
}

}  // namespace pipward::book::detail
