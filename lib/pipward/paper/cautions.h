// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>
#include <vector>

#include "pipward/paper/speech.h"

/// What can hurt at the work of a sheet, told once and shortly on it.
namespace pipward::paper {

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

/// A section of a page with them.
std::string cautions_html(const std::set<Hazard>& hazards, const Speech& speech);

}  // namespace pipward::paper
