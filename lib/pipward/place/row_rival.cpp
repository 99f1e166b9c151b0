// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_rival.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <optional>

namespace pipward::place::detail {
namespace {

using std::numbers::pi;
using SpanOfAlongs = std::span<const std::vector<double>>;

constexpr double significant = 6;    // standard errors of a coherence without any order
constexpr double least_share = 0.1;  // of the strongest coherence
constexpr double clearly = 7;        // log likelihood by which one spacing must be better: 1 in 1000
constexpr double reach = 0.008;      // a row's own spacing is that near to the common one
constexpr std::size_t enough_points = 3000;

double length_of(const std::vector<double>& row) {
    return row.empty() ? 0 : row.back() - row.front();
}

/// n R^2 of one row.
double strength(const std::vector<double>& row, double frequency) {
    std::complex<double> sum;
    for (const double along : row) {
        sum += std::polar(1.0, 2 * pi * frequency * along);
    }
    return row.empty() ? 0 : std::norm(sum) / static_cast<double>(row.size());
}

/// The best near a spacing.
double strength_near(const std::vector<double>& row, double spacing) {
    const double step = 0.25 / std::max(length_of(row), spacing);
    const double far = reach / spacing;
    double best = 0;
    for (double off = 0; off <= far; off += step) {
        best = std::max({best, strength(row, 1 / spacing + off), strength(row, 1 / spacing - off)});
    }
    return best;
}

/// Over all rows: sum of n R^2 less what chance gives, as a share of what perfect order gives.
double coherence(SpanOfAlongs rows, double frequency) {
    double sum = 0;
    double trees = 0;
    for (const auto& row : rows) {
        sum += static_cast<double>(row.size()) * (strength(row, frequency) - 1);
        trees += static_cast<double>(row.size()) * (static_cast<double>(row.size()) - 1);
    }
    return trees > 0 ? sum / trees : 0;
}

/// Whether a spacing follows from another: the same, or whole parts and multiples, and sums of waves.
bool is_explained(double frequency, double by, double blur) {
    for (const double times : {1.0 / 3, 0.5, 2.0 / 3, 1.0, 1.5, 2.0, 3.0}) {
        if (std::abs(frequency - times * by) < blur) {
            return true;
        }
    }
    return false;
}

std::optional<double> rival_of(SpanOfAlongs rows, std::span<const double> spacings, double least,
                               double most) {
    double longest = 1;
    double pairs = 0;
    double strongest = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        longest = std::max(longest, length_of(rows[i]));
        pairs += static_cast<double>(rows[i].size()) * (static_cast<double>(rows[i].size()) - 1);
        strongest = std::max(strongest, coherence(rows, 1 / spacings[i]));
    }
    const double wanted = std::max(significant / std::sqrt(std::max(pairs, 1.0)), least_share * strongest);
    const double blur = 4 / longest;
    std::optional<double> rival;
    double best = wanted;
    for (double frequency = 1 / most; frequency <= 1 / least; frequency += 0.25 / longest) {
        const bool explained = std::ranges::any_of(
            spacings, [&](double spacing) { return is_explained(frequency, 1 / spacing, blur); });
        const double here = explained ? 0 : coherence(rows, frequency);
        if (here > best) {
            best = here;
            rival = 1 / frequency;
        }
    }
    return rival;
}

/// The even positions of a part of the rows tell which spacings there are.
std::vector<std::vector<double>> some_of(SpanOfAlongs rows) {
    std::vector<std::vector<double>> some;
    std::size_t points = 0;
    const auto trees = std::max<std::size_t>(rows.size(), 1);
    const auto stride = std::max<std::size_t>(trees / 60, 1);
    for (std::size_t i = 0; i < rows.size() && points < enough_points; i += stride) {
        some.push_back(rows[i]);
        points += rows[i].size();
    }
    return some;
}

/// Those that two rows or more have.
std::vector<double> shared(std::span<const double> spacings) {
    std::vector<double> sorted(spacings.begin(), spacings.end());
    std::ranges::sort(sorted);
    std::vector<double> result;
    for (std::size_t i = 1; i < sorted.size(); ++i) {
        const auto alike = [](double one, double other) { return one <= other * (1 + 2 * reach); };
        if (alike(sorted[i], sorted[i - 1]) && (result.empty() || !alike(sorted[i], result.back()))) {
            result.push_back(sorted[i]);
        }
    }
    return result;
}

bool is_part_of(double one, double other) {
    const double ratio = one / other;
    return std::abs(ratio - std::round(ratio)) < 0.05 || std::abs(1 / ratio - std::round(1 / ratio)) < 0.05;
}

ChosenSpacing chosen(const std::vector<double>& row, double spacing, std::span<const double> candidates) {
    ChosenSpacing result{spacing};
    double best = strength_near(row, spacing);
    double second = 0;
    for (const double other : candidates) {
        if (is_part_of(other, spacing)) {
            continue;
        }
        const double here = strength_near(row, other);
        if (here > best) {
            second = best;
            best = here;
            result.other = result.spacing;
            result.spacing = other;
        } else if (here > second) {
            second = here;
            result.other = other;
        }
    }
    result.is_sure = result.other <= 0 || best - second >= clearly;
    return result;
}

}  // namespace

std::vector<ChosenSpacing> choose_spacings(SpanOfAlongs along, std::span<const double> spacings, double least,
                                           double most) {
    auto candidates = shared(spacings);
    const auto some = some_of(along);
    const auto stride = some.empty() ? 1 : std::max<std::size_t>(along.size() / some.size(), 1);
    std::vector<double> theirs;
    for (std::size_t i = 0; i < some.size(); ++i) {
        theirs.push_back(spacings[std::min(i * stride, spacings.size() - 1)]);
    }
    if (const auto rival = rival_of(some, theirs, least, most)) {
        candidates.push_back(*rival);
    }
    std::vector<ChosenSpacing> result;
    for (std::size_t i = 0; i < along.size(); ++i) {
        result.push_back(chosen(along[i], spacings[i], candidates));
    }
    return result;
}

}  // namespace pipward::place::detail
