// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_phase.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

namespace pipward::place::detail {
namespace {

using std::numbers::pi;
using Phasor = std::complex<double>;

constexpr double width = 5;           // spacings: standard deviation of a window's weights
constexpr double phase_stride = 3;    // spacings from window to window
constexpr double fewest_trees = 3.5;  // trees in a window, by their weights

Phasor turned(double along, double spacing) {
    return std::polar(1.0, 2 * pi * along / spacing);
}

struct Window {
    double middle = 0;
    double phase = 0;  // positions by which trees lie beyond even ones; folded to -0.5..0.5, then unfolded
    double error = 0;  // standard error, positions
};

std::vector<Window> windows_of(std::span<const double> along, double spacing, double noise) {
    std::vector<Window> windows;
    const double turn = 2 * pi * noise / spacing;
    const double strength = std::exp(-turn * turn / 2);
    for (double middle = along.front(); middle <= along.back() + 1e-9; middle += phase_stride * spacing) {
        Phasor sum;
        double weights = 0;
        double squares = 0;
        for (const double one : along) {
            const double far = (one - middle) / (width * spacing);
            if (std::abs(far) < 3) {
                const double weight = std::exp(-far * far / 2);
                sum += weight * turned(one, spacing);
                weights += weight;
                squares += weight * weight;
            }
        }
        if (weights >= fewest_trees) {
            const double variance =
                squares / (2 * strength * strength * weights * weights) * (1 - strength * strength);
            windows.push_back({middle, std::arg(sum) / (2 * pi), std::sqrt(variance) / (2 * pi)});
        }
    }
    return windows;
}

/// The spacing near `spacing` that the row keeps best to, and where its positions lie: metres.
struct Even {
    double spacing = 0;
    double origin = 0;
};

Even even_of(std::span<const double> along, double spacing) {
    const double length = std::max(along.back() - along.front(), spacing);
    const auto sum_at = [&](double frequency) {
        Phasor sum;
        for (const double one : along) {
            sum += std::polar(1.0, 2 * pi * frequency * (one - along.front()));
        }
        return sum;
    };
    // A third of a turn over the whole row, and at most a hundredth of the spacing, either way.
    const double reach = std::min(0.01 / spacing, 0.6 / length);
    double best = 1 / spacing;
    double most = -1;
    for (int i = -20; i <= 20; ++i) {
        const double frequency = 1 / spacing + reach * i / 20;
        // A mild pull to the common spacing: few trees know their own badly.
        const double size = std::norm(sum_at(frequency)) / static_cast<double>(along.size()) - 0.002 * i * i;
        if (size > most) {
            most = size;
            best = frequency;
        }
    }
    const double origin = along.front() + std::arg(sum_at(best)) / (2 * pi) / best;
    return {1 / best, origin};
}

}  // namespace

RowPhase::RowPhase(std::vector<double> along, std::vector<double> number)
    : along_(std::move(along)), number_(std::move(number)) {}

namespace {

double between(double at, const std::vector<double>& from, const std::vector<double>& to) {
    const auto next = std::ranges::upper_bound(from, at) - from.begin();
    const auto i = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(next - 1, 0, std::ssize(from) - 2));
    return to[i] + (at - from[i]) / (from[i + 1] - from[i]) * (to[i + 1] - to[i]);
}

}  // namespace

double RowPhase::number_at(double along) const {
    return between(along, along_, number_);
}

double RowPhase::along_of(double number) const {
    return between(number, number_, along_);
}

RowPhase phase_of(std::span<const double> along, double spacing, double noise, bool wandering) {
    const auto even = even_of(along, spacing);
    auto windows = windows_of(along, even.spacing, noise);
    const double at_origin = even.origin / even.spacing;
    double squares = 0;
    for (auto& window : windows) {
        window.phase = std::remainder(window.phase - at_origin, 1.0);
        squares += window.phase * window.phase;
    }
    RowPhase phase({even.origin, even.origin + even.spacing}, {0, 1});
    double errors = 0;
    for (const auto& window : windows) {
        errors += window.error * window.error;
    }
    for (std::size_t i = 1; i < windows.size(); ++i) {
        windows[i].phase =
            windows[i - 1].phase + std::remainder(windows[i].phase - windows[i - 1].phase, 1.0);
    }
    if (wandering && windows.size() >= 2) {
        std::vector<double> at;
        std::vector<double> number;
        for (const auto& window : windows) {
            at.push_back(window.middle);
            number.push_back((window.middle - even.origin) / even.spacing - window.phase);
        }
        phase = RowPhase(std::move(at), std::move(number));
    }
    if (!windows.empty()) {
        const auto count = static_cast<double>(windows.size());
        phase.unevenness = std::sqrt(squares / errors);
        phase.wander = std::sqrt(std::max(squares - errors, 0.0) / count);
    }
    return phase;
}

}  // namespace pipward::place::detail
