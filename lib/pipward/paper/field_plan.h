// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/math/plane_point.h"
#include "pipward/paper/page.h"
#include "pipward/record/orchard.h"

/// Which scale a map has, and on how many pages it stands.
namespace pipward::paper {

/// A tree of a map.
struct MapTree {
    math::PlanePoint at;  ///< metres on the map's plane
    std::string number;   ///< what stands beside the mark: its position in the row, else its label
    TreePurpose purpose = TreePurpose::other;  ///< tells its mark
    bool removed = false;                      ///< does not stand on the day of the map
    std::string block{};                       ///< empty where it stands in none
};

/// A row of a map.
struct MapRow {
    std::string name;                    ///< at both of its ends
    std::vector<math::PlanePoint> line;  ///< at least two points, in the direction of the numbering
    std::string block{};                 ///< empty where it lies in none
};

/// What a map shows, on a plane in metres.
struct FieldMap {
    std::string title;           ///< at the head of every page
    std::string made_on;         ///< the day, as it is to be read
    bool true_north = true;      ///< false: the plane's north is the book's own grid's
    double turned_deg = 0;       ///< clockwise, by which the map is turned on the page
    std::vector<MapTree> trees;  ///< at least one
    std::vector<MapRow> rows;    ///< may be none
};

/// The map's ground turned as it lies on the page: metres to the right and up.
struct PageGround {
    double right = 0;  ///< metres on the ground
    double up = 0;     ///< metres on the ground
};
/// `turned_deg` clockwise, about the plane's origin.
PageGround on_page(math::PlanePoint spot, double turned_deg);

/// A page of a map.
struct MapWindow {
    PageSize page;          ///< its size, on the side that serves better
    int denominator = 500;  ///< its scale is 1 : so much
    PageGround middle;      ///< the ground in the middle of it
    std::string block{};    ///< whose page it is, where every block has pages of its own
};

/// Pages and their scales.
struct FieldPlan {
    std::vector<MapWindow> windows;       ///< from the upper left, block by block
    std::optional<MapWindow> overview{};  ///< a first page that shows all; absent where one page does anyway
    bool is_legible = true;               ///< false: trees stand closer on paper than marks are large
};

/// Where the map lies on a page of this size; title and legend stand around it.
Box map_box(const PageSize& page);
/// The part of the map box that windows tile; the rest overlaps the neighbours and has room for row names.
Box map_core(const PageSize& page);

/// The distance in metres that nine standing trees in ten keep from their nearest neighbour at least; endless
/// for none.
double usual_spacing(std::span<const MapTree> trees);

/// The largest of the round scales (1:100, 1:200, 1:250, 1:500 ...) at which everything stands on one page;
/// where neighbours would come closer than 3 mm there, several pages of the smallest scale that keeps them
/// apart. Where blocks lie so far from each other that one page would have less than two thirds of the scale
/// that a block needs, every block has pages of its own. Each page lies on the side that serves better.
/// `denominator` asks for a scale of one's own. Nothing where the trees lie too far apart for any scale, or
/// more than 200 pages would be needed.
std::optional<FieldPlan> plan_map(const FieldMap& map, const PageSize& paper, std::optional<int> denominator);

/// The same; throws Error (input) where no plan will do.
FieldPlan planned_map(const FieldMap& map, const PageSize& paper, std::optional<int> denominator);

/// The degrees clockwise to turn a map by so that its rows lie across the page, -90 to 90: the mean direction
/// of rows without a sense, longer ones weighing more (Mardia & Jupp 2000, Directional Statistics, 9.2). 0
/// for none.
double turn_to_rows_deg(std::span<const MapRow> rows);

}  // namespace pipward::paper
