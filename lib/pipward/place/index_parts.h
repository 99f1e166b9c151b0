// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/place/family_table.h"
#include "pipward/place/name_pool.h"
#include "pipward/place/note_pool.h"
#include "pipward/place/stand_table.h"

namespace pipward::place {

/// Inside of the room: fills the tables of a TreeIndex from the records, which must outlive them.
void fill_index(const Orchard& orchard, NamePool& names, FamilyTable& families, NotePool& notes);

}  // namespace pipward::place
