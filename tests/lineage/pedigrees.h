// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// Pedigrees made up for the tests.
namespace pipward::testing {

struct Pedigree {
    std::vector<Accession> accessions;
    std::vector<BlendMember> blends;

    void add(const std::string& name, std::optional<std::string> seed = {},
             std::optional<std::string> pollen = {}, AccessionKind kind = AccessionKind::cultivar) {
        Accession accession;
        accession.name = name;
        accession.kind = kind;
        accession.seed_parent = std::move(seed);
        accession.pollen_parent = std::move(pollen);
        accessions.push_back(std::move(accession));
    }
    void add_sport(const std::string& name, const std::string& original) {
        add(name);
        accessions.back().sport_of = original;
    }
    void mix(const std::string& name, const std::string& member, std::optional<double> share = {}) {
        BlendMember row;
        row.name = name;
        row.member = member;
        if (share) {
            row.share = Share{*share};
        }
        blends.push_back(row);
    }
};

/// The same numbers on every machine: a linear congruential generator, figures of Knuth's MMIX.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}
    int below(int n) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<int>((state_ >> 33U) % static_cast<std::uint64_t>(n));
    }

  private:
    std::uint64_t state_;
};

/// Founders, then generations of crosses among the one before and now and then an older one; some blends,
/// sports, and unknown parents. The last accession is of the last generation.
inline Pedigree made_pedigree(int generations, int a_generation, std::uint64_t seed) {
    Pedigree made;
    Dice dice(seed);
    const auto name = [](int generation, int i) {
        return "G" + std::to_string(generation) + "-" + std::to_string(i);
    };
    for (int i = 0; i < a_generation; ++i) {
        made.add(name(0, i));
    }
    for (int g = 1; g <= generations; ++g) {
        const auto parent = [&] {
            const int back = g > 1 && dice.below(5) == 0 ? 2 : 1;
            return name(g - back, dice.below(a_generation));
        };
        const auto mix = "Mix " + std::to_string(g);
        for (int n = 0; n < 3; ++n) {
            made.mix(mix, parent());
        }
        for (int i = 0; i < a_generation; ++i) {
            const int kind = dice.below(40);
            if (kind == 0 && i > 0) {
                made.add_sport(name(g, i), name(g, i - 1));
            } else if (kind == 1) {
                made.add(name(g, i), parent());
            } else {
                made.add(name(g, i), parent(), kind == 2 ? mix : parent());
            }
        }
    }
    return made;
}

}  // namespace pipward::testing
