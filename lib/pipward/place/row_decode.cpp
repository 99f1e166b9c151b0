// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_decode.h"

#include <algorithm>
#include <cmath>

#include "pipward/place/detail/row_noise.h"

namespace pipward::place::detail {
namespace {

// How often two trees are recorded on one spot: 1 in 2000, common practice, no source.
constexpr double share_doubled = 0.0005;

/// The numbers that a point may have, and the chain's state: the number of the last point placed so far.
struct Step {
    int first = 0;               // the lowest number; the lists rise from it
    std::vector<double> fit;     // density of the point at each number, 1 / m
    std::vector<double> placed;  // forward: the point itself stands there
    std::vector<double> last;    // forward: the last one placed stands there
    std::vector<double> later;   // backward: of all that follows, given the last one placed
};

/// Numbers within five standard deviations and four positions more.
Step step_at(double along, const PositionScale& scale) {
    const int reach = static_cast<int>(std::ceil(5 * scale.noise / scale.step)) + 4;
    Step step;
    step.first = static_cast<int>(std::lround((along - scale.origin) / scale.step)) - reach;
    for (int i = 0; i <= 2 * reach; ++i) {
        const int number = step.first + i;
        const bool exists = number >= scale.lowest && number <= scale.highest;
        step.fit.push_back(
            exists ? error_density(along - scale.origin - scale.step * number, scale.noise, scale.tails)
                   : 0.0);
    }
    return step;
}

/// The chain's step from one number to a later one: every position between was missed (geometric).
double weight(int from, int to, double missing) {
    if (to <= from) {
        return to == from ? share_doubled : 0.0;
    }
    return (1 - missing) * std::pow(missing, to - from - 1);
}

double at(const std::vector<double>& values, int index) {
    return index < 0 || index >= static_cast<int>(values.size()) ? 0.0
                                                                 : values[static_cast<std::size_t>(index)];
}

void normalise(std::vector<double>& values, std::vector<double>* also = nullptr) {
    double sum = 0;
    for (const double value : values) {
        sum += value;
    }
    if (sum <= 0) {
        return;
    }
    for (auto* list : {&values, also}) {
        if (list != nullptr) {
            std::ranges::transform(*list, list->begin(), [sum](double value) { return value / sum; });
        }
    }
}

/// 1 / m: strays lie evenly.
double stray_density(const PositionScale& scale) {
    return scale.stray / scale.step;
}

void forward(std::vector<Step>& steps, const PositionScale& scale) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        auto& step = steps[i];
        const auto size = static_cast<int>(step.fit.size());
        for (int to = 0; to < size; ++to) {
            double come = 0;
            if (i == 0) {
                come = 1;
            } else {
                const auto& before = steps[i - 1];
                for (int from = 0; from < static_cast<int>(before.last.size()); ++from) {
                    come += before.last[static_cast<std::size_t>(from)] *
                            weight(before.first + from, step.first + to, scale.missing);
                }
            }
            const double stay = i == 0 ? 1.0 : at(steps[i - 1].last, step.first + to - steps[i - 1].first);
            step.placed.push_back(come * step.fit[static_cast<std::size_t>(to)]);
            step.last.push_back(step.placed.back() + stay * stray_density(scale));
        }
        normalise(step.last, &step.placed);
    }
}

void backward(std::vector<Step>& steps, const PositionScale& scale) {
    for (std::size_t i = steps.size(); i-- > 0;) {
        auto& step = steps[i];
        step.later.assign(step.fit.size(), 1.0);
        if (i + 1 == steps.size()) {
            continue;
        }
        const auto& next = steps[i + 1];
        for (int from = 0; from < static_cast<int>(step.fit.size()); ++from) {
            double go = at(next.later, step.first + from - next.first) * stray_density(scale);
            for (int to = 0; to < static_cast<int>(next.fit.size()); ++to) {
                const auto there = static_cast<std::size_t>(to);
                go += weight(step.first + from, next.first + to, scale.missing) * next.fit[there] *
                      next.later[there];
            }
            step.later[static_cast<std::size_t>(from)] = go;
        }
        normalise(step.later);
    }
}

