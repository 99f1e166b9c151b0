// SPDX-License-Identifier: MIT
#include "pipward/place/near_spots.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "pipward/place/detail/row_stands.h"
#include "pipward/place/row_barrier.h"
#include "pipward/record/presence.h"

namespace pipward::place {
namespace {

struct Square {
    MapPoint low{HUGE_VAL, HUGE_VAL, {}};
    MapPoint high{-HUGE_VAL, -HUGE_VAL, {}};

    bool holds(const MapPoint& at) const {
        return at.x >= low.x && at.x <= high.x && at.y >= low.y && at.y <= high.y;
    }
};

Square box_of(const MetrePlane& plane, double metres) {
    Square box;
    for (const double east : {-metres, metres}) {
        for (const double north : {-metres, metres}) {
            const auto corner = plane.back({east, north});
            box.low = {std::min(box.low.x, corner.x), std::min(box.low.y, corner.y), {}};
            box.high = {std::max(box.high.x, corner.x), std::max(box.high.y, corner.y), {}};
        }
    }
    return box;
}

// Quickly out of a million: for the one question of a run looking at all of them takes 0.1 ms for 100,000, a
// math::PointTree of them 50 ms to build.
std::vector<std::uint32_t> trees_within(const Orchard& orchard, const Square& box) {
    std::vector<std::uint32_t> trees;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        if (const auto& at = orchard.trees[i].at; at && box.holds(*at)) {
            trees.push_back(i);
        }
    }
    return trees;
}

// Metres: five of the radii, beyond which nothing is likely, and 5 m to spare.
double reach_of(const NearWish& wish) {
    return 5 * std::hypot(wish.accuracy.value, wish.beside.value) + 5;
}

std::set<RowName> rows_of(const Orchard& orchard, const std::vector<std::uint32_t>& trees) {
    std::set<RowName> names;
    for (const auto tree : trees) {
        if (const auto name = row_name(orchard.trees[tree])) {
            names.insert(*name);
        }
    }
    return names;
}

// Nobody stands nearer to a stem than a centimetre, whatever a receiver says of itself. Our own figure.
constexpr double least_variance = 0.01 * 0.01;

// A spot, and where it is in its row.
struct Candidate {
    NearSpot spot;
    std::size_t line = 0;
    std::size_t stand = 0;
    double variance = 0;  // in each direction, square metres
};

class Surroundings {
  public:
    Surroundings(const Orchard& orchard, Day as_of, const NearWish& wish)
        : orchard_(orchard),
          as_of_(as_of),
          wish_(wish),
          plane_(orchard.crs, wish.at),
          reach_(reach_of(wish)) {
        const auto near = trees_within(orchard, box_of(plane_, reach_ + widest_alley));
        const auto names = rows_of(orchard, near);
        lines_ = tree_lines(orchard, plane_, &names);
        for (const auto& line : lines_) {
            stands_.push_back(detail::stands_of(line, orchard, as_of));
        }
        barriers_ = row_barriers(lines_, {});
        add_rows();
        add_trees_without_row(near);
    }

    NearSpots spots() {
        NearSpots near;
        near.off = weigh();
        const auto best = std::ranges::max_element(candidates_, {}, probability);
        if (best != candidates_.end() && best->spot.row) {
            near.ahead = math::main_direction(lines_[best->line].at);
        }
        for (auto& candidate : candidates_) {
            if (candidate.spot.row) {
                candidate.spot.facts = facts_of(candidate, near.ahead);
            }
            near.spots.push_back(candidate.spot);
        }
        std::ranges::stable_sort(near.spots, std::ranges::greater{}, &NearSpot::probability);
        return near;
    }

  private:
    static double probability(const Candidate& candidate) { return candidate.spot.probability; }

    SpotKind kind_of(std::uint32_t tree) const {
        return stands_on(orchard_.trees[tree], as_of_)    ? SpotKind::tree
               : removed_by(orchard_.trees[tree], as_of_) ? SpotKind::removed
                                                          : SpotKind::vacant;
    }

    void add(NearSpot spot, std::size_t line, std::size_t stand) {
        if (length(spot.at) > reach_) {
            return;
        }
        const auto accuracy = spot.tree ? orchard_.trees[*spot.tree].accuracy : std::nullopt;
        double variance = 0;
        for (const auto radius : {wish_.accuracy, wish_.beside, accuracy.value_or(Metres{0})}) {
            variance += deviation_of(radius) * deviation_of(radius);
        }
        candidates_.push_back({std::move(spot), line, stand, std::max(variance, least_variance)});
    }
    void add_rows() {
        for (std::size_t line = 0; line < lines_.size(); ++line) {
            for (std::size_t i = 0; i < stands_[line].size(); ++i) {
                const auto& stand = stands_[line][i];
                const auto kind = stand.tree ? kind_of(*stand.tree) : SpotKind::vacant;
                add({kind, stand.tree, lines_[line].name, stand.position, stand.at}, line, i);
            }
        }
    }
    void add_trees_without_row(const std::vector<std::uint32_t>& near) {
        for (const auto i : near) {
            const auto& tree = orchard_.trees[i];
            if (!tree.row) {
                add({kind_of(i), i, {}, {}, plane_(*tree.at)}, 0, 0);
            }
        }
    }

