// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_pattern.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <tuple>

#include "pipward/math/quantile.h"

namespace pipward::place::detail {
namespace {

using math::PlanePoint;
using std::numbers::pi;

// So many points about the middle show what repeats; every point more makes each of many tries dearer.
constexpr std::size_t first_sample = 400;
constexpr double nearly_as_good = 0.85;  // of the best strength: our own figure, see docs/method.md
constexpr double degree = pi / 180;

// Bearings are in radians in here, clockwise from the plane's north: they are turned in small steps.
// Frequencies are lines a metre, 1 / distance.

/// Metres to the right of the line through the origin that runs at this bearing.
double across(const PlanePoint& point, double bearing) {
    return point.east * std::cos(bearing) - point.north * std::sin(bearing);
}

/// The length of the mean of the points' unit vectors, 0..1 (see the header).
double strength_at(std::span<const PlanePoint> points, double bearing, double frequency) {
    std::complex<double> sum;
    for (const auto& point : points) {
        sum += std::polar(1.0, 2 * pi * frequency * across(point, bearing));
    }
    return std::abs(sum) / static_cast<double>(points.size());
}

/// Metres: no two points lie farther apart; at least 2.
double extent_of(std::span<const PlanePoint> points) {
    double reach = 1;
    for (const auto& point : points) {
        reach = std::max(reach, length(point - points[0]));
    }
    return 2 * reach;
}

struct Candidate {
    double bearing = 0;    // radians
    double frequency = 0;  // 1 / m
    double strength = 0;   // 0..1
};

/// Frequencies to try, a metre: from the lowest on.
struct Frequencies {
    double low = 0;
    double step = 0;
    int count = 0;
};

/// All frequencies of one bearing (radians), by turning each point's phase on step by step: a product in
/// place of a sine and a cosine.
void try_bearing(std::span<const PlanePoint> points, double bearing, const Frequencies& tried,
                 std::vector<Candidate>& out) {
    std::vector<std::complex<double>> phase;
    std::vector<std::complex<double>> turn;
    for (const auto& point : points) {
        const double v = across(point, bearing);
        phase.push_back(std::polar(1.0, 2 * pi * tried.low * v));
        turn.push_back(std::polar(1.0, 2 * pi * tried.step * v));
    }
    for (int i = 0; i < tried.count; ++i) {
        std::complex<double> sum;
        for (std::size_t p = 0; p < phase.size(); ++p) {
            sum += phase[p];
            phase[p] *= turn[p];
        }
        out.push_back(
            {bearing, tried.low + i * tried.step, std::abs(sum) / static_cast<double>(points.size())});
    }
}

/// The angle between two directions without sense, 0..pi/2.
double between(double a, double b) {
    const double turn = std::abs(std::remainder(a - b, pi));
    return std::min(turn, pi - turn);
}

/// So fine that from one try to the next phases turn by a sixth at the most: of frequencies against one
/// another over the whole extent, of bearings against the middle's at the narrowest distance.
std::vector<Candidate> grid(std::span<const PlanePoint> points, const FamilySearch& search) {
    const double extent = extent_of(points);
    const double step = 1 / (6 * extent);
    const double low = 1 / search.most;
    const int steps = static_cast<int>((1 / search.least - low) / step) + 2;
    const int bearings = static_cast<int>(std::ceil(pi * 3 * extent / search.least));
    std::vector<Candidate> out;
    for (int i = 0; i < bearings; ++i) {
        const double bearing = pi * i / bearings;
        if (!search.bearing_deg || between(bearing, *search.bearing_deg * degree) <= 20 * degree) {
            try_bearing(points, bearing, {low, step, steps}, out);
        }
    }
    return out;
}

/// The top of the hill that a candidate stands on: the best of the eight around it again and again, steps
/// halved where none is better, until a turn is a millionth of a radian, a millimetre in a kilometre.
Candidate climbed(std::span<const PlanePoint> points, Candidate from) {
    double turn = 1 / (8 * extent_of(points) * from.frequency);
    double step = 1 / (8 * extent_of(points));
    while (turn > 1e-6) {
        Candidate best = from;
        for (const int a : {-1, 0, 1}) {
            for (const int b : {-1, 0, 1}) {
                Candidate next{from.bearing + a * turn, from.frequency + b * step};
                next.strength = strength_at(points, next.bearing, next.frequency);
                best = next.strength > best.strength ? next : best;
            }
        }
        const bool moved = best.strength > from.strength;
        from = best;
        turn *= moved ? 1 : 0.5;
        step *= moved ? 1 : 0.5;
    }
    return from;
}

PlanePoint middle_of(std::span<const PlanePoint> points) {
    std::vector<double> easts;
    std::vector<double> norths;
    for (const auto& point : points) {
        easts.push_back(point.east);
        norths.push_back(point.north);
    }
    return {math::middle_value(std::move(easts)), math::middle_value(std::move(norths))};
}

std::vector<PlanePoint> nearest_to_middle(std::span<const PlanePoint> points) {
    std::vector<PlanePoint> sorted(points.begin(), points.end());
    const auto middle = middle_of(points);
    std::ranges::sort(sorted, {},
                      [&](PlanePoint p) { return std::tuple(length(p - middle), p.east, p.north); });
    return sorted;
}

}  // namespace

std::optional<FoundFamily> find_lines(std::span<const PlanePoint> points, const FamilySearch& search) {
    if (points.size() < 6) {
        return std::nullopt;
    }
    const auto sorted = nearest_to_middle(points);
    const std::span<const PlanePoint> all(sorted);
    auto sample = all.first(std::min(first_sample, all.size()));
    const auto tried = grid(sample, search);
    if (tried.empty()) {
        return std::nullopt;
    }
    const auto best = std::ranges::max_element(tried, {}, &Candidate::strength);
    // The best of very many tries among points without any order comes to about this: one try alone passes
    // four times 1 / sqrt(n) with the probability e^-16 (Rayleigh).
    const double chance = 4.0 / std::sqrt(static_cast<double>(sample.size()));
    if (best->strength < chance) {
        return std::nullopt;
    }
    Candidate widest = *best;
    for (const auto& one : tried) {
        if (one.strength >= nearly_as_good * best->strength && one.frequency < widest.frequency) {
            widest = one;
        }
    }
    widest = climbed(sample, widest);
    FoundFamily found;
    // Lines more than 30 degrees off that stand no closer than 1 / 1.12 of the rows' distance.
    for (const auto& one : tried) {
        found.ambiguous = found.ambiguous || (one.strength >= nearly_as_good * widest.strength &&
                                              one.frequency < 1.12 * widest.frequency &&
                                              between(one.bearing, widest.bearing) > 30 * degree);
    }
    found.rows = {std::fmod(widest.bearing + 2 * pi, pi) / degree, 1 / widest.frequency, widest.strength};
    return found;
}

namespace {

/// The mean cosine of the phase differences between any two values of a row, over all rows: |sum|^2 - n is
/// its sum over ordered pairs. Less that n it is 0 on average for values without any order.
double coherence_at(std::span<const std::vector<double>> rows, double frequency) {
    double power = 0;
    double pairs = 0;
    for (const auto& row : rows) {
        std::complex<double> sum;
        for (const double along : row) {
            sum += std::polar(1.0, 2 * pi * frequency * along);
        }
        const auto n = static_cast<double>(row.size());
        power += std::norm(sum) - n;
        pairs += n * (n - 1);
    }
    return pairs > 0 ? power / pairs : 0;
}

/// Metres from the first value of a row to its last, at the most; at least 1.
double longest_of(std::span<const std::vector<double>> rows) {
    double longest = 1;
    for (const auto& row : rows) {
        if (!row.empty()) {
            const auto [low, high] = std::ranges::minmax(row);
            longest = std::max(longest, high - low);
        }
    }
    return longest;
}

/// Ordered pairs of values of a row, over all rows.
double pairs_in(std::span<const std::vector<double>> rows) {
    double pairs = 0;
    for (const auto& row : rows) {
        pairs += static_cast<double>(row.size()) * (static_cast<double>(row.size()) - 1);
    }
    return pairs;
}

}  // namespace

std::optional<FoundSpacing> find_spacing(std::span<const std::vector<double>> rows, double least,
                                         double most) {
    // From one try to the next no phase turns by more than an eighth against another of its row.
    const double step = 1 / (8 * longest_of(rows));
    struct Trial {
        double frequency = 0;  // 1 / m
        double coherence = 0;
    };
    std::vector<Trial> tried;
    for (double frequency = 1 / most; frequency <= 1 / least + step; frequency += step) {
        tried.push_back({frequency, coherence_at(rows, frequency)});
    }
    if (tried.empty()) {
        return std::nullopt;
    }
    const auto best = std::ranges::max_element(tried, {}, &Trial::coherence);
    // For values without any order the mean over all pairs has the standard deviation 1 / sqrt(pairs).
    if (best->coherence < 5 / std::sqrt(std::max(pairs_in(rows), 1.0))) {
        return std::nullopt;
    }
    // Halves and thirds of the spacing fit nearly as well: the longest that does is the spacing.
    auto chosen = *std::ranges::find_if(
        tried, [&](const auto& one) { return one.coherence >= 0.75 * best->coherence; });
    for (double width = step; width > 1e-7;) {
        const double low = coherence_at(rows, chosen.frequency - width);
        const double high = coherence_at(rows, chosen.frequency + width);
        if (std::max(low, high) > chosen.coherence) {
            chosen =
                low > high ? Trial{chosen.frequency - width, low} : Trial{chosen.frequency + width, high};
        } else {
            width /= 2;
        }
    }
    return FoundSpacing{1 / chosen.frequency, std::min(chosen.coherence, 1.0)};
}

double origin_of(std::span<const double> along, double spacing) {
    std::complex<double> sum;
    for (const double place : along) {
        sum += std::polar(1.0, 2 * pi * place / spacing);
    }
    const double origin = std::arg(sum) / (2 * pi) * spacing;
    return origin < 0 ? origin + spacing : origin;
}

}  // namespace pipward::place::detail
