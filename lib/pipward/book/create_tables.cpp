// SPDX-License-Identifier: MIT
#include "pipward/book/detail/create_tables.h"

#include <fmt/format.h>

#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/layers.h"

namespace pipward::book::detail {
namespace {

void create_column(Session& session, OGRLayer& layer, const BookColumn& column, bool unique) {
    OGRFieldDefn field(std::string(column.name).c_str(), field_type(column.type, OFTInteger));
    field.SetNullable(column.required ? 0 : 1);
    field.SetUnique(unique ? 1 : 0);
    if (!column.initial.empty()) {
        field.SetDefault(std::string(column.initial).c_str());
    }
    if (!session.server && !column.domain.empty()) {
        field.SetDomainName(std::string(column.domain));
    }
    const auto before = session.messages->failures();
    expect_success(session, before, layer.CreateField(&field) != OGRERR_NONE, "CreateField");
}

void create_table(Session& session, const BookTable& table, const OGRSpatialReference& crs) {
    const auto before = session.messages->failures();
    OGRLayer* layer = create_layer(session,
                                   {.name = std::string(table.name),
                                    .title = std::string(table.title),
                                    .description = std::string(table.description),
                                    .geometry = table.geometry,
                                    .indexed = true},
                                   crs);
    for (const auto& column : table.columns) {
        const bool unique = table.key.size() == 1 && table.key[0] == column.name;
        create_column(session, *layer, column, unique);
    }
    expect_success(session, before, layer->SyncToDisk() != OGRERR_NONE, "SyncToDisk");
}

void describe(Session& session, const BookTable& table) {
    std::vector<ColumnWords> words;
    for (const auto& column : table.columns) {
        words.push_back(words_of(column));
    }
    describe_columns(session, std::string(table.name), words);
}

}  // namespace

// One column's uniqueness is declared with the column; several together need an index.
void create_key(Session& session, const BookTable& table) {
    if (table.key.size() < 2) {
        return;
    }
    std::string columns;
    for (const auto column : table.key) {
        columns += (columns.empty() ? "" : ", ") + quoted_name(column);
    }
    run_sql(session,
            fmt::format("CREATE UNIQUE INDEX {} ON {} ({})", quoted_name(fmt::format("{}_key", table.name)),
                        quoted_name(table.name), columns));
}

void create_tables(Session& session, Schema tables, const OGRSpatialReference& crs) {
    for (const auto& table : tables) {
        create_table(session, table, crs);
    }
    for (const auto& table : tables) {
        create_key(session, table);
        describe(session, table);
    }
}

}  // namespace pipward::book::detail
