// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_trace.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "pipward/math/quantile.h"

namespace pipward::place::detail {
namespace {

using math::PlanePoint;

// In steps, the distance of trees in a row.
constexpr double window = 5;          // along: trees that tell where a ridge runs
constexpr double soft = 0.5;          // across: the width of the kernel,
constexpr double soft_rows = 0.22;    // and in row distances: what is less
constexpr double in_line = 0.35;      // across: ridge points of one row,
constexpr double in_line_rows = 0.2;  // and in row distances
constexpr double next_within = 4;     // along: the next tree of a row
constexpr double longest_leap = 14;   // along: a row goes on beyond
constexpr double beside_along = 2.5;  // along: trees beside one another
constexpr double beside_from = 0.6;   // across: nearer it is the same row
constexpr std::size_t fewest = 4;     // trees of a row

PlanePoint right_of(PlanePoint ahead) {
    return left_of(ahead) * -1;
}

/// Metres: about how far the nearest row stands, by what stands beside each tree; at least a step for none.
double usual_distance(std::span<const PlanePoint> trees, const NearTrees& near,
                      const RowDirections& directions, double step) {
    std::vector<double> nearest;
    for (std::size_t i = 0; i < trees.size(); ++i) {
        double least = 1e300;
        for (const auto other : near.of(i)) {
            const auto way = trees[other] - trees[i];
            const double across = std::abs(dot(way, left_of(directions.ahead[i])));
            if (std::abs(dot(way, directions.ahead[i])) < step && across > beside_from * step) {
                least = std::min(least, across);
            }
        }
        if (least < 1e299) {
            nearest.push_back(least);
        }
    }
    return nearest.empty() ? 4 * step : math::median(std::move(nearest));
}

std::vector<PlanePoint> ridge_points(std::span<const PlanePoint> trees, const NearTrees& near,
                                     const RowDirections& directions, double step, double width) {
    std::vector<PlanePoint> ridge(trees.begin(), trees.end());
    for (std::size_t i = 0; i < trees.size(); ++i) {
        const auto ahead = directions.ahead[i];
        const auto right = right_of(ahead);
        for (int turn = 0; turn < 12; ++turn) {
            double weights = 0;
            double sum = 0;
            const auto add = [&](PlanePoint other) {
                const auto way = other - ridge[i];
                const double along = dot(way, ahead) / (window * step);
                const double across = dot(way, right);
                if (along * along < 1) {
                    const double weight =
                        (1 - along * along) * std::exp(-across * across / (2 * width * width));
                    weights += weight;
                    sum += weight * across;
                }
            };
            add(trees[i]);
            for (const auto other : near.of(i)) {
                add(trees[other]);
            }
            const double shift = sum / weights;
            ridge[i] = ridge[i] + right * shift;
            if (std::abs(shift) < 0.002 * step) {
                break;
            }
        }
    }
    return ridge;
}

/// Disjoint sets.
class Groups {
  public:
    explicit Groups(std::size_t size) : parent_(size) { std::iota(parent_.begin(), parent_.end(), 0); }
    std::size_t root(std::size_t i) {
        while (parent_[i] != i) {
            parent_[i] = parent_[parent_[i]];
            i = parent_[i];
        }
        return i;
    }
    void join(std::size_t a, std::size_t b) { parent_[root(a)] = root(b); }

