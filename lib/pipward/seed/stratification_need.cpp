// SPDX-License-Identifier: MIT
#include "pipward/seed/stratification_need.h"

#include <algorithm>
#include <array>

namespace pipward::seed {
namespace {

constexpr std::string_view manual =
    "Woody Plant Seed Manual, USDA Forest Service Agriculture Handbook 727 (2008)";
constexpr std::string_view manual_and_practice =
    "Woody Plant Seed Manual, USDA Agriculture Handbook 727 (2008): 60; up to 90 is common practice";

// The first of a genus stands for its species that are not in the list.
constexpr std::array needs{
    StratificationNeed{"Malus domestica", 60, 90, manual_and_practice},
    StratificationNeed{"Malus pumila", 60, 90, manual_and_practice},
    StratificationNeed{"Malus baccata", 30, 30, manual},
    StratificationNeed{"Malus coronaria", 120, 120, manual},
    StratificationNeed{"Malus floribunda", 60, 120, manual},
    StratificationNeed{"Malus fusca", 90, 90, manual},
    StratificationNeed{"Malus ioensis", 60, 60, manual},
    StratificationNeed{"Malus robusta", 60, 120, manual},
    StratificationNeed{"Pyrus communis", 90, 90, manual},
    StratificationNeed{"Pyrus pyrifolia", 120, 170, manual},
    StratificationNeed{"Pyrus ussuriensis", 100, 100, manual},
    StratificationNeed{"Pyrus nivalis", 110, 110, manual},
    StratificationNeed{"Pyrus elaeagrifolia", 90, 127, manual},
    StratificationNeed{"Pyrus betulifolia", 55, 86, manual},
    StratificationNeed{"Pyrus calleryana", 30, 87, manual},
    StratificationNeed{"Pyrus dimorphophylla", 65, 88, manual},
    StratificationNeed{"Pyrus fauriei", 38, 88, manual},
    StratificationNeed{"Pyrus gharbiana", 60, 78, manual},
    StratificationNeed{"Pyrus mamorensis", 50, 58, manual},
    StratificationNeed{"Pyrus amygdaliformis", 25, 27, manual},
    StratificationNeed{"Pyrus pashia", 15, 43, manual},
};

std::string_view genus_of(std::string_view species) {
    return species.substr(0, species.find(' '));
}

}  // namespace

std::span<const StratificationNeed> stratification_needs() {
    return needs;
}

std::optional<StratificationNeed> stratification_need_of(std::string_view species) {
    if (const auto own = std::ranges::find(needs, species, &StratificationNeed::species);
        own != needs.end()) {
        return *own;
    }
    const auto kin = std::ranges::find_if(
        needs, [&](const StratificationNeed& need) { return genus_of(need.species) == genus_of(species); });
    return kin == needs.end() ? std::nullopt : std::optional{*kin};
}

}  // namespace pipward::seed
