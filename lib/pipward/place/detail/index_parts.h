// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/place/detail/family_table.h"
#include "pipward/place/detail/name_pool.h"
#include "pipward/place/detail/remark_pool.h"

namespace pipward::place::detail {

/// Inside of the room: fills the tables of a TreeIndex from the records, which must outlive them.
void fill_index(const Orchard& orchard, NamePool& names, FamilyTable& families, RemarkPool& remarks);

}  // namespace pipward::place::detail
