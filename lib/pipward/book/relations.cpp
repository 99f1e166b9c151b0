// SPDX-License-Identifier: MIT
#include "pipward/book/detail/relations.h"

#include <fmt/format.h>

namespace pipward::book::detail {
namespace {

constexpr auto relations_form =
    "CREATE TABLE gpkgext_relations (id INTEGER PRIMARY KEY AUTOINCREMENT,base_table_name TEXT NOT NULL,"
    "base_primary_column TEXT NOT NULL DEFAULT 'id',related_table_name TEXT NOT NULL,"
    "related_primary_column TEXT NOT NULL DEFAULT 'id',relation_name TEXT NOT NULL,"
    "mapping_table_name TEXT NOT NULL UNIQUE)";

Relation relation(const BookTable& table, const BookColumn& column, const Reference& to) {
    const auto mapping = fmt::format("link_{}_{}_{}", table.name, column.name, to.table);
    auto join = fmt::format("base.{} = related.{}", quoted_name(to.column), quoted_name(column.name));
    if (!to.within.empty()) {
        join += fmt::format(" AND base.{0} = related.{0}", quoted_name(to.within));
    }
    return {std::string(to.table), std::string(table.name),
            table.geometry == GeometryKind::none ? "attributes" : "features", mapping,
            fmt::format("SELECT base.fid AS base_id, related.fid AS related_id FROM {} AS related JOIN {} AS "
                        "base ON {}",
                        quoted_name(table.name), quoted_name(to.table), join)};
}

void register_extension(Session& session, const std::string& table) {
    run_sql(session, fmt::format("INSERT INTO gpkg_extensions (table_name, column_name, extension_name, "
                                 "definition, scope) VALUES ({}, NULL, 'gpkg_related_tables', "
                                 "'http://www.geopackage.org/18-000.html', 'read-write')",
                                 quoted_text(table)));
}

}  // namespace

std::vector<Relation> book_relations(Schema schema) {
    std::vector<Relation> relations;
    for (const auto& table : schema) {
        for (const auto& column : table.columns) {
            for (const auto& reference : column.references) {
                relations.push_back(relation(table, column, reference));
            }
        }
    }
    return relations;
}

void add_relations(Session& session, Schema schema) {
    for (const auto& link : book_relations(schema)) {
        run_sql(session, fmt::format("CREATE VIEW {} AS {}", quoted_name(link.mapping), link.sql));
        run_sql(session, fmt::format("INSERT INTO gpkgext_relations (base_table_name, base_primary_column, "
                                     "related_table_name, related_primary_column, relation_name, "
                                     "mapping_table_name) VALUES ({}, 'fid', {}, 'fid', '{}', {})",
                                     quoted_text(link.base), quoted_text(link.related), link.kind,
                                     quoted_text(link.mapping)));
        register_extension(session, link.mapping);
    }
}

void write_relations(Session& session, Schema schema) {
    run_sql(session, relations_form);
    register_extension(session, "gpkgext_relations");
    add_relations(session, schema);
}

}  // namespace pipward::book::detail
