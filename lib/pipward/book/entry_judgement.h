// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/check.h"
#include "pipward/book/entry.h"
#include "pipward/book/schema.h"

/// Inside of the room: an entry while it is judged, and the judging of its names.
namespace pipward {

/// The entry's cell, unknown where it gives none.
Cell value_of(const Entry& entry, std::string_view column);

/// An entry seen against the book.
struct Judgement {
    const BookReading& book;
    const Entry& entry;
    const BookTable& table;
    Day as_of;
    std::string row;  ///< how findings name it
    Findings findings{};

    Whereabouts at(std::string_view column) const {
        return {table.name, row, column, to_text(value_of(entry, column))};
    }
};

/// Names that nothing answers to, with the nearest that exist.
void judge_names(Judgement& judgement, const Names& names);
/// The row's own name, where it must be its alone.
void judge_key(Judgement& judgement, const Names& names);

}  // namespace pipward
