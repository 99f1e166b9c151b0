// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <vector>

#include "pipward/value/sentence.h"

/// What can hurt at the season's work, in short.
namespace pipward::season {

enum class Hazard {
    seeds,
    peroxide,
    bleach,
    ladders,
    allergy,
    sprays,
    fire_blight,
    tools,
    protected_parents,
    moving,
};

struct Caution {
    Hazard hazard = Hazard::seeds;
    Sentence about;  ///< "Ladders."
    Sentence text;
};

/// Of these hazards, in the order of the list above.
std::vector<Caution> cautions_about(const std::set<Hazard>& hazards);
/// What comes before every caution: labels, authorities, codes and trained people.
Sentence who_comes_first();

}  // namespace pipward::season
