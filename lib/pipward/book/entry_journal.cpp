// SPDX-License-Identifier: MIT
#include "pipward/book/entry_journal.h"

#include <fmt/format.h>

#include <cstdlib>

namespace pipward {
namespace {

constexpr int kept_entries = 500;

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
                        "row_number {} NOT NULL, content TEXT NOT NULL)",
                        journal_table,
                        session.server ? "BIGSERIAL PRIMARY KEY" : "INTEGER PRIMARY KEY AUTOINCREMENT",
                        session.server ? "BIGINT" : "INTEGER"));
}

}  // namespace

void remember(Session& session, const AddedRow& row) {
    make_journal(session);
    run_sql(session, fmt::format("INSERT INTO {} (table_name, row_number, content) VALUES ({}, {}, {})",
                                 journal_table, quoted_text(row.table), row.fid, quoted_text(row.content)));
    run_sql(session, fmt::format("DELETE FROM {0} WHERE number <= (SELECT MAX(number) FROM {0}) - {1}",
                                 journal_table, kept_entries));
}

void forget(Session& session, const AddedRow& row) {
    if (has_journal(session)) {
        run_sql(session, fmt::format("DELETE FROM {} WHERE table_name = {} AND row_number = {}",
                                     journal_table, quoted_text(row.table), row.fid));
    }
}

std::vector<AddedRow> remembered(Session& session) {
    std::vector<AddedRow> rows;
    if (!has_journal(session)) {
        return rows;
    }
    for (const auto& row :
         query(session, fmt::format("SELECT table_name, row_number, content FROM {} ORDER BY "
                                    "number DESC",
                                    journal_table))) {
        rows.push_back({row[0].value_or(""), std::strtoll(row[1].value_or("0").c_str(), nullptr, 10),
                        row[2].value_or("")});
    }
    return rows;
}

}  // namespace pipward
