// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_spacing.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

namespace pipward::place::detail {
namespace {

using std::numbers::pi;

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
    // To the top of its own hill and no farther: few trees have hills that run on.
    const double hill = chosen.frequency;
    for (double width = step; width > 1e-7;) {
        const double low = coherence_at(rows, chosen.frequency - width);
        const double high = coherence_at(rows, chosen.frequency + width);
        const double next = low > high ? chosen.frequency - width : chosen.frequency + width;
        if (std::max(low, high) > chosen.coherence && std::abs(next - hill) <= 3 * step) {
            chosen = {next, std::max(low, high)};
        } else {
            width /= 2;
        }
    }
    FoundSpacing found{1 / chosen.frequency, std::min(chosen.coherence, 1.0)};
    for (const int times : {2, 3}) {
        const double other = coherence_at(rows, chosen.frequency / times);
        const bool within = times * found.spacing <= most * 1.001;
        if (within && other > std::max(0.12 * chosen.coherence, 5 / std::sqrt(pairs_in(rows)))) {
            found.longer = times * found.spacing;
        }
    }
    return found;
}

double coherence_of(std::span<const std::vector<double>> rows, double spacing) {
    return coherence_at(rows, 1 / spacing);
}

}  // namespace pipward::place::detail
