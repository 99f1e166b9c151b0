// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/operation/operation.h"

namespace pipward::operation {

/// The contract with scripts, in this key order:
/// {"operation", "book", "as_of", "tables": {NAME: {"columns": [{"name", "type", "unit", "description"}],
/// "rows": [[...]]}}, "files": [...], "findings": [{"level", "table", "row", "field", "value", "message",
/// "remedy"}]}. Unknown cells are null, days ISO 8601; files are names; book and as_of are null where the
/// operation has none. One line. Same input, same bytes.
std::string outcome_json(const Operation& operation, const Form& form, const Outcome& outcome);

/// What an operation that was refused its input returns: every table that it declares, without rows, and the
/// findings that prevent the result.
Outcome refused_outcome(const Operation& operation, const Findings& findings);

/// Every operation with its parameters, examples and results, for documentation and tests.
std::string catalogue_json();

}  // namespace pipward::operation
