// SPDX-License-Identifier: MIT
// From version 1 to 2: tables for work at branches, moves of pollen, fruit set and traits; several passes
// under one tag.
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <array>

#include "pipward/book/detail/create_tables.h"
#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/relations.h"
#include "pipward/book/detail/schema_version.h"

namespace pipward::book::detail {
namespace {

constexpr std::array<std::string_view, 4> new_tables{"pollen_move", "branch_work", "fruit_set", "trait"};

std::vector<BookTable> tables_to_make() {
    std::vector<BookTable> tables;
    for (const auto& table : book_tables()) {
        if (std::ranges::find(new_tables, table.name) != new_tables.end()) {
            tables.push_back(table);
        }
    }
    return tables;
}

std::vector<std::string> sql_of(Session& session, const char* type) {
    std::vector<std::string> all;
    for (const auto& row :
         query(session, fmt::format("SELECT sql FROM sqlite_master WHERE type = '{}' AND tbl_name = "
                                    "'pollination' AND sql IS NOT NULL",
                                    type))) {
        all.push_back(row.front().value_or(""));
    }
    return all;
}

std::string with(std::string text, std::string_view old, std::string_view other) {
    const auto at = text.find(old);
    if (at == std::string::npos) {
        throw OgrTrouble(fmt::format("the table pollination is not as version 1 made it: {}", text));
    }
    return text.replace(at, old.size(), other);
}

// The database cannot drop a column's uniqueness: the table is made again (sqlite.org/lang_altertable.html,
// section 7). The comments keep OGR from taking the statements for work on one of its layers.
void free_tag_in_file(Session& session) {
    const auto table = sql_of(session, "table").front();
    const auto triggers = sql_of(session, "trigger");
    run_sql(session, with(with(table, "\"pollination\"", "\"pollination_rebuilt\""),
                          "\"tag\" TEXT NOT NULL UNIQUE", "\"tag\" TEXT NOT NULL"));
    run_sql(session, "INSERT INTO pollination_rebuilt SELECT * FROM pollination");
    run_sql(session, "/* as a whole */ DROP TABLE pollination");
    run_sql(session, "PRAGMA legacy_alter_table = ON");
    run_sql(session, "/* as a whole */ ALTER TABLE pollination_rebuilt RENAME TO pollination");
    run_sql(session, "PRAGMA legacy_alter_table = OFF");
    for (const auto& trigger : triggers) {
        run_sql(session, trigger);
    }
}

}  // namespace

void upgrade_from_1(Session& session) {
    if (session.server) {
        run_sql(session, "ALTER TABLE pollination DROP CONSTRAINT pollination_tag_key");
    } else {
        write_domains(session);
        free_tag_in_file(session);
    }
    create_key(session, *find_book_table("pollination"));
    const auto tables = tables_to_make();
    create_tables(session, tables, OGRSpatialReference());
    if (!session.server) {
        add_relations(session, tables);
    }
}

}  // namespace pipward::book::detail
