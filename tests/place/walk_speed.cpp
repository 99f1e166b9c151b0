// SPDX-License-Identifier: MIT
// walk_speed: how long it takes to plan walks along the alleys of a made-up orchard and to ask which trees
// are near, printed on demand with the length of each walk.
#include <fmt/format.h>

#include <cmath>
#include <cstdint>
#include <ctime>

#include "pipward/place/detail/walk_ground.h"
#include "pipward/place/near_spots.h"
#include "pipward/place/walk.h"

namespace pipward::place {
namespace {

// Of the processor, so that other work on the machine does not count.
double milliseconds_since(std::clock_t start) {
    return 1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

// Blocks of 40 rows of 125 trees beside each other; rows are a little bent, so that no two ways are equal.
Orchard made_rows(int trees) {
    Orchard orchard;
    orchard.crs = "EPSG:25832";
    for (int i = 0; i < trees; ++i) {
        const int block = i / 5000;
        const int row = i / 125 % 40;
        const int position = i % 125;
        Tree tree;
        tree.label = fmt::format("{}-{}-{}", block, row, position);
        tree.block = fmt::format("Block {}", block);
        tree.row = std::to_string(row);
        tree.position = position + 1;
        const double bend = 1.5 * std::sin(position / 20.0 + block) + 0.1 * std::sin(i * 12.9898);
        tree.at = MapPoint{500000 + 400.0 * (block % 5) + 3.0 * position + 0.37 * row,
                           5300000 + 180.0 * (block / 5) + 4.0 * row + bend,
                           {}};
        orchard.trees.push_back(std::move(tree));
    }
    return orchard;
}

void walk(const Orchard& orchard, int stops) {
    WalkWish wish;
    for (int i = 0; i < stops; ++i) {
        wish.trees.push_back(static_cast<std::uint32_t>(i * 5003LL % 10000));
    }
    const auto start = std::clock();
    const auto walked = plan_walk(orchard, wish);
    fmt::print("a walk of {:4} stops among {} trees: {:8.0f} ms, {:.9f} m\n", stops, orchard.trees.size(),
               milliseconds_since(start), walked.metres);
}

// Only the ground: where the walk's geometry is.
void ground(const Orchard& orchard, int stops) {
    const MetrePlane plane(orchard.crs, *orchard.trees.front().at);
    const auto lines = tree_lines(orchard, plane);
    auto start = std::clock();
    const auto barriers = row_barriers(lines, {});
    fmt::print("{} rows as barriers: {:.1f} ms\n", barriers.all.size(), milliseconds_since(start));
    std::vector<math::PlanePoint> places;
    for (int i = 0; i < stops; ++i) {
        const auto& tree = orchard.trees[static_cast<std::size_t>(i * 5003LL) % orchard.trees.size()];
        places.push_back(plane({tree.at->x, tree.at->y + 2, {}}));
    }
    start = std::clock();
    const detail::WalkGround walked(places, barriers.all);
    const double built = milliseconds_since(start);
    int open = 0;
    for (std::uint32_t i = 0; i < places.size(); ++i) {
        open += walked.is_open(i) ? 1 : 0;
    }
    fmt::print("the ground between them with {} places, {} open: {:.0f} ms\n", stops, open, built);
}

void near(const Orchard& orchard, int questions) {
    const auto start = std::clock();
    double sum = 0;
    for (int i = 0; i < questions; ++i) {
        auto at = *orchard.trees[static_cast<std::size_t>(i) * 7919 % orchard.trees.size()].at;
        at.y += 1.7;
        sum += near_spots(orchard, {at}).spots.front().probability;
    }
    fmt::print("near trees of {}: {:.2f} ms a question, mean probability {:.12f}\n", orchard.trees.size(),
               milliseconds_since(start) / questions, sum / questions);
}

}  // namespace
}  // namespace pipward::place

int main() {
    using namespace pipward::place;
    const auto small = made_rows(10'000);
    ground(small, 100);
    ground(small, 500);
    ground(small, 1000);
    walk(small, 100);
    walk(small, 500);
    near(made_rows(100'000), 50);
    return 0;
}
