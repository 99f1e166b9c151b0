// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include "pipward/value/word.h"

#include <cstdint>
#include <string>
#include <vector>

/// Seedlings put in numbered places.
namespace pipward::seed {

/// Seedlings of one cross that wait to be planted.
struct Family {
    std::string cross;  ///< code of its goal
    int seedlings = 0;  ///< to be planted, not negative
};

/// In what order families come along the walk.
enum class PlantingOrder {
    together,  ///< each family in one run
    mixed,     ///< families in short plots, in chance order, alike in every block of places
};

/// How seedlings are put in their places.
struct PlantingWish {
    PlantingOrder order = PlantingOrder::together;  ///< of the families
    int plot = 5;    ///< seedlings of a family side by side, where families are mixed
    int blocks = 4;  ///< so many stretches of the walk in which every family takes its share, where mixed
    int check_every = 0;       ///< a check tree at every nth place; 0 for none
    std::uint32_t chance = 1;  ///< the same number gives the same order again
};

/// What one place gets.
struct PlantedPlace {
    std::size_t place = 0;   ///< its number in the walk, from 0
    std::size_t family = 0;  ///< into the families; not used for a check
    bool is_check = false;   ///< whether a check tree stands here instead of a seedling
};

/// Fills `places`, which come in the order of the walk, from the first on, none left out. Shape: one for
/// every seedling and check, by place; fewer where there are too few places: the last of the order are left
/// over. The same wish gives the same planting. A plot is cut short only where its family ends.
std::vector<PlantedPlace> plan_planting(const std::vector<Family>& families, std::size_t places,
                                        const PlantingWish& wish);

/// Places that so many seedlings need with their checks.
std::size_t places_needed(int seedlings, int check_every);

/// The orders of planting as they are typed.
std::span<const Word<PlantingOrder>> words(PlantingOrder);

}  // namespace pipward::seed
