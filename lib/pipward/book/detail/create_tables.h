// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"

/// Inside of the room: tables of the schema made in a book that lacks them, in the caller's transaction.
namespace pipward::book::detail {

/// Makes the tables with their keys and their words. Throws OgrTrouble.
void create_tables(Session& session, Schema tables, const OGRSpatialReference& crs);

/// Makes several columns of a table its key; one column's uniqueness is declared with the column.
void create_key(Session& session, const BookTable& table);

}  // namespace pipward::book::detail
