// SPDX-License-Identifier: MIT
#include "pipward/seed/planted.h"

#include <fmt/format.h>

#include <map>

#include "pipward/record/descent.h"
#include "pipward/seed/detail/drawn_seed.h"
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

Accession accession_of(const Planted& planted, const OrchardIndex& book, const PlantingMark& mark) {
    Accession accession;
    accession.name = planted.accession;
    accession.kind = AccessionKind::seedling;
    accession.species = species_of(book, planted.goal->seed_parent);
    accession.seed_parent = planted.goal->seed_parent;
    accession.pollen_parent = planted.goal->pollen_parent;
    accession.remark = mark.remark;
    return accession;
}

Tree tree_of(const Planted& planted, const PlantingMark& mark) {
    Tree tree;
    tree.label = planted.label;
    tree.accession = planted.accession;
    tree.block = planted.place->block;
    tree.row = planted.place->row;
    tree.position = planted.place->position;
    tree.purpose = planted.goal == nullptr ? TreePurpose::other : TreePurpose::seedling;
    tree.placed_by = PlacedBy::computed;
    tree.planted_on = mark.planted_on;
    tree.remark = mark.remark;
    tree.at = planted.place->at;
    return tree;
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

PlantedRecords planted_records(const std::vector<Planted>& planted, const Orchard& orchard,
                               const PlantingMark& mark) {
    const OrchardIndex book(orchard);
    PlantedRecords records;
    std::map<std::string, int> seedlings;  // by cross
    for (const auto& one : planted) {
        if (one.goal != nullptr) {
            ++seedlings[one.goal->code];
            records.accessions.push_back(accession_of(one, book, mark));
        }
        records.trees.push_back(tree_of(one, mark));
    }
    records.withdrawals = detail::seed_drawn(seedlings, orchard, mark);
    return records;
}

}  // namespace pipward::seed
