// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

#include "pipward/place/row_recovery.h"

/// Orchards whose truth is known, seen through a noisy receiver. Same input, same orchard.
namespace pipward::testing {

struct OrchardForm {
    int rows = 10;
    int positions = 30;
    double row_distance = 4;
    double spacing = 2;
    double noise = 0.3;  ///< horizontal root mean square error: each axis has it over the root of two
    double missing = 0.1;
    double bearing = 74;
    double bend = 0.5;       ///< how far the rows' middle lies beside the chord of their ends
    double edge_lean = 0.2;  ///< by how much further along each metre across the rows begin
    bool oddities = true;    ///< two trees on one spot, and a stray point between rows
    std::uint64_t seed = 1;
};

struct TrueTree {
    int row = -1;  ///< -1 for the stray point
    int position = 0;
    bool doubled = false;
};

struct MadeOrchard {
    std::vector<place::LonLat> seen;
    std::vector<TrueTree> truth;
};

class Chance {
  public:
    explicit Chance(std::uint64_t seed) : state_(seed * 0x9e3779b97f4a7c15ULL + 1) {}
    double uniform() {  // splitmix64 (Steele, Lea, Flood 2014)
        state_ += 0x9e3779b97f4a7c15ULL;
        auto z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        return (static_cast<double>((z ^ (z >> 31)) >> 11) + 0.5) / 9007199254740992.0;
    }
    double normal() { return std::sqrt(-2 * std::log(uniform())) * std::cos(2 * M_PI * uniform()); }

  private:
    std::uint64_t state_;
};

inline MadeOrchard made_orchard(const OrchardForm& form) {
    MadeOrchard orchard;
    Chance chance(form.seed);
    const place::LonLat corner{9.301, 48.134};
    const auto see = [&](double along, double across, const TrueTree& tree) {
        const double t = 2 * along / (form.spacing * (form.positions - 1)) - 1;
        const auto on_line = place::way_from(corner, form.bearing, Metres{along});
        const auto place =
            place::way_from(on_line, form.bearing + 90, Metres{across + form.bend * (1 - t * t)});
        const double east = form.noise / std::sqrt(2.0) * chance.normal();
        const double north = form.noise / std::sqrt(2.0) * chance.normal();
        orchard.seen.push_back(place::way_from(place::way_from(place, 90, Metres{east}), 0, Metres{north}));
        orchard.truth.push_back(tree);
    };
    for (int row = 0; row < form.rows; ++row) {
        const double across = row * form.row_distance;
        for (int position = 0; position < form.positions; ++position) {
            if (chance.uniform() >= form.missing) {
                see(position * form.spacing + form.edge_lean * across, across, {row, position});
            }
        }
    }
    if (form.oddities) {
        const auto twin = orchard.truth.size() / 2;
        orchard.truth[twin].doubled = true;
        const auto& tree = orchard.truth[twin];
        const double across = tree.row * form.row_distance;
        see(tree.position * form.spacing + form.edge_lean * across, across, {tree.row, tree.position, true});
        see(form.spacing * 5, form.row_distance * 1.5, {});
    }
    return orchard;
}

struct Score {
    int right = 0;
    int wrong = 0;
    int open = 0;
    int wrong_oddities = 0;  ///< of the two on one spot and the stray point, numbered all the same
    Score& operator+=(const Score& more) {
        right += more.right;
        wrong += more.wrong;
        open += more.open;
        wrong_oddities += more.wrong_oddities;
        return *this;
    }
    int trees() const { return right + wrong + open; }
    double share(int part) const { return trees() == 0 ? 0 : static_cast<double>(part) / trees(); }
};

/// Trees with a place of their own are right, wrong or open. Two on one spot, and a stray point, should be
/// left open: what is numbered of them is counted apart.
inline Score score_of(const MadeOrchard& orchard, const place::Recovery& recovery) {
    Score score;
    for (std::size_t i = 0; i < orchard.truth.size(); ++i) {
        const auto& told = recovery.trees[i];
        const auto& truth = orchard.truth[i];
        if (truth.doubled || truth.row < 0) {
            score.wrong_oddities += told.doubt.empty() ? 1 : 0;
        } else if (!told.doubt.empty()) {
            ++score.open;
        } else if (told.row == truth.row && told.position == truth.position) {
            ++score.right;
        } else {
            ++score.wrong;
        }
    }
    return score;
}

}  // namespace pipward::testing
