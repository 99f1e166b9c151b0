// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/schema.h"

/// What passports have no descriptor for: columns of accessions that go to REMARKS under a name of the
/// book's.
namespace pipward::intake::detail {

/// The columns, in the order of the schema. The remark itself, which ends REMARKS, is none of them.
std::vector<const book::BookColumn*> own_remarks();

/// "SEED_RIPE_DAYS" of seed_ripe_days.
std::string remark_name(const book::BookColumn& column);

/// Fills the field that a remark of that name is of. False where there is none or the value is not of its
/// type.
bool fill_remark(Accession& accession, std::string_view name, std::string_view value);

}  // namespace pipward::intake::detail
