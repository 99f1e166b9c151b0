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
    int order = 0;  ///< in the walk, and in the trays
    std::string label;
    std::string cross;   ///< empty for a check tree
    std::string family;  ///< its parents; a check's accession
    std::string row;
    int position = 0;
};

/// Of what is planted, in its order.
std::vector<PlantingPlace> planting_places(const std::vector<seed::Planted>& planted);

/// Cells of a tray; none across: no trays.
struct TrayShape {
    int across = 0;
    int down = 1;
};

/// A planting to take along.
struct PlantingSheet {
    std::string orchard_name;
    std::string block;
    Day day;
    std::vector<PlantingPlace> places;  ///< in the order of planting
    TrayShape tray;
};

/// A page of HTML 5 in UTF-8: every row with its positions to tick, and the trays as they are set up, the
/// first seedling in the upper left corner. For A4 paper in black and white and for a phone.
std::string planting_sheet_html(const PlantingSheet& sheet, const Wording& wording = in_english);

}  // namespace pipward::paper
