// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_contest.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "pipward/math/distributions.h"

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
        room += row.scale.step * math::normal_density(off, row.scale.noise) * (free ? 1.0 : though_taken);
    }
    return room;
}

struct Contest {
    std::span<const TakenRow> rows;
    const FittedRows& fit;
    Holders holders;

    // Density across, 1 / m, times the room along; 0 for a row that is not there.
    double weight(int row, double off, double along, std::size_t tree) const {
        const auto found = std::ranges::lower_bound(rows, row, {}, &TakenRow::row);
        if (!std::isfinite(off) || found == rows.end() || found->row != row) {
            return 0;
        }
        return math::normal_density(off, fit.noise) * room_at(along, *found, tree, holders);
    }
};

/// Bayes' theorem over the row it was in, the two beside that one, and none at all.
RowOfPoint weighed(const RowPoint& point, std::size_t tree, const Contest& contest) {
    const auto& was = contest.fit.points[tree];
    RowOfPoint best = was;
    double all = share_stray / contest.fit.distance;
    double most = -1;
    for (const auto& [row, off] : {std::pair{was.row, was.off}, std::pair{was.row - 1, was.before},
                                   std::pair{was.row + 1, was.after}}) {
        const double weight = contest.weight(row, off, point.along, tree);
        all += weight;
        if (weight > most) {
            most = weight;
            best.row = row;
            best.off = off;
        }
    }
    best.certainty = std::max(most, 0.0) / all;
    return best;
}

}  // namespace

std::vector<RowOfPoint> weigh_rows(std::span<const RowPoint> points, const FittedRows& fit,
                                   std::span<const TakenRow> rows) {
    const Contest contest{rows, fit, holders_of(rows)};
    std::vector<RowOfPoint> result;
    for (std::size_t i = 0; i < points.size(); ++i) {
        result.push_back(weighed(points[i], i, contest));
    }
    return result;
}

}  // namespace pipward::place::detail
