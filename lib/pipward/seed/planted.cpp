// SPDX-License-Identifier: MIT
#include "pipward/seed/planted.h"

#include <fmt/format.h>

#include "pipward/seed/detail/seedling_numbers.h"

namespace pipward::seed {
namespace {

Planted check_tree(const place::RowPosition& place, const std::string& accession) {
    Planted planted;
    planted.accession = accession;
    planted.label = fmt::format("check-{}-{}-{}", place.block, place.row, place.position);
    return planted;
}

Planted seedling(const CrossGoal* goal, detail::SeedlingNumbers& numbers) {
    Planted planted;
    planted.goal = goal;
    planted.accession = numbers.next();
    planted.label = planted.accession;
    return planted;
}

}  // namespace

std::vector<Planted> planted_seedlings(const std::vector<Waiting>& waiting,
                                       const std::vector<place::RowPosition>& places,
                                       const PlantingWish& wish, const std::string& check,
                                       const Orchard& orchard) {
    std::vector<Family> families;
    std::vector<detail::SeedlingNumbers> numbers;
    for (const auto& family : waiting) {
        families.push_back({family.goal->code, family.seedlings});
        numbers.emplace_back(orchard, family.goal->code);
    }
    std::vector<Planted> all;
    for (const auto& planned : plan_planting(families, places.size(), wish)) {
        const auto& place = places[planned.place];
        auto planted = planned.is_check ? check_tree(place, check)
                                        : seedling(waiting[planned.family].goal, numbers[planned.family]);
        planted.order = static_cast<int>(planned.place) + 1;
        planted.place = &place;
        planted.address = place::address_of_position(place, orchard.rows);
        all.push_back(std::move(planted));
    }
    return all;
}

}  // namespace pipward::seed