/// The chance that the point before and this one stand at the same number, for each number of this one.
std::vector<double> doubled(const Step& before, const Step& step, double total) {
    std::vector<double> both(step.fit.size(), 0.0);
    for (int to = 0; to < static_cast<int>(step.fit.size()); ++to) {
        const auto there = static_cast<std::size_t>(to);
        both[there] = at(before.placed, step.first + to - before.first) * share_doubled * step.fit[there] *
                      step.later[there] / total;
    }
    return both;
}

/// The likelihood of the whole chain through two neighbouring points, on the scale of their normalised lists.
double total_of(const Step* before, const Step& step, const PositionScale& scale) {
    double total = 0;
    for (int to = 0; to < static_cast<int>(step.fit.size()); ++to) {
        const auto there = static_cast<std::size_t>(to);
        double come = before == nullptr ? 1.0 : 0.0;
        for (int from = 0; before != nullptr && from < static_cast<int>(before->last.size()); ++from) {
            come += before->last[static_cast<std::size_t>(from)] *
                    weight(before->first + from, step.first + to, scale.missing);
        }
        const double stay = before == nullptr ? 1.0 : at(before->last, step.first + to - before->first);
        total += (come * step.fit[there] + stay * stray_density(scale)) * step.later[there];
    }
    return total;
}

PlacedPoint likeliest(const Step& step) {
    PlacedPoint point;
    double all = 0;
    double placed = 0;
    double best = -1;
    for (std::size_t i = 0; i < step.fit.size(); ++i) {
        const double here = step.placed[i] * step.later[i];
        all += step.last[i] * step.later[i];
        placed += here;
        if (here > best) {
            best = here;
            point.number = step.first + static_cast<int>(i);
        }
    }
    if (all > 0) {
        point.certainty = best / all;
        point.stray = 1 - placed / all;
    } else {
        point.stray = 1;
    }
    return point;
}

void weigh_doubles(const std::vector<Step>& steps, const PositionScale& scale,
                   std::vector<PlacedPoint>& points) {
    for (std::size_t i = 1; i < steps.size(); ++i) {
        const double total = total_of(&steps[i - 1], steps[i], scale);
        if (total <= 0) {
            continue;
        }
        const auto both = doubled(steps[i - 1], steps[i], total);
        double sum = 0;
        for (const double chance : both) {
            sum += chance;
        }
        points[i].shared = std::max(points[i].shared, sum);
        points[i - 1].shared = std::max(points[i - 1].shared, sum);
        points[i].certainty -= at(both, points[i].number - steps[i].first);
        points[i - 1].certainty -= at(both, points[i - 1].number - steps[i].first);
    }
}

/// How much less likely two points are to have exchanged their numbers than to have kept them.
double exchanged(std::span<const double> along, std::span<const PlacedPoint> points, std::size_t i,
                 std::size_t j, const PositionScale& scale) {
    const auto fit = [&](std::size_t point, std::size_t number) {
        const double place = scale.origin + scale.step * points[number].number;
        return error_density(along[point] - place, scale.noise, scale.tails);
    };
    const double kept = fit(i, i) * fit(j, j);
    return kept > 0 ? fit(i, j) * fit(j, i) / kept : 1;
}

// The chain keeps the order of the points; noise may not. Three neighbours on it is as good as never.
void weigh_swaps(std::span<const double> along, const PositionScale& scale,
                 std::vector<PlacedPoint>& points) {
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (std::size_t j = i + 1; j < points.size() && j <= i + 3; ++j) {
            if (points[j].number > points[i].number) {
                const double kept = 1 / (1 + exchanged(along, points, i, j, scale));
                points[i].certainty *= kept;
                points[j].certainty *= kept;
            }
        }
    }
}

}  // namespace

std::vector<PlacedPoint> decode_row(std::span<const double> along, const PositionScale& scale) {
    std::vector<Step> steps;
    for (const double place : along) {
        steps.push_back(step_at(place, scale));
    }
    forward(steps, scale);
    backward(steps, scale);
    std::vector<PlacedPoint> points;
    for (const auto& step : steps) {
        points.push_back(likeliest(step));
    }
    weigh_doubles(steps, scale, points);
    weigh_swaps(along, scale, points);
    for (auto& point : points) {
        point.certainty = std::clamp(point.certainty, 0.0, 1.0);
    }
    return points;
}

}  // namespace pipward::place::detail
