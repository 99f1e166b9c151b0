// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/schema.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

namespace pipward::book::detail {

/// Doubled and contradicting records, days that stand for empty cells, seed colder than any.
void check_slips(const Orchard& orchard, Schema schema, Findings& findings);

}  // namespace pipward::book::detail