    // Bayes: the likelihood of the receiver's place (Gaussian in the plane: exp(-r^2 / 2 variance) /
    // variance, its constant left out) times the weight, in logarithms so that nothing far away becomes 0 /
    // 0. Gives how far off the nearest is, in standard deviations; endless where there is no spot.
    double weigh() {
        std::vector<double> logs;
        double off = std::numeric_limits<double>::infinity();
        for (const auto& candidate : candidates_) {
            const double square = dot(candidate.spot.at, candidate.spot.at) / candidate.variance;
            const double weight = candidate.spot.kind == SpotKind::tree ? 1.0 : wish_.gap_weight;
            logs.push_back(std::log(weight / candidate.variance) - square / 2);
            off = std::min(off, std::sqrt(square));
        }
        const double highest = logs.empty() ? 0.0 : *std::ranges::max_element(logs);
        double sum = 0;
        for (const double value : logs) {
            sum += std::exp(value - highest);
        }
        for (std::size_t i = 0; i < candidates_.size(); ++i) {
            candidates_[i].spot.probability = std::exp(logs[i] - highest) / sum;
        }
        return off;
    }

    // What one sees going one way along the row.
    struct Sight {
        bool tree_next = false;
        int trees = 0;
        std::optional<std::string> accession;
    };
    Sight sight(const Candidate& candidate, int step) const {
        Sight sight;
        const auto& stands = stands_[candidate.line];
        const int count = static_cast<int>(stands.size());
        const int here = static_cast<int>(candidate.stand);
        for (int i = here + step; i >= 0 && i < count; i += step) {
            const auto& stand = stands[static_cast<std::size_t>(i)];
            if (stand.stands && i == here + step) {
                sight.tree_next = true;
                sight.accession = orchard_.trees[*stand.tree].accession;
            }
            sight.trees += stand.stands ? 1 : 0;
        }
        return sight;
    }

    bool has_row_to(const Candidate& candidate, math::PlanePoint direction) const {
        const auto at = candidate.spot.at;
        return !rows_facing(barriers_, static_cast<std::uint32_t>(candidate.line), at,
                            at + direction * widest_alley)
                    .empty();
    }

    SpotFacts facts_of(const Candidate& candidate, math::PlanePoint ahead) const {
        const auto own = math::main_direction(lines_[candidate.line].at);
        const int step = dot(own, ahead) >= 0 ? 1 : -1;
        const auto there = sight(candidate, step);
        const auto back = sight(candidate, -step);
        const auto left = left_of(own * step);
        return {there.tree_next,
                back.tree_next,
                there.trees,
                back.trees,
                has_row_to(candidate, left),
                has_row_to(candidate, left * -1),
                there.accession,
                back.accession};
    }

    const Orchard& orchard_;
    Day as_of_;
    const NearWish& wish_;
    MetrePlane plane_;
    double reach_;
    std::vector<TreeLine> lines_;
    std::vector<std::vector<detail::RowStand>> stands_;
    Barriers barriers_;
    std::vector<Candidate> candidates_;
};

}  // namespace

bool take_near(const NearWish& wish, OrchardShelf& shelf) {
    const MetrePlane plane(shelf.taken().crs, wish.at);
    const auto box = box_of(plane, reach_of(wish) + widest_alley);
    shelf.take_trees_within(box.low, box.high);
    const auto near = trees_within(shelf.taken(), box);
    for (const auto& [block, name] : rows_of(shelf.taken(), near)) {
        const Held row{"row", {name}};
        const Held in_block{"block", {block}};
        const Held in_none{.column = "block", .unknown = true};
        shelf.take("tree", std::array{row, block.empty() ? in_none : in_block});
        shelf.take("tree_row", std::array{Held{"name", {name}}, in_block});
    }
    return !near.empty();
}

double deviation_of(Metres radius) {
    static const double radii = std::sqrt(-2 * std::log(1 - 0.68));  // Rayleigh's distribution
    return radius.value / radii;
}

NearSpots near_spots(const Orchard& orchard, Day as_of, const NearWish& wish) {
    return Surroundings(orchard, as_of, wish).spots();
}

}  // namespace pipward::place
