// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_reading.h"

#include <algorithm>
#include <cmath>

#include "pipward/math/quantile.h"
#include "pipward/place/detail/near_trees.h"
#include "pipward/place/detail/row_direction.h"
#include "pipward/place/detail/row_even.h"

namespace pipward::place::detail {
namespace {

std::vector<double> alongs_of(const TracedRow& row, std::span<const math::PlanePoint> plane) {
    std::vector<double> along;
    for (const auto tree : row.trees) {
        along.push_back(row.curve.foot(plane[tree]).along);
    }
    return along;
}

/// Two rows that were taken for one: many of its trees stand far off its line.
bool has_merged_rows(const RowReading& rows, std::span<const math::PlanePoint> plane) {
    return std::ranges::any_of(rows.trace.rows, [&](const TracedRow& row) {
        const auto far = std::ranges::count_if(row.trees, [&](std::size_t tree) {
            return std::abs(row.curve.foot(plane[tree]).off) > 0.3 * rows.noise.distance;
        });
        return 8 * far > std::ssize(row.trees);
    });
}

double across_noise(std::span<const math::PlanePoint> plane, const RowTrace& trace,
                    std::vector<double>& offs) {
    for (const auto& row : trace.rows) {
        const auto n = static_cast<double>(row.trees.size());
        const double used = std::min(static_cast<double>(row.curve.coefficients()), n - 1);
        for (const auto tree : row.trees) {
            offs.push_back(row.curve.foot(plane[tree]).off / std::sqrt(1 - used / n));
        }
    }
    return std::max(median_noise(offs), 0.01);
}

// Nearer to a square than that, nothing but its bearing tells a row from a line across.
constexpr double square_below = 1.2;

Sentence both_ways_words() {
    return say("The trees stand in regular lines both ways: it is not clear which are the rows.");
}

Sentence which_way_words() {
    return say("Give the rough bearing of the rows.");
}
std::optional<Refusal> contradiction_of(const RowReading& rows, const FoundSpacing& spacing,
                                        const RecoveryRule& rule, double bearing) {
    const double distance = rows.noise.distance;
    if (spacing.longer > 0 && !rule.spacing) {
        return Refusal{say("The trees stand {:.2f} m apart, or {:.2f} m with others between them.",
                           rows.spacing, spacing.longer),
                       say("Give the spacing."), which_spacing(rule, rows.spacing, spacing.longer)};
    }
    if (rows.trace.gaps.empty()) {
        return std::nullopt;
    }
    if (rule.row_distance) {
        const double ratio = distance / rule.row_distance->value;
        if (ratio < 0.7 || ratio > 1.45) {
            return Refusal{say("The rows were found {:.2f} m apart, not as told.", distance),
                           say("Check the row distance and the bearing.")};
        }
    } else if (distance < 0.9 * rows.spacing) {
        return Refusal{say("The rows would be {:.2f} m apart and their trees {:.2f} m: rather the rows "
                           "run the other way.",
                           distance, rows.spacing),
                       say("Check the bearing, or give the row distance as well.")};
    }
    const bool told_apart =
        rule.row_distance && rule.spacing && rule.row_distance->value > square_below * rule.spacing->value;
    if (!rule.bearing_deg && !told_apart && distance < square_below * rows.spacing) {
        return Refusal{both_ways_words(), which_way_words(), which_bearing(rule, bearing, bearing + 90)};
    }
    return std::nullopt;
}

/// Follows the rows; `bearing` is where they were found to run.
std::optional<Refusal> follow_rows(std::span<const math::PlanePoint> plane, const NearTrees& near,
                                   double step, const RecoveryRule& rule, RowReading& rows, double& bearing) {
    bool both_ways = false;
    double other_way = 0;
    bool west_or_east = false;
    // Noise makes neighbours look nearer than they are: where rows cannot be followed, with longer steps.
    for (int turn = 0; turn < 4; ++turn, step *= 1.2) {
        const auto directions = find_directions(plane, near, step, rule.bearing_deg);
        if (!directions) {
            return no_rows();
        }
        both_ways = directions->rivalry > 0.65 && !rule.bearing_deg;
        bearing = math::bearing_deg(directions->ahead.front());
        other_way = directions->other_bearing_deg;
        // Northwards is no sense for rows that run from west to east.
        west_or_east = std::abs(directions->sense) < 0.03 && !rule.bearing_deg;
        if (!both_ways) {
            rows.trace = trace_rows(plane, near, *directions, step);
            if (rows.trace.trouble == TraceTrouble::none) {
                break;
            }
        }
    }
    if (both_ways) {
        return Refusal{both_ways_words(), which_way_words(), which_bearing(rule, bearing, other_way)};
    }
    if (west_or_east) {
        return Refusal{say("The rows run from west to east: it is not clear where they begin."),
                       say("Give the bearing in which positions count."), which_bearing(rule, 90, 270)};
    }
    const auto in_rows = std::ranges::count_if(rows.trace.row_of, [](int row) { return row >= 0; });
    return rows.trace.trouble != TraceTrouble::none || 10 * in_rows < 8 * std::ssize(plane)
               ? std::optional{no_rows()}
               : std::nullopt;
}

}  // namespace

Refusal no_rows() {
    return {say("No regular rows can be detected among the trees."),
            say("Give the row distance and the bearing, number one block at a time, or lay its rows with "
                "row-lay first."),
            {}};
}

std::optional<Refusal> read_rows(std::span<const math::PlanePoint> plane, const NearTrees& near, double step,
                                 const RecoveryRule& rule, RowReading& rows) {
    double bearing = 0;
    if (auto refusal = follow_rows(plane, near, step, rule, rows, bearing)) {
        return refusal;
    }
    Alongs along;
    for (const auto& row : rows.trace.rows) {
        along.push_back(alongs_of(row, plane));
    }
    const auto spacing = common_spacing(along, rule);
    if (!spacing) {
        return Refusal{
            say("No regular spacing can be detected along the rows."),
            say("Give the spacing, measure the trees more exactly, or lay the rows with row-lay first."),
            {}};
    }
    rows.spacing = spacing->spacing;
    find_own_spacings(rows, along, rule);
    find_noise_along(rows, along);
    std::vector<double> offs;
    rows.noise.across = across_noise(plane, rows.trace, offs);
    rows.noise.distance = rows.trace.gaps.empty() ? 4 * rows.spacing : math::median(rows.trace.gaps);
    rows.noise.tails = heavy_tails(offs, rows.noise.across);
    const bool is_even = find_phases(rows, along);
    const auto remedy = say("Measure the trees more exactly, or lay the rows with row-lay first.");
    if (has_merged_rows(rows, plane)) {
        return Refusal{
            say("Rows run into one another: the points are too rough to tell them apart."), remedy, {}};
    }
    if (!is_even) {
        return Refusal{
            say("Spacings change along the rows, and the points are too rough to tell how."), remedy, {}};
    }
    return contradiction_of(rows, *spacing, rule, bearing);
}

}  // namespace pipward::place::detail
