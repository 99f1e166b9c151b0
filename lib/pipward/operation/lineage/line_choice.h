// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/book.h"

/// Whose line somebody wants to see.
namespace pipward::operation {

/// What the book knows of parents and traits: a book needs no trees and no weather for it. What cannot be
/// read is told as warnings. Throws Error (input) where no accession could be read because of errors.
book::BookReading read_line(const std::string& location);

}  // namespace pipward::operation