  private:
    std::vector<std::size_t> parent_;
};

PlanePoint mean_ahead(PlanePoint a, PlanePoint b) {
    return math::unit(a + b);
}

using Members = std::vector<std::vector<std::size_t>>;

Members grouped(Groups& groups, std::size_t size) {
    std::map<std::size_t, std::vector<std::size_t>> by_root;
    for (std::size_t i = 0; i < size; ++i) {
        by_root[groups.root(i)].push_back(i);
    }
    Members members;
    for (auto& [root, trees] : by_root) {
        members.push_back(std::move(trees));
    }
    return members;
}

struct Ridges {
    std::span<const PlanePoint> at;
    std::span<const PlanePoint> ahead;
    double step;
    double in_line;  // metres
};

void join_neighbours(const Ridges& ridges, const NearTrees& near, Groups& groups) {
    for (std::size_t i = 0; i < ridges.at.size(); ++i) {
        for (const auto j : near.of(i)) {
            const auto ahead = mean_ahead(ridges.ahead[i], ridges.ahead[j]);
            const auto way = ridges.at[j] - ridges.at[i];
            const double across = std::abs(dot(way, right_of(ahead)));
            if (std::abs(dot(way, ahead)) < next_within * ridges.step && across < ridges.in_line) {
                groups.join(i, j);
            }
        }
    }
}

/// First and last tree along the mean direction.
struct Stretch {
    std::size_t first = 0;
    std::size_t last = 0;
    std::size_t size = 0;
};

Stretch stretch_of(const Ridges& ridges, std::span<const std::size_t> trees) {
    PlanePoint sum{};
    for (const auto tree : trees) {
        sum = sum + ridges.ahead[tree];
    }
    const auto ahead = math::unit(sum);
    const auto along = [&](std::size_t tree) { return dot(ridges.at[tree], ahead); };
    const auto [low, high] = std::ranges::minmax(trees, {}, along);
    return {low, high, trees.size()};
}

/// Beyond a gap the row goes on with the nearest stretch that lies in line, if neither has a nearer one.
void join_over_gaps(const Ridges& ridges, Groups& groups) {
    std::vector<Stretch> stretches;
    for (const auto& trees : grouped(groups, ridges.at.size())) {
        if (trees.size() >= 2) {
            stretches.push_back(stretch_of(ridges, trees));
        }
    }
    const auto length = [&](const Stretch& a, const Stretch& b) {
        const auto ahead = mean_ahead(ridges.ahead[a.last], ridges.ahead[b.first]);
        const auto way = ridges.at[b.first] - ridges.at[a.last];
        const double along = dot(way, ahead);
        const double across = std::abs(dot(way, right_of(ahead)));
        const bool goes_on =
            along > 0 && along < longest_leap * ridges.step && across < ridges.in_line + 0.03 * along;
        return goes_on ? along : 1e300;
    };
    std::vector<std::size_t> after(stretches.size(), stretches.size());
    std::vector<std::size_t> before(stretches.size(), stretches.size());
    for (std::size_t a = 0; a < stretches.size(); ++a) {
        for (std::size_t b = 0; b < stretches.size(); ++b) {
            const double here = a == b ? 1e300 : length(stretches[a], stretches[b]);
            if (here < 1e299) {
                if (after[a] == stretches.size() || here < length(stretches[a], stretches[after[a]])) {
                    after[a] = b;
                }
                if (before[b] == stretches.size() || here < length(stretches[before[b]], stretches[b])) {
                    before[b] = a;
                }
            }
        }
    }
    for (std::size_t a = 0; a < stretches.size(); ++a) {
        if (after[a] < stretches.size() && before[after[a]] == a) {
            groups.join(stretches[a].last, stretches[after[a]].first);
        }
    }
}

/// What stands beside a row, by the votes of its trees.
struct Beside {
    int row = -1;
    double gap = 0;    // metres, the median
    double share = 0;  // of the trees that have anything there
};

/// To the right of each row with `side` 1, to the left with -1.
std::vector<Beside> beside(const Ridges& ridges, const NearTrees& near, std::span<const int> row_of,
                           std::size_t rows, double side) {
    std::vector<std::map<int, std::vector<double>>> votes(rows);
    for (std::size_t i = 0; i < ridges.at.size(); ++i) {
        if (row_of[i] < 0) {
            continue;
        }
        const auto right = right_of(ridges.ahead[i]) * side;
        double nearest = 1e300;
        int row = -1;
        for (const auto j : near.of(i)) {
            const auto way = ridges.at[j] - ridges.at[i];
            const double across = dot(way, right);
            if (row_of[j] >= 0 && row_of[j] != row_of[i] && across > 0 && across < nearest &&
                std::abs(dot(way, ridges.ahead[i])) < beside_along * ridges.step) {
                nearest = across;
                row = row_of[j];
            }
        }
        if (row >= 0) {
            votes[static_cast<std::size_t>(row_of[i])][row].push_back(nearest);
        }
    }
    std::vector<Beside> result;
    for (auto& one : votes) {
        Beside best;
        std::size_t all = 0;
        std::size_t most = 0;
        for (const auto& [row, gaps] : one) {
            all += gaps.size();
            if (gaps.size() > most) {
                most = gaps.size();
                best = {row, math::median(gaps), 0};
            }
        }
        best.share = all == 0 ? 0 : static_cast<double>(most) / static_cast<double>(all);
        result.push_back(best);
    }
    return result;
}

std::vector<int> rows_of(const Members& members, std::size_t trees) {
    std::vector<int> row_of(trees, -1);
    for (std::size_t row = 0; row < members.size(); ++row) {
        for (const auto tree : members[row]) {
            row_of[tree] = static_cast<int>(row);
        }
    }
    return row_of;
}

/// Few trees in line may be strays: less than a fifth of what most rows have, near others.
void drop_strays(Members& members) {
    std::vector<std::size_t> sizes;
    for (const auto& row : members) {
        sizes.push_back(row.size());
    }
    const auto few = std::max(fewest, math::quantile(sizes, 0.75).value_or(0) / 8);
    std::erase_if(members, [few](const auto& row) { return row.size() < few; });
}

constexpr double clear_vote = 0.7;

}  // namespace

RowTrace trace_rows(std::span<const PlanePoint> trees, const NearTrees& near, const RowDirections& directions,
                    double step) {
    RowTrace trace;
    const double distance = usual_distance(trees, near, directions, step);
    const auto points =
        ridge_points(trees, near, directions, step, std::min(soft * step, soft_rows * distance));
    const Ridges ridges{points, directions.ahead, step, std::min(in_line * step, in_line_rows * distance)};
    Groups groups(trees.size());
    join_neighbours(ridges, near, groups);
    join_over_gaps(ridges, groups);
    auto members = grouped(groups, trees.size());
    std::erase_if(members, [](const auto& row) { return row.size() < 3; });
    drop_strays(members);
    trace.row_of.assign(trees.size(), -1);
    if (members.empty()) {
        trace.trouble = TraceTrouble::no_rows;
        return trace;
    }
    const auto row_of = rows_of(members, trees.size());
    const auto right = beside(ridges, near, row_of, members.size(), 1);
    const auto left = beside(ridges, near, row_of, members.size(), -1);
    // The first row is the one with none on its left; each next one must know the one before.
    int first = -1;
    for (std::size_t row = 0; row < members.size(); ++row) {
        if (left[row].row < 0) {
            trace.trouble = first < 0 ? trace.trouble : TraceTrouble::in_parts;
            first = static_cast<int>(row);
        }
    }
    std::vector<int> order;
    for (int row = first; row >= 0 && order.size() < members.size();
         row = right[static_cast<std::size_t>(row)].row) {
        order.push_back(row);
        const auto& next = right[static_cast<std::size_t>(row)];
        if (next.row >= 0) {
            const auto& back = left[static_cast<std::size_t>(next.row)];
            if (back.row != row || next.share < clear_vote || back.share < clear_vote) {
                trace.trouble = TraceTrouble::crossed;
                break;
            }
            trace.gaps.push_back((next.gap + back.gap) / 2);
        }
    }
    if (trace.trouble == TraceTrouble::none && order.size() != members.size()) {
        trace.trouble = TraceTrouble::crossed;
    }
    if (trace.trouble != TraceTrouble::none) {
        return trace;
    }
    for (const int row : order) {
        auto& in_row = members[static_cast<std::size_t>(row)];
        PlanePoint sum{};
        std::vector<PlanePoint> places;
        for (const auto tree : in_row) {
            sum = sum + directions.ahead[tree];
            places.push_back(trees[tree]);
        }
        RowCurve curve(places, math::unit(sum), 9 * step);
        for (const auto tree : in_row) {
            trace.row_of[tree] = static_cast<int>(trace.rows.size());
        }
        std::ranges::sort(in_row, {}, [&](std::size_t tree) { return curve.foot(trees[tree]).along; });
        trace.rows.push_back({std::move(in_row), std::move(curve)});
    }
    // By the lines now, which know better than single trees.
    for (std::size_t row = 0; row + 1 < trace.rows.size(); ++row) {
        std::vector<double> gaps;
        for (const auto tree : trace.rows[row].trees) {
            const auto foot = trace.rows[row].curve.foot(trees[tree]);
            gaps.push_back(-trace.rows[row + 1].curve.foot(trace.rows[row].curve.at(foot.along)).off);
        }
        trace.gaps[row] = math::median(std::move(gaps));
    }
    return trace;
}

}  // namespace pipward::place::detail
