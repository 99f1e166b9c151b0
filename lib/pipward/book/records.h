// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/read_table.h"
#include "pipward/record/orchard.h"

/// Inside of the room: rows of the schema into records.
namespace pipward::book {

/// Adds a row of any table of the schema to the orchard. The row's required values are all there.
void add_record(Orchard& orchard, const BookTable& table, const BookRow& row);

}  // namespace pipward::book
