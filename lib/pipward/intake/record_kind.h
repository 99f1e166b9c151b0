// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include "pipward/book/schema.h"
#include "pipward/record/words.h"

/// The kinds of notes that are written down by the sheet: one for each table that takes entries.
namespace pipward::intake {

/// What is noted on a sheet, a line each.
enum class RecordKind {
    bloom,            ///< stages of bloom
    pollination,      ///< flowers pollinated
    pollen_test,      ///< germination tests of pollen
    harvest,          ///< fruit harvested
    seed_lot,         ///< seed lots
    germination,      ///< germination counts
    seed_withdrawal,  ///< seed taken out
    score             ///< trait scores
};

/// The kinds as they are typed.
std::span<const Word<RecordKind>> words(RecordKind);

/// That they are written to.
const book::BookTable& table_of(RecordKind kind);

/// The column of the day on which it was seen or done; null where no day is needed (seed lots).
const book::BookColumn* day_column_of(const book::BookTable& table);

/// Whether a sheet's line is blank without it: what is counted, staged or scored.
bool is_the_record_itself(const book::BookColumn& column);

/// A column of our own sheets that tells where to look; it is not read.
inline constexpr std::string_view where_column = "where";

}  // namespace pipward::intake
