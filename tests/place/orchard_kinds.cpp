// SPDX-License-Identifier: MIT
#include "place/orchard_kinds.h"

#include <algorithm>
#include <array>
#include <numbers>

namespace pipward::testing {
namespace {

using math::PlanePoint;
using std::numbers::pi;
using Place = std::function<PlanePoint(int, int)>;

constexpr place::LonLat corner{9.301, 48.134};

PlanePoint right(double metres) {
    return {0, -metres};
}

/// Even rows; `bend` metres to the right of so many metres along.
Place bent(double distance, double spacing, std::function<double(double)> bend) {
    return [=](int row, int position) {
        const double along = position * spacing;
        return PlanePoint{along, 0} + right(row * distance + bend(along));
    };
}

Place even(double distance, double spacing) {
    return bent(distance, spacing, [](double) { return 0.0; });
}

/// Rows by where they lie across.
Place across(std::function<double(int)> of_row, double spacing) {
    return [=](int row, int position) { return PlanePoint{position * spacing, 0} + right(of_row(row)); };
}

/// Around a centre on the right: the first row is the outermost, of this radius; positions evenly along each.
/// The middle of the rows runs along the bearing.
Place arcs(double radius, double distance, double spacing, int positions) {
    return [=](int row, int position) {
        const double own = radius - row * distance;
        const double angle = (position - (positions - 1) / 2.0) * spacing / own;
        return PlanePoint{own * std::sin(angle), own * std::cos(angle) - radius};
    };
}

/// Each row is turned a little against the one before it, about a point far behind.
Place fan(double degrees, double distance, double spacing, bool straight_edge) {
    return [=](int row, int position) {
        const double turn = degrees * pi / 180;
        const double far = distance / turn;
        const double angle = row * turn;
        const double begin = straight_edge ? far / std::cos(angle) : far;
        const double out = begin + position * spacing;
        return PlanePoint{out * std::cos(angle) - far, -out * std::sin(angle)};
    };
}

Place shifted(Place place, std::function<double(int, int)> along) {
    return [=](int row, int position) { return place(row, position) + PlanePoint{along(row, position), 0}; };
}

double terrace(int row) {
    static constexpr std::array widths{3.0, 4.6, 6.0, 3.7, 5.2, 3.2, 5.7, 4.1};
    double at = 0;
    for (int i = 0; i < row; ++i) {
        at += widths[static_cast<std::size_t>(i) % widths.size()];
    }
    return at;
}

double s_bend(double metres, double along, double length) {
    return metres * std::sin(2 * pi * along / length);
}

std::vector<OrchardKind> make_kinds() {
    std::vector<OrchardKind> kinds;
    const auto add = [&](OrchardKind kind) { kinds.push_back(std::move(kind)); };
    add({.name = "even rows", .family = "even", .place = even(4, 2)});
    add({.name = "even rows, 3 m by 1 m",
         .family = "even",
         .rows = 12,
         .positions = 60,
         .distance = 3,
         .spacing = 1,
         .place = even(3, 1)});
    add({.name = "even rows, 5 m by 3 m, slanting edge",
         .family = "even",
         .rows = 12,
         .distance = 5,
         .spacing = 3,
         .place = shifted(even(5, 3), [](int row, int) { return row * 1.1; })});
    add({.name = "S of 1 m", .family = "gently bent", .place = bent(4, 2, [](double along) {
                                                          return s_bend(1, along, 80);
                                                      })});
    add({.name = "arc of 300 m", .family = "gently bent", .place = arcs(300, 4, 2, 40)});
    add({.name = "contour rows, 120 m", .family = "contour", .place = arcs(120, 4, 2, 40)});
    add({.name = "long contour rows, 120 m",
         .family = "contour",
         .positions = 70,
         .place = arcs(120, 4, 2, 70)});
    add({.name = "S of 3 m", .family = "S of 3 m", .place = bent(4, 2, [](double along) {
                                                       return s_bend(3, along, 80);
                                                   })});
    add({.name = "fan of 1.2 degrees, arc edge", .family = "fan", .place = fan(1.2, 4, 2, false)});
    add({.name = "fan of 1.2 degrees, straight edge",
         .family = "fan",
         .rows = 12,
         .distance = 3.5,
         .spacing = 1.5,
         .place = fan(1.2, 3.5, 1.5, true)});
    add({.name = "terraces", .family = "terraces", .place = across(terrace, 2)});
    add({.name = "alley of 6 m, rows 4 m",
         .family = "alley",
         .place = across([](int row) { return row * 4 + (row / 3) * 2.0; }, 2)});
    add({.name = "alley of 6 m, rows 3 m",
         .family = "alley",
         .distance = 3,
         .spacing = 1.5,
         .place = across([](int row) { return row * 3 + (row / 3) * 3.0; }, 1.5)});
    add({.name = "staggered by half", .family = "staggered", .place = shifted(even(4, 2), [](int row, int) {
                                                                 return row % 2 * 1.0;
                                                             })});
    add({.name = "spacings 2.0 and 2.5", .family = "two spacings", .place = [](int row, int position) {
             return PlanePoint{position * (row % 2 == 0 ? 2.0 : 2.5), 0} + right(row * 4);
         }});
    add({.name = "cut corner, slanting",
         .family = "cut corner",
         .truth_from_first = true,
         .place = even(4, 2),
         .planted = [](int row, int position) { return position >= std::max(0, row - 7) * 2; }});
    add({.name = "cut corner, a step",
         .family = "cut corner",
         .truth_from_first = true,
         .place = even(4, 2),
         .planted = [](int row, int position) { return position >= (row < 8 ? 0 : 9); }});
    add({.name = "interplants", .family = "interplants", .interplants = 0.15, .place = even(4, 2)});
    add({.name = "interplants, 5 m by 3 m",
         .family = "interplants",
         .distance = 5,
         .spacing = 3,
         .interplants = 0.15,
         .place = even(5, 3)});
    add({.name = "replanting off the grid beyond a road",
         .family = "replanting",
         .place = shifted(even(4, 2), [](int, int position) { return position < 20 ? 0.0 : 6.9; })});
    return kinds;
}

double student3(Chance& chance) {
    const double z = chance.normal();
    double sum = 0;
    for (int i = 0; i < 3; ++i) {
        const double one = chance.normal();
        sum += one * one;
    }
    return z / std::sqrt(sum / 3);
}

/// The receiver's errors, tree by tree in the order of the walk; metres, on each axis.
class Receiver {
  public:
    explicit Receiver(const Survey& survey, double spacing)
        : model_(survey.model), sd_(survey.noise * spacing), chance_(survey.seed * 7919 + 13) {
        drift_ = {sd_ * chance_.normal(), sd_ * chance_.normal()};
    }
    PlanePoint error() {
        if (model_ == NoiseModel::white) {
            return {sd_ * chance_.normal(), sd_ * chance_.normal()};
        }
        if (model_ == NoiseModel::heavy) {
            return {sd_ * student3(chance_) / std::sqrt(3.0), sd_ * student3(chance_) / std::sqrt(3.0)};
        }
        // Autoregressive of the first order, its memory 30 trees, with a tenth of it anew at every tree.
        const double kept = std::exp(-1.0 / 30);
        const double fresh = sd_ * std::sqrt(1 - kept * kept);
        drift_ = drift_ * kept + PlanePoint{fresh * chance_.normal(), fresh * chance_.normal()};
        return drift_ + PlanePoint{0.1 * sd_ * chance_.normal(), 0.1 * sd_ * chance_.normal()};
    }

