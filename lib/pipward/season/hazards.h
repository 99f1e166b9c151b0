// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <vector>

#include "pipward/value/sentence.h"

/// What can hurt at the season's work, in short.
namespace pipward::season {

/// What can hurt. Sources stand beside the texts in hazards.cpp.
enum class Hazard {
    seeds,              ///< amygdalin in apple and pear seed
    peroxide,           ///< hydrogen peroxide, to disinfect seed
    bleach,             ///< to disinfect seed and tools
    ladders,            ///< falls
    allergy,            ///< pollen and carrier dust
    sprays,             ///< re-entry times, and bees
    fire_blight,        ///< carried from flower to flower in warm, wet bloom
    tools,              ///< diseases carried by blades
    protected_parents,  ///< breeders' rights, patents, contracts
    moving,             ///< permits and diseases of wood, pollen and seed that travel
};

/// What to mind at a hazard.
struct Caution {
    Hazard hazard = Hazard::seeds;  ///< each has one caution
    Sentence about;                 ///< "Ladders."
    Sentence text;                  ///< whole sentences, for people
};

/// Of these hazards, in the order of the list above.
std::vector<Caution> cautions_about(const std::set<Hazard>& hazards);
/// What comes before every caution: labels, authorities, codes and trained people.
Sentence who_comes_first();

}  // namespace pipward::season
