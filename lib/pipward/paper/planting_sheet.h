// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/seed/planted.h"
#include "pipward/value/day.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {

/// What is planted where.
struct PlantingPlace {
    int order = 0;       ///< in the walk, and in the trays
    std::string label;   ///< the tree's own
    std::string cross;   ///< empty for a check tree
    std::string family;  ///< its parents; a check's accession
    std::string row;     ///< its name
    int position = 0;    ///< its number in the row
};

/// Of what is planted, in its order.
std::vector<PlantingPlace> planting_places(const std::vector<seed::Planted>& planted);

/// Cells of a tray; none across: no trays.
struct TrayShape {
    int across = 0;  ///< cells from left to right
    int down = 1;    ///< cells from top to bottom
};

/// A planting to take along.
struct PlantingSheet {
    std::string orchard_name;           ///< may be empty
    std::string block;                  ///< that is planted
    Day day;                            ///< of planting
    std::vector<PlantingPlace> places;  ///< in the order of planting
    TrayShape tray;                     ///< in which seedlings are carried
};

/// A page of HTML 5 in UTF-8: every row with its positions to tick, and the trays as they are set up, the
/// first seedling in the upper left corner. For A4 paper in black and white and for a phone.
std::string planting_sheet_html(const PlantingSheet& sheet, const Wording& wording = in_english);

}  // namespace pipward::paper
