// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/intake/record_kind.h"
#include "pipward/record/orchard.h"

/// Sheets for notes with the lines that are likely.
namespace pipward::intake {

/// The cells of a sheet's line that are known beforehand, by column; also the column where_column.
using KnownCells = std::map<std::string, std::string, std::less<>>;

/// Lines for what is due or likely: living trees in the order of their addresses, the season's crosses, tags
/// whose fruit is not noted yet, lots with seed left. `trait` is what scores are given for.
std::vector<KnownCells> likely_lines(RecordKind kind, const Orchard& orchard, Day as_of,
                                     const std::string& trait);

/// A sheet to fill in, as CSV: a column for each of the notes' table, and where to look where the lines are
/// trees or branches. Cells that a spreadsheet would take for a formula are made harmless.
std::string note_sheet_text(RecordKind kind, const std::vector<KnownCells>& lines);

/// How a column of the notes' table may look filled in, with names that the orchard has; empty where nothing
/// serves. Days are `as_of`.
std::string example_of(const book::BookColumn& column, const book::BookTable& table, const Orchard& orchard,
                       Day as_of);

}  // namespace pipward::intake