  private:
    NoiseModel model_;
    double sd_;
    Chance chance_;
    PlanePoint drift_{};
};

place::LonLat on_earth(PlanePoint at, double bearing) {
    const auto ahead = math::way_at(bearing);
    const auto ground = ahead * at.east + left_of(ahead) * at.north;
    return place::way_from(corner, math::bearing_deg(ground), Metres{math::length(ground)});
}

}  // namespace

std::span<const Told> all_told() {
    static constexpr std::array told{Told{"nothing"}, Told{"bearing", true}, Told{"spacing", false, true},
                                     Told{"distance", false, false, true}, Told{"all", true, true, true}};
    return told;
}

std::span<const OrchardKind> orchard_kinds() {
    static const auto kinds = make_kinds();
    return kinds;
}

MadeOrchard planted(const OrchardKind& kind, const Survey& survey) {
    MadeOrchard orchard;
    Chance chance(survey.seed);
    Receiver receiver(survey, kind.spacing);
    const auto see = [&](PlanePoint at, const TrueTree& tree) {
        orchard.seen.push_back(on_earth(at + receiver.error(), kind.bearing));
        orchard.truth.push_back(tree);
    };
    for (int row = 0; row < kind.rows; ++row) {
        int first = 0;
        while (kind.truth_from_first && kind.planted && !kind.planted(row, first)) {
            ++first;
        }
        for (int step = 0; step < kind.positions; ++step) {
            const int position = row % 2 == 0 ? step : kind.positions - 1 - step;
            if (kind.planted && !kind.planted(row, position)) {
                continue;
            }
            if (chance.uniform() >= kind.missing) {
                see(kind.place(row, position), {row, position - first});
            }
            if (chance.uniform() < kind.interplants) {
                const auto middle = kind.place(row, position) * 0.5 + kind.place(row, position + 1) * 0.5;
                see(middle, {});
            }
        }
    }
    return orchard;
}

MadeOrchard wood(int trees, double least, std::uint64_t seed) {
    MadeOrchard orchard;
    Chance chance(seed);
    const double side = std::sqrt(trees * 8.0);
    std::vector<PlanePoint> taken;
    for (int tries = 0; tries < 100 * trees && std::ssize(taken) < trees; ++tries) {
        const PlanePoint at{side * chance.uniform(), side * chance.uniform()};
        bool free = true;
        for (const auto& other : taken) {
            free = free && (least <= 0 || math::length(other - at) >= least);
        }
        if (free) {
            taken.push_back(at);
            orchard.seen.push_back(on_earth(at, 74));
            orchard.truth.push_back({});
        }
    }
    return orchard;
}

OrchardKind varied(const OrchardKind& kind, std::uint64_t seed) {
    auto other = kind;
    Chance chance(seed * 104729 + 7);
    other.rows = 8 + static_cast<int>(13 * chance.uniform());
    // A corner is cut within as many rows as the kind has.
    other.rows = kind.planted ? std::max(other.rows, kind.rows) : other.rows;
    // Northwards, for so positions count where no bearing is told.
    other.bearing = std::fmod(280 + std::floor(161 * chance.uniform()), 360.0);
    other.missing = 0.02 + 0.18 * chance.uniform();
    return other;
}

Count& Count::operator+=(const Count& more) {
    right += more.right;
    wrong += more.wrong;
    open += more.open;
    return *this;
}

Count count_of(const MadeOrchard& orchard, std::span<const place::NumberedTree> got) {
    Count count;
    for (std::size_t i = 0; i < orchard.truth.size(); ++i) {
        const auto& truth = orchard.truth[i];
        if (!got[i].doubt.empty()) {
            count.open += truth.row >= 0 ? 1 : 0;
        } else if (truth.row >= 0 && got[i].row == truth.row && got[i].position == truth.position) {
            ++count.right;
        } else {
            ++count.wrong;
        }
    }
    return count;
}

std::span<const place::NumberedTree> answered(const MadeOrchard& orchard, const place::Recovery& got) {
    if (!got.question) {
        return got.trees;
    }
    return std::ranges::max_element(
               got.question->answers, {},
               [&](const place::RowAnswer& answer) { return count_of(orchard, answer.trees).right; })
        ->trees;
}

place::RecoveryRule rule_of(const OrchardKind& kind, const Told& told) {
    place::RecoveryRule rule;
    if (told.bearing) {
        rule.bearing_deg = kind.bearing - 4;
    }
    if (told.spacing) {
        rule.spacing = Metres{kind.spacing * 1.03};
    }
    if (told.distance) {
        rule.row_distance = Metres{kind.distance * 0.97};
    }
    return rule;
}

}  // namespace pipward::testing
