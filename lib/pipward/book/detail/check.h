// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pipward/book/schema.h"
#include "pipward/record/orchard_index.h"
#include "pipward/value/finding.h"
#include "pipward/value/season.h"

/// Inside of the room: the rules of check_orchard(), one file a subject. Each adds what it finds.
namespace pipward::book::detail {

/// The names that references may answer to: what stands in the columns that name rows or are referred to.
struct Names {
    using Column = std::pair<std::string_view, std::string_view>;  // of the schema: table and column
    std::map<Column, std::set<std::string>> by_column;
    std::set<std::string, std::less<>> unread;  ///< tables of which rows could not be read

    /// None where the schema has no such column, or nothing refers to it.
    const std::set<std::string>& of(std::string_view table, std::string_view column) const;
};

Names names_of(const Orchard& orchard, Schema schema);

void check_emptiness(const Orchard& orchard, const Names& names, Findings& findings);
/// The rules that the schema carries: names that something answers to, names that are one row's alone,
/// numbers within the limits of their column.
void check_references(const Orchard& orchard, const Names& names, Schema schema, Findings& findings);
void check_keys(const Orchard& orchard, Schema schema, Findings& findings);
void check_numbers(const Orchard& orchard, Schema schema, Findings& findings);
/// Of one name: characters that are not seen, and more of them than a tag holds.
void check_writing(std::string_view table, std::string_view field, const std::string& name,
                   Findings& findings);
void check_trees(const Orchard& orchard, Day as_of, Findings& findings);
void check_bloom_observations(const OrchardIndex& book, Day as_of, Findings& findings);
void check_weather(const Orchard& orchard, Day as_of, Findings& findings);
/// Of one station's days: what is wrong with the temperatures, and with the days themselves.
void check_temperatures(const std::vector<const WeatherDay*>& days, Findings& findings);
void check_days(const std::vector<const WeatherDay*>& days, Day as_of, Findings& findings);
/// Whether both temperatures have ever been measured on earth.
bool is_believable(const WeatherDay& day);
void check_warmth(const Orchard& orchard, Findings& findings);
void check_time_of_bloom(const Orchard& orchard, Day as_of, Findings& findings);
void check_accessions(const Orchard& orchard, Findings& findings);
void check_pedigree(const Orchard& orchard, Findings& findings);
/// Parents younger than their children, and sports with parents of their own.
void check_descent(const OrchardIndex& book, Findings& findings);
void check_blends(const Orchard& orchard, const Names& names, Findings& findings);
void check_goals(const OrchardIndex& book, const Names& names, Day as_of, Findings& findings);
void check_pollen(const OrchardIndex& book, Day as_of, Findings& findings);
/// Work at branches, passes under one tag, fruit set and moves of pollen.
void check_branches(const OrchardIndex& book, Day as_of, Findings& findings);
void check_seed(const OrchardIndex& book, Day as_of, Findings& findings);

/// The name in `known` that `name` most likely stands for: the same but for case and spaces, or one slip of
/// the pen away. Empty where there is none.
std::string likely_name(const std::string& name, const std::set<std::string>& known);
/// Lower case, without spaces at the ends and doubled ones inside.
std::string folded(std::string_view name);

/// The book's half of the earth, by its stations; the north where no station has a place.
Hemisphere hemisphere_in(const Orchard& orchard);

/// Where a finding belongs; `fid` names the row when it has no name of its own.
struct Whereabouts {
    std::string_view table;
    RowWords row{};
    std::string_view field{};
    std::string value{};
};
Finding error(Whereabouts place, Sentence message, Sentence remedy);
Finding warning(Whereabouts place, Sentence message, Sentence remedy);
Finding notice(Whereabouts place, Sentence message, Sentence remedy);
std::string fid_name(std::int64_t fid);
/// How findings name a record: its key where that is one column, else by its number.
std::string row_name(const BookTable& table, const void* record);

/// Warns where `day` lies before the tree's planting or after its removal.
void check_tree_stands(const Whereabouts& place, const Tree& tree, Day day, Findings& findings);

}  // namespace pipward::book::detail
