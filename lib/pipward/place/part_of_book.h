// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/own_position.h"
#include "pipward/record/orchard_shelf.h"

/// The part of a large book that one question about trees needs.
namespace pipward::place {

/// A call of TreeIndex::find().
struct FindWish {
    std::string query;
    std::size_t limit = 20;
    std::optional<OwnPosition> from{};
    Day as_of;
};

/// Takes all that is needed for the answer: an index of what was taken finds the same trees, with the same
/// scores and in the same order, as one of the whole book. What their addresses and pedigrees say is taken as
/// well. False where the search text can mean more trees than are worth taking one by one.
bool take_for(const FindWish& wish, OrchardShelf& shelf);

/// The same for TreeIndex::nearest(). False where the trees are too far away to tell.
bool take_nearest(const OwnPosition& from, std::size_t limit, OrchardShelf& shelf);

/// As TreeIndex::names_like() of the whole book: names of trees, accessions, tags, crosses and lots.
std::vector<std::string> names_like(std::string_view query, OrchardShelf& shelf, std::size_t how_many = 3);

}  // namespace pipward::place
