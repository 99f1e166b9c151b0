// SPDX-License-Identifier: MIT
#include "pipward/place/detail/row_direction.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <queue>

namespace pipward::place::detail {
namespace {

using math::PlanePoint;
using std::numbers::pi;

constexpr int directions = 180;  // whole degrees of bearing, without sense
constexpr int rival_from = 30;   // degrees: nearer to the rows it is the same hill
constexpr int most_turn = 20;    // degrees from one patch to the next
constexpr int told_within = 25;  // degrees

using Histogram = std::array<double, directions>;
using Patch = std::pair<int, int>;

/// How many trees stand in line with one another, by bearing: each pair within a corridor of `width`.
void add_pair(PlanePoint way, double width, Histogram& histogram) {
    const double far = math::length(way);
    if (far < width / 4) {
        return;
    }
    const double bearing = math::bearing_deg(way);
    const int reach = std::min(89, static_cast<int>(std::asin(std::min(1.0, width / far)) * 180 / pi) + 1);
    const int middle = static_cast<int>(std::lround(bearing));
    for (int turn = -reach; turn <= reach; ++turn) {
        const double off = far * std::sin((middle + turn - bearing) * pi / 180) / width;
        if (off * off < 1) {
            histogram[static_cast<std::size_t>((middle + turn + 2 * directions) % directions)] +=
                1 - off * off;
        }
    }
}

double turned_by(double a, double b) {
    return std::abs(std::remainder(a - b, 180.0));
}

int peak_near(const Histogram& histogram, double bearing, double within) {
    int best = -1;
    for (int i = 0; i < directions; ++i) {
        if (turned_by(i, bearing) <= within && (best < 0 || histogram[static_cast<std::size_t>(i)] >
                                                                histogram[static_cast<std::size_t>(best)])) {
            best = i;
        }
    }
    return best;
}

double mean_of(const Histogram& histogram) {
    double sum = 0;
    for (const double one : histogram) {
        sum += one;
    }
    return sum / directions;
}

/// Above the mean of all directions.
double rise(const Histogram& histogram, int direction) {
    return histogram[static_cast<std::size_t>(direction)] - mean_of(histogram);
}

class Patches {
  public:
    Patches(std::span<const PlanePoint> trees, const NearTrees& near, double step) : size_(8 * step) {
        std::map<Patch, Histogram> own;
        for (std::size_t i = 0; i < trees.size(); ++i) {
            auto& histogram = own.try_emplace(patch_of(trees[i]), Histogram{}).first->second;
            for (const auto other : near.of(i)) {
                const auto way = trees[other] - trees[i];
                if (math::length(way) <= 4.5 * step) {
                    add_pair(way, 0.45 * step, histogram);
                }
            }
        }
        for (const auto& [patch, histogram] : own) {
            auto& sum = pooled_.try_emplace(patch, histogram).first->second;
            for (const auto& next : around(patch)) {
                if (const auto found = own.find(next); found != own.end()) {
                    for (std::size_t i = 0; i < directions; ++i) {
                        sum[i] += 0.25 * found->second[i];
                    }
                }
            }
        }
    }

    Patch patch_of(PlanePoint at) const {
        return {static_cast<int>(std::floor(at.east / size_)),
                static_cast<int>(std::floor(at.north / size_))};
    }
    PlanePoint middle_of(const Patch& patch) const {
        return {(patch.first + 0.5) * size_, (patch.second + 0.5) * size_};
    }
    double size() const { return size_; }
    const std::map<Patch, Histogram>& pooled() const { return pooled_; }

    static std::vector<Patch> around(const Patch& patch) {
        std::vector<Patch> result;
        for (const int a : {-1, 0, 1}) {
            for (const int b : {-1, 0, 1}) {
                if (a != 0 || b != 0) {
                    result.emplace_back(patch.first + a, patch.second + b);
                }
            }
        }
        return result;
    }

