// SPDX-License-Identifier: MIT
#include "pipward/seed/cold_need.h"

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
    ColdNeed{"Malus domestica", 60, 90, manual_and_practice},
    ColdNeed{"Malus pumila", 60, 90, manual_and_practice},
    ColdNeed{"Malus baccata", 30, 30, manual},
    ColdNeed{"Malus coronaria", 120, 120, manual},
    ColdNeed{"Malus floribunda", 60, 120, manual},
    ColdNeed{"Malus fusca", 90, 90, manual},
    ColdNeed{"Malus ioensis", 60, 60, manual},
    ColdNeed{"Malus robusta", 60, 120, manual},
    ColdNeed{"Pyrus communis", 90, 90, manual},
    ColdNeed{"Pyrus pyrifolia", 120, 170, manual},
    ColdNeed{"Pyrus ussuriensis", 100, 100, manual},
    ColdNeed{"Pyrus nivalis", 110, 110, manual},
    ColdNeed{"Pyrus elaeagrifolia", 90, 127, manual},
    ColdNeed{"Pyrus betulifolia", 55, 86, manual},
    ColdNeed{"Pyrus calleryana", 30, 87, manual},
    ColdNeed{"Pyrus dimorphophylla", 65, 88, manual},
    ColdNeed{"Pyrus fauriei", 38, 88, manual},
    ColdNeed{"Pyrus gharbiana", 60, 78, manual},
    ColdNeed{"Pyrus mamorensis", 50, 58, manual},
    ColdNeed{"Pyrus amygdaliformis", 25, 27, manual},
    ColdNeed{"Pyrus pashia", 15, 43, manual},
};

std::string_view genus_of(std::string_view species) {
    return species.substr(0, species.find(' '));
}

}  // namespace

std::span<const ColdNeed> cold_needs() {
    return needs;
}

std::optional<ColdNeed> cold_need_of(std::string_view species) {
    if (const auto own = std::ranges::find(needs, species, &ColdNeed::species); own != needs.end()) {
        return *own;
    }
    const auto kin = std::ranges::find_if(
        needs, [&](const ColdNeed& need) { return genus_of(need.species) == genus_of(species); });
    return kin == needs.end() ? std::nullopt : std::optional{*kin};
}

}  // namespace pipward::seed
