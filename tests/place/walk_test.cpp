// SPDX-License-Identifier: MIT
#include "pipward/place/walk.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "pipward/place/detail/visit_order.h"
#include "pipward/place/detail/walk_ground.h"
#include "place/made_trees.h"

namespace pipward::place {
namespace {

constexpr double row_distance = 4;
constexpr double spacing = 3;
constexpr int positions = 10;

// Rows to the north of each other, positions to the east, in plain metres: no coordinate system of the earth.
Orchard made_block(int rows, const std::string& crs = "") {
    Orchard orchard;
    orchard.crs = crs;
    for (int row = 1; row <= rows; ++row) {
        for (int position = 1; position <= positions; ++position) {
            auto tree = testing::made_tree(fmt::format("{}-{}", row, position), "A", "B", std::to_string(row),
                                           position);
            tree.at = MapPoint{500000 + spacing * position, 5000000 + row_distance * row, {}};
            orchard.trees.push_back(tree);
        }
    }
    return orchard;
}

std::uint32_t numbered(const Orchard& orchard, int row, int position) {
    const auto label = fmt::format("{}-{}", row, position);
    return static_cast<std::uint32_t>(std::ranges::find(orchard.trees, label, &Tree::label) -
                                      orchard.trees.begin());
}

WalkEnd at_tree(const Orchard& orchard, int row, int position) {
    const auto tree = numbered(orchard, row, position);
    return {*orchard.trees[tree].at, tree};
}

double metres_between(const Orchard& orchard, int row, int position, int other_row, int other_position,
                      const BarrierRules& rules = {}) {
    WalkWish wish;
    wish.trees = {numbered(orchard, other_row, other_position)};
    wish.start = at_tree(orchard, row, position);
    wish.rules = rules;
    return plan_walk(orchard, wish).metres;
}

TEST(Walk, CrossesAnAlleyStraight) {
    // One stands 1 m from the trunks of rows 4 m apart.
    EXPECT_NEAR(metres_between(made_block(3), 1, 5, 2, 5), row_distance - 2, 1e-9);
    EXPECT_NEAR(metres_between(made_block(3), 1, 5, 2, 7), std::hypot(row_distance - 2, 2 * spacing), 1e-9);
    EXPECT_NEAR(metres_between(made_block(3), 1, 2, 1, 6), 4 * spacing, 1e-9);
}

TEST(Walk, GoesRoundTheEndOfARowThatIsInBetween) {
    // From the north side of row 1 along the alley to the west end of row 2, round it, and back to row 3: the
    // corners lie 1 m beyond the end and 1 m beside the row.
    const double to_corner = std::hypot(2 * spacing + 1, row_distance - 2);
    EXPECT_NEAR(metres_between(made_block(3), 1, 3, 3, 3), 2 * to_corner + 2, 1e-9);
}

TEST(Walk, TakesNoRemovedTreeForAGapButAStretchWithoutTreesWhereAllowed) {
    auto orchard = made_block(3);
    orchard.trees[numbered(orchard, 2, 5)].removed_on = make_day({2020, 11, 1});
    const double round = metres_between(orchard, 1, 5, 3, 5);
    EXPECT_NEAR(round, metres_between(made_block(3), 1, 5, 3, 5), 1e-9);
    std::erase_if(orchard.trees, [](const Tree& tree) {
        return tree.label == "2-4" || tree.label == "2-5" || tree.label == "2-6";
    });
    EXPECT_NEAR(metres_between(orchard, 1, 5, 3, 5), round, 1e-9);
    EXPECT_NEAR(metres_between(orchard, 1, 5, 3, 5, {Metres{1}, Metres{13}}), round, 1e-9);
    EXPECT_NEAR(metres_between(orchard, 1, 5, 3, 5, {Metres{1}, Metres{9}}), 2 * row_distance - 2, 1e-9);
}

TEST(Walk, WorksBothRowsOfANarrowAlleyFromItsMiddle) {
    auto orchard = made_block(3);
    for (auto& tree : orchard.trees) {
        tree.at->y = 5000000 + 3.0 * std::stoi(*tree.row);
    }
    EXPECT_NEAR(metres_between(orchard, 1, 5, 2, 5), 0, 1e-9);
    EXPECT_NEAR(metres_between(orchard, 1, 5, 2, 7), 2 * spacing, 1e-9);
    // With half a metre of room the alley is no narrow one: to cross it costs what it costs on foot.
    EXPECT_NEAR(metres_between(orchard, 1, 5, 2, 5, {Metres{0.5}, Metres{0}}), 2, 1e-9);
}

TEST(Walk, DoesNotWalkThroughARowBecauseAnUnnumberedTreeStandsBesideIt) {
    auto orchard = made_block(3);
    const BarrierRules rules{Metres{1}, Metres{3.2}};
    const double round = metres_between(orchard, 1, 5, 3, 5, rules);
    auto beside = orchard.trees[numbered(orchard, 2, 5)];
    beside.label = "beside";
    beside.position = std::nullopt;
    beside.at = MapPoint{beside.at->x + 1.5, beside.at->y + 1.9, {}};
    orchard.trees.push_back(beside);
    EXPECT_NEAR(metres_between(orchard, 1, 5, 3, 5, rules), round, 1e-9);
    EXPECT_GT(round, 2 * row_distance);
}

TEST(Walk, KnowsDrawnRowsWithoutTrees) {
    auto orchard = made_block(3);
    std::erase_if(orchard.trees, [](const Tree& tree) { return tree.row == "2"; });
    const double open = metres_between(orchard, 1, 5, 3, 5);
    TreeRow drawn;
    drawn.block = "B";
    drawn.name = "2";
    drawn.line = {{500000 + spacing, 5000000 + 2 * row_distance, {}},
                  {500000 + spacing * positions, 5000000 + 2 * row_distance, {}}};
    orchard.rows.push_back(drawn);
    EXPECT_NEAR(open, 2 * row_distance - 2, 1e-9);
    EXPECT_NEAR(metres_between(orchard, 1, 5, 3, 5), metres_between(made_block(3), 1, 5, 3, 5), 1e-9);
    // Where gaps can be walked through, so can a row that is nothing but one; its alley is named all the
    // same.
    EXPECT_NEAR(metres_between(orchard, 1, 5, 3, 5, {Metres{1}, Metres{9}}), open, 1e-9);
    WalkWish wish;
    wish.trees = {numbered(orchard, 1, 5)};
    wish.start = WalkEnd{{500000 + 5 * spacing, 5000000 + 1.5 * row_distance, {}}, {}};
    EXPECT_EQ(plan_walk(orchard, wish).legs[0].alley.text(), "between rows 1 and 2");
}

TEST(Walk, GoesStraightWhereRowsBarNothing) {
    const auto orchard = made_block(3);
    WalkWish wish;
    wish.trees = {numbered(orchard, 3, 5)};
    wish.start = at_tree(orchard, 1, 5);
    wish.rows_bar = false;
    EXPECT_NEAR(plan_walk(orchard, wish).metres, 2 * row_distance, 1e-9);
}

double nearest_to_rows(const Orchard& orchard, const std::vector<MapPoint>& line, int rows) {
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < line.size(); ++i) {
        for (int row = 1; row <= rows; ++row) {
            const auto& first = *orchard.trees[numbered(orchard, row, 1)].at;
            const auto& last = *orchard.trees[numbered(orchard, row, positions)].at;
            const math::Line way({{line[i - 1].x, line[i - 1].y}, {line[i].x, line[i].y}});
            nearest = std::min(nearest, way.distance(math::Line({{first.x, first.y}, {last.x, last.y}})));
        }
    }
    return nearest;
}

WalkWish scattered_wish(const Orchard& orchard, std::size_t count) {
    WalkWish wish;
    for (std::size_t i = 0; wish.trees.size() < count; ++i) {
        const auto tree = static_cast<std::uint32_t>((i * 37 + 11) % orchard.trees.size());
        if (std::ranges::find(wish.trees, tree) == wish.trees.end()) {
            wish.trees.push_back(tree);
        }
    }
    wish.start = WalkEnd{{499990, 5000000, {}}, {}};
    return wish;
}

TEST(Walk, NeverCrossesARow) {
    constexpr int rows = 8;
    const auto orchard = made_block(rows);
    for (const std::size_t count : {5U, 12U, 40U}) {
        auto wish = scattered_wish(orchard, count);
        wish.end = wish.start;
        const auto walk = plan_walk(orchard, wish);
        EXPECT_EQ(walk.legs.size(), count + 1);
        EXPECT_EQ(walk.is_shortest, count <= detail::exact_stops);
        for (const auto& leg : walk.legs) {
            EXPECT_FALSE(leg.through_rows);
            EXPECT_GE(nearest_to_rows(orchard, leg.line, rows), 0.6);
        }
    }
}

TEST(Walk, BeginsEveryLegWhereTheLastOneEnded) {
    const auto orchard = made_block(6);
    auto wish = scattered_wish(orchard, 20);
    wish.end = wish.start;
    const auto walk = plan_walk(orchard, wish);
    double metres = 0;
    for (std::size_t i = 0; i < walk.legs.size(); ++i) {
        const auto& line = walk.legs[i].line;
        ASSERT_GE(line.size(), 2U);
        const auto& before = i == 0 ? walk.legs.back().line.back() : walk.legs[i - 1].line.back();
        EXPECT_NEAR(line.front().x, before.x, 1e-6);
        EXPECT_NEAR(line.front().y, before.y, 1e-6);
        for (std::size_t k = 1; k < line.size(); ++k) {
            metres += std::hypot(line[k].x - line[k - 1].x, line[k].y - line[k - 1].y);
        }
    }
    EXPECT_NEAR(metres, walk.metres, 1e-6);
}

// The best of all orders and sides, by the distances of the ground.
double by_brute_force(const Orchard& orchard, const std::vector<std::uint32_t>& trees,
                      math::PlanePoint start) {
    const MetrePlane plane("", {0, 0, {}});
    const auto lines = tree_lines(orchard, plane);
    const auto barriers = row_barriers(lines, {});
    std::vector<math::PlanePoint> points{start};
    for (const auto tree : trees) {
        const auto row = static_cast<std::uint32_t>(std::stoi(*orchard.trees[tree].row) - 1);
        const auto sides = sides_of(barriers, row, plane(*orchard.trees[tree].at));
        points.insert(points.end(), {sides.left, sides.right});
    }
    const auto distances = detail::WalkGround(points, barriers.all).distances();
    std::vector<std::uint32_t> order(trees.size());
    std::iota(order.begin(), order.end(), 0U);
    double shortest = std::numeric_limits<double>::infinity();
    do {
        for (std::uint32_t sides = 0; sides < 1U << trees.size(); ++sides) {
            std::uint32_t at = 0;
            double metres = 0;
            for (const auto stop : order) {
                const std::uint32_t place = 1 + 2 * stop + (sides >> stop & 1U);
                metres += distances(at, place);
                at = place;
            }
            shortest = std::min(shortest, metres);
        }
    } while (std::next_permutation(order.begin(), order.end()));
    return shortest;
}

TEST(Walk, ToFewTreesIsTheShortestOfAllOrdersAndSides) {
    const auto orchard = made_block(5);
    for (const std::size_t count : {1U, 2U, 4U, 6U}) {
        const auto wish = scattered_wish(orchard, count);
        EXPECT_NEAR(plan_walk(orchard, wish).metres, by_brute_force(orchard, wish.trees, {499990, 5000000}),
                    1e-6)
            << count;
    }
}

TEST(Walk, ThroughAWholeBlockGoesUpAndDownTheAlleys) {
    // Every tree of four rows can be reached from two alleys, each walked once.
    const auto orchard = made_block(4);
    WalkWish wish;
    for (std::uint32_t tree = 0; tree < orchard.trees.size(); ++tree) {
        wish.trees.push_back(tree);
    }
    const auto walk = plan_walk(orchard, wish);
    const double row_length = (positions - 1) * spacing;
    // Zigzag between the two rows of an alley: at the most 2 m across a tree pair and 3 m along.
    EXPECT_LT(walk.metres, 2 * (row_length + positions * (row_distance - 2)) + 3 * row_distance + 4);
    EXPECT_GT(walk.metres, 2 * row_length);
}

TEST(Walk, TellsTheSideAndTheAlley) {
    const auto orchard = made_block(2);
    WalkWish wish;
    wish.trees = {numbered(orchard, 1, 5)};
    wish.start = at_tree(orchard, 2, 5);
    const auto inner = plan_walk(orchard, wish);
    EXPECT_EQ(inner.legs[0].side, "north");
    EXPECT_EQ(inner.legs[0].alley, "between rows 1 and 2");
    wish.start = WalkEnd{{500015, 5000000, {}}, {}};
    const auto outer = plan_walk(orchard, wish);
    EXPECT_EQ(outer.legs[0].side, "south");
    EXPECT_EQ(outer.legs[0].alley, "outside of row 1");
}

TEST(Walk, TellsTheAlleyAtTheEndOfRowsThatBeginOneAfterTheOther) {
    auto orchard = made_block(3);
    for (auto& tree : orchard.trees) {
        tree.at->x += tree.row == "2" ? 1.5 : 0.0;
    }
    WalkWish wish;
    wish.trees = {numbered(orchard, 1, 1)};
    wish.start = at_tree(orchard, 2, 1);
    EXPECT_EQ(plan_walk(orchard, wish).legs[0].alley, "between rows 1 and 2");
}

TEST(Walk, IsAsLongInDegreesAsInMetres) {
    const auto metric = made_block(6, "EPSG:25832");
    auto degrees = metric;
    degrees.crs = "EPSG:4326";
    const ToEarth to_earth(metric.crs);
    for (auto& tree : degrees.trees) {
        const auto place = to_earth(*tree.at);
        tree.at = MapPoint{place->lon, place->lat, {}};
    }
    WalkWish wish;
    wish.trees = {3, 17, 25, 44, 58};
    const auto one = plan_walk(metric, wish);
    const auto other = plan_walk(degrees, wish);
    EXPECT_NEAR(one.metres, other.metres, 1e-3);
    EXPECT_EQ(one.legs.size(), other.legs.size());
    EXPECT_TRUE(one.legs.front().line.empty());  // no start: the walk begins at its first tree
}

TEST(Walk, KeepsItsAlleysOpenWhereRowsStandClose) {
    auto orchard = made_block(4);
    for (auto& tree : orchard.trees) {
        tree.at->y = 5000000 + 0.25 * (tree.at->y - 5000000);  // rows 1 m apart
    }
    auto wish = scattered_wish(orchard, 10);
    for (const auto& leg : plan_walk(orchard, wish).legs) {
        EXPECT_FALSE(leg.through_rows);
    }
}

TEST(Walk, TakesTreesWithoutARowFromAnySide) {
    auto orchard = made_block(1);
    orchard.trees[4].row.reset();
    orchard.trees[4].at = MapPoint{500100, 5000000, {}};
    WalkWish wish;
    wish.trees = {4};
    wish.start = WalkEnd{{500100, 4999990, {}}, {}};
    const auto walk = plan_walk(orchard, wish);
    EXPECT_NEAR(walk.metres, 10, 1e-9);
    EXPECT_EQ(walk.legs[0].side, "");
}

TEST(Walk, SaysWhenARowWithoutAWayRoundIsInTheWay) {
    // A hedge all round a single tree: one row that closes upon itself.
    Orchard orchard;
    for (int i = 0; i <= 24; ++i) {
        auto tree = testing::made_tree(fmt::format("ring-{}", i), "A", "B", "1", i + 1);
        const double angle = 2 * 3.14159265358979323846 * i / 24;
        tree.at = MapPoint{20 * std::cos(angle), 20 * std::sin(angle), {}};
        orchard.trees.push_back(tree);
    }
    auto inside = testing::made_tree("inside", "A", "B", "2", 1);
    inside.row.reset();
    inside.at = MapPoint{0, 0, {}};
    orchard.trees.push_back(inside);
    WalkWish wish;
    wish.trees = {25};
    wish.start = WalkEnd{{60, 0, {}}, {}};
    const auto walk = plan_walk(orchard, wish);
    EXPECT_TRUE(walk.legs[0].through_rows);
    EXPECT_NEAR(walk.metres, 60, 1e-6);
}

TEST(Walk, ToNothingIsEmpty) {
    EXPECT_TRUE(plan_walk(made_block(2), {}).legs.empty());
}

TEST(MetrePlane, KeepsDistancesAndComesBack) {
    const MetrePlane plane("EPSG:4326", {9.3, 48.13, {}});
    const MapPoint there{9.3071, 48.1349, {}};
    const auto way = way_between({9.3, 48.13}, {there.x, there.y});
    EXPECT_NEAR(length(plane(there)), way.distance.value, 1e-6);
    EXPECT_NEAR(bearing_deg(plane(there)), way.bearing_deg, 1e-9);
    const auto again = plane.back(plane(there));
    EXPECT_NEAR(again.x, there.x, 1e-11);
    EXPECT_NEAR(again.y, there.y, 1e-11);
    const MapPoint other{9.3069, 48.1351, {}};
    EXPECT_NEAR(length(plane(other) - plane(there)),
                way_between({there.x, there.y}, {other.x, other.y}).distance.value, 1e-4);
}

}  // namespace
}  // namespace pipward::place
