// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "pipward/value/spoken.h"

/// Text for files that spreadsheets open, which calculate what they take for a formula: one in a note from
/// elsewhere could fetch or send something.
namespace pipward::record {

/// Whether a spreadsheet could take the text for a formula: behind blanks, tabs and line ends it begins with
/// =, + , - or @, in their wide forms as well. A plain number is none.
bool may_be_formula(std::string_view text);

/// The text with an apostrophe before it where it may be a formula, which makes it plain text in every
/// spreadsheet; control characters other than tabs and line ends become U+FFFD.
std::string harmless_in_spreadsheet(std::string_view text);

/// Such an apostrophe taken off again.
std::string_view without_guard(std::string_view text);

}  // namespace pipward::record
