// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/book.h"

namespace pipward::operation {

/// What is known of the trees, without the weather and the pollen: enough to find one. What cannot be read is
/// told as warnings, since the rest can still be found. Throws Error (input) where no tree could be read
/// because of errors.
book::BookReading read_trees(const std::string& location);

/// The same of blocks, rows and trees only: enough to walk between them.
book::BookReading read_stands(const std::string& location);

}  // namespace pipward::operation
