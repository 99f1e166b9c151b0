// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/book/detail/bind.h"

/// The tables of the book, one function each; book_tables() puts them in their order.
namespace pipward::book::detail {

// schema_ground.cpp
BookTable block_table();
BookTable tree_row_table();
BookTable station_table();
BookTable weather_day_table();

// schema_trees.cpp
BookTable accession_table();
BookTable blend_table();
BookTable tree_table();

// schema_observations.cpp
BookTable bloom_observation_table();
BookTable trait_table();
BookTable trait_score_table();

// schema_crosses.cpp
BookTable cross_goal_table();
BookTable pollen_lot_table();
BookTable pollen_test_table();
BookTable pollen_move_table();
BookTable pollination_table();
BookTable branch_work_table();
BookTable fruit_set_table();
BookTable fruit_table();

// schema_seed.cpp
BookTable seed_lot_table();
BookTable germination_count_table();
BookTable seed_withdrawal_table();

/// The last column of most tables.
template <class Record>
BoundColumn<Record> remark_column(std::optional<std::string> Record::*remark) {
    return column(remark, "remark", "Remark", "Anything worth keeping about this row.")
        .as_remark()
        .known_as(Language::english, {"note", "notes", "remark", "remarks", "comment", "comments", "memo"})
        .known_as(Language::german, {"Bemerkung", "Bemerkungen", "Notiz", "Kommentar"})
        .known_as(Language::french, {"remarque"});
}

}  // namespace pipward::book::detail
