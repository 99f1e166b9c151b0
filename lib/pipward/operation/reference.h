// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/schema.h"

namespace pipward::operation {

/// The operation reference in Markdown, from the declarations.
std::string operation_reference();

/// The book's tables, field domains and result tables in Markdown, from the schema and the result shapes.
std::string book_reference(book::Schema schema = book::book_tables());

}  // namespace pipward::operation
