// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include "pipward/book/schema.h"
#include "pipward/record/words.h"

/// The kinds of records that are entered, by a sheet or one by one: one for each table that takes entries, and
/// for rows that are completed later.
namespace pipward::intake {

/// What is recorded, a line each.
enum class RecordKind {
    bloom,            ///< stages of bloom
    pollination,      ///< flowers pollinated
    pollen_test,      ///< germination tests of pollen
    harvest,          ///< fruit harvested
    seed_lot,         ///< seed lots
    germination,      ///< germination counts
    seed_withdrawal,  ///< seed taken out
    score,            ///< trait scores
    pollen_lot,       ///< pollen collected
    pollen_move,      ///< pollen brought to another store
    branch_work,      ///< bags, emasculation, branches cut
    fruit_set,        ///< fruit counted on the tree
    stratification,   ///< seed lots put into stratification: completes their rows
    goal,             ///< crosses wanted
    accession,        ///< accessions
    blend,            ///< members of pollen blends
    tree,             ///< trees
    station,          ///< weather stations
    trait             ///< what is scored
};

/// The kinds as they are typed.
std::span<const Word<RecordKind>> words(RecordKind);

/// That they are written to, with the columns that such records fill. Tables of points have the columns
/// latitude_column and longitude_column besides, which place_entry() turns into a place.
const book::BookTable& table_of(RecordKind kind);

/// Whether such records complete rows that the book has, instead of being rows of their own.
bool completes_rows(RecordKind kind);

/// The column of the day on which it was seen or done; null where no day is needed (seed lots).
const book::BookColumn* day_column_of(const book::BookTable& table);

/// Whether a sheet's line is blank without it: what is counted, staged or scored.
bool is_the_record_itself(const book::BookColumn& column);

/// A column of our own sheets that tells where to look; it is not read.
inline constexpr std::string_view where_column = "where";

inline constexpr std::string_view latitude_column = "latitude";    ///< degrees, WGS 84
inline constexpr std::string_view longitude_column = "longitude";  ///< likewise

}  // namespace pipward::intake
