// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"

/// Inside of the room: which rows belong together, declared by the OGC Related Tables Extension (OGC 18-000)
/// so that any program can follow them.
namespace pipward::book::detail {

/// Rows of `related` name a row of `base`. The mapping is a view over the human keys, so it is never stale
/// and nobody has to keep two sets of keys.
struct Relation {
    std::string base;
    std::string related;
    std::string kind;     ///< of the related rows, as the extension calls it
    std::string mapping;  ///< the view's name
    std::string sql;      ///< its query
};

/// One relation for each reference of the schema.
std::vector<Relation> book_relations(Schema schema);
/// Makes the views of the references in these tables and registers them, in a book that has others.
/// GeoPackage only.
void add_relations(Session& session, Schema schema);
/// The same in a book that has none. GeoPackage only.
void write_relations(Session& session, Schema schema);

}  // namespace pipward::book::detail
