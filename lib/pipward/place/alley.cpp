// SPDX-License-Identifier: MIT
#include "pipward/place/alley.h"

#include <limits>

namespace pipward::place {
namespace {

constexpr double widest_alley = 12.0;  // metres: beyond that it is a lane or a field
constexpr double stagger = 2.0;        // metres: rows side by side need not begin on one line

}  // namespace

Sentence alley_words(std::span<const TreeLine> lines, std::span<const Barrier> barriers,
                     const Barrier& barrier, PlanePoint tree, PlanePoint stand) {
    const auto across = tree + unit(stand - tree) * widest_alley;
    const TreeLine* facing = nullptr;
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& other : barriers) {
        if (other.line == barrier.line) {
            continue;
        }
        for (const auto& piece : pieces_of(other)) {
            const double off = distance_to(tree, piece.a, piece.b);
            if (distance_between(stand, across, piece.a, piece.b) < stagger && off < nearest) {
                nearest = off;
                facing = &lines[other.line];
            }
        }
    }
    const auto& own = lines[barrier.line].name;
    if (facing == nullptr) {
        return say("outside of row {}", own.second);
    }
    return facing->name.first == own.first ? say("between rows {} and {}", own.second, facing->name.second)
                                           : say("between row {} and row {} of block {}", own.second,
                                                 facing->name.second, facing->name.first);
}

}  // namespace pipward::place
