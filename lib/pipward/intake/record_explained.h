// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/schema.h"
#include "pipward/value/sentence.h"

/// What the columns of a sheet of notes hold, for people.
namespace pipward::intake {

/// What one column is for, its unit included.
Sentence holds(const book::BookColumn& column);
/// From what to what; empty where anything goes.
Sentence allowed_in(const book::BookColumn& column);

/// A page that explains every column of `sheet`, words of closed lists with their meanings.
std::string explanations_of(const book::BookTable& table, const std::string& sheet, const Wording& wording);

}  // namespace pipward::intake
