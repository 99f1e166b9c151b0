// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_contest.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "pipward/place/detail/row_noise.h"

namespace pipward::place::detail {
namespace {

constexpr double surely = 0.995;        // probability from which a tree takes its position
constexpr double though_taken = 0.002;  // weight of a taken position, against 1 of a free one

/// The tree that surely stands there, by row and number of the position.
using Holders = std::map<std::pair<int, int>, std::size_t>;

Holders holders_of(std::span<const TakenRow> rows) {
    Holders holders;
    for (const auto& row : rows) {
        for (std::size_t i = 0; i < row.points.size(); ++i) {
            if (row.members[i].certainty >= surely && row.points[i].certainty >= surely) {
                holders[{row.row, row.points[i].number}] = row.members[i].tree;
            }
        }
    }
    return holders;
}

/// How well a tree so far along fits the row's free positions; 1 on average where none is taken.
double room_at(double along, const TakenRow& row, std::size_t tree, const Holders& holders) {
    const auto nearest = static_cast<int>(std::lround((along - row.scale.origin) / row.scale.step));
    double room = 0;
    for (int number = nearest - 2; number <= nearest + 2; ++number) {
        const auto holder = holders.find({row.row, number});
        const bool free = holder == holders.end() || holder->second == tree;
        const double off = along - row.scale.origin - row.scale.step * number;
        room += row.scale.step * error_density(off, row.scale.noise, row.scale.tails) *
                (free ? 1.0 : though_taken);
    }
    return room;
}

struct Contest {
    std::span<const TakenRow> rows;
    const RowNoise& noise;
    Holders holders;

    // Density across, 1 / m, times the room along; 0 for a row that is not there.
    double weight(const RowChoice& choice, std::size_t tree) const {
        const double here = error_density(choice.off, noise.across, noise.tails);
        if (rows.empty()) {
            return here;
        }
        const auto found = std::ranges::lower_bound(rows, choice.row, {}, &TakenRow::row);
        return found == rows.end() || found->row != choice.row
                   ? 0
                   : here * room_at(choice.number, *found, tree, holders);
    }
};

/// Bayes' theorem over the rows it may belong to and none at all.
RowOfPoint weighed(std::span<const RowChoice> choices, std::size_t tree, const Contest& contest) {
    RowOfPoint best{{-1}};
    double all = share_stray / contest.noise.distance;
    double most = -1;
    for (const auto& choice : choices) {
        const double weight = contest.weight(choice, tree);
        all += weight;
        if (weight > most) {
            most = weight;
            best.choice = choice;
        }
    }
    best.certainty = std::max(most, 0.0) / all;
    return best;
}

}  // namespace

std::vector<RowOfPoint> weigh_rows(std::span<const std::vector<RowChoice>> points, const RowNoise& noise,
                                   std::span<const TakenRow> rows) {
    const Contest contest{rows, noise, holders_of(rows)};
    std::vector<RowOfPoint> result;
    for (std::size_t i = 0; i < points.size(); ++i) {
        result.push_back(weighed(points[i], i, contest));
    }
    return result;
}

}  // namespace pipward::place::detail