  private:
    double size_;
    std::map<Patch, Histogram> pooled_{};
};

/// A direction a patch, in degrees with a sense, and how well all keep to it together.
struct Followed {
    std::map<Patch, double> bearing{};
    double rise = 0;
};

/// From the first patch on, each next one the clearest beside those that are settled.
Followed follow(const Patches& patches, const Patch& first, double bearing) {
    Followed followed;
    using Waiting = std::tuple<double, Patch, double>;  // rise, patch, bearing
    std::priority_queue<Waiting> waiting;
    waiting.emplace(0, first, bearing);
    while (!waiting.empty()) {
        const auto [clear, patch, from] = waiting.top();
        waiting.pop();
        if (followed.bearing.contains(patch)) {
            continue;
        }
        const auto& histogram = patches.pooled().at(patch);
        const int peak = peak_near(histogram, from, most_turn);
        const double here = from + std::remainder(peak - from, 180.0);
        followed.bearing.emplace(patch, here);
        followed.rise += rise(histogram, peak);
        for (const auto& next : Patches::around(patch)) {
            if (const auto found = patches.pooled().find(next);
                found != patches.pooled().end() && !followed.bearing.contains(next)) {
                waiting.emplace(rise(found->second, peak_near(found->second, here, most_turn)), next, here);
            }
        }
    }
    return followed;
}

struct Seed {
    Patch patch{};
    double bearing = 0;
    double rise = 0;
};

std::optional<Seed> clearest(const Patches& patches, std::optional<double> bearing) {
    std::optional<Seed> best;
    for (const auto& [patch, histogram] : patches.pooled()) {
        const int peak = bearing ? peak_near(histogram, *bearing, told_within) : peak_near(histogram, 0, 90);
        const double here = rise(histogram, peak);
        if (peak >= 0 && (!best || here > best->rise)) {
            best = Seed{patch, static_cast<double>(peak), here};
        }
    }
    return best;
}

/// Each tree's own direction: of the patches around it, nearer ones counting more.
std::vector<PlanePoint> spread_out(std::span<const PlanePoint> trees, const Patches& patches,
                                   const Followed& followed) {
    std::vector<PlanePoint> result;
    for (const auto& tree : trees) {
        const auto own = patches.patch_of(tree);
        PlanePoint sum{};
        auto all = Patches::around(own);
        all.push_back(own);
        for (const auto& patch : all) {
            if (const auto found = followed.bearing.find(patch); found != followed.bearing.end()) {
                const double far = math::length(tree - patches.middle_of(patch)) / patches.size();
                sum = sum + math::way_at(found->second) * std::exp(-2 * far * far);
            }
        }
        result.push_back(math::unit(sum));
    }
    return result;
}

}  // namespace

std::optional<RowDirections> find_directions(std::span<const PlanePoint> trees, const NearTrees& near,
                                             double step, std::optional<double> bearing_deg) {
    const Patches patches(trees, near, step);
    const auto seed = clearest(patches, bearing_deg);
    if (!seed || seed->rise <= 0) {
        return std::nullopt;
    }
    const auto followed = follow(patches, seed->patch, seed->bearing);
    RowDirections found;
    found.ahead = spread_out(trees, patches, followed);
    PlanePoint sum{};
    for (const auto& ahead : found.ahead) {
        sum = sum + ahead;
    }
    found.sense = dot(math::unit(sum), math::way_at(bearing_deg.value_or(0)));
    if (found.sense < 0) {
        for (auto& ahead : found.ahead) {
            ahead = ahead * -1;
        }
    }
    // The rival: the best direction well away from the rows, in the same patch.
    const auto& histogram = patches.pooled().at(seed->patch);
    const int other = peak_near(histogram, seed->bearing + 90, 90 - rival_from);
    double rival = 0;
    for (const auto& [patch, bearing] : followed.bearing) {
        const auto& here = patches.pooled().at(patch);
        const double turned = bearing + std::remainder(other - seed->bearing, 180.0);
        rival += std::max(rise(here, peak_near(here, turned, most_turn / 2.0)), 0.0);
    }
    found.other_bearing_deg = other;
    found.rivalry = followed.rise > 0 ? rival / followed.rise : 1;
    return found;
}

}  // namespace pipward::place::detail
