// SPDX-License-Identifier: MIT
#include "pipward/record/words.h"

#include <array>

namespace pipward::record {

std::span<const Word<TreePurpose>> words(TreePurpose) {
    static constexpr std::array table{
        Word<TreePurpose>{TreePurpose::parent, "parent", "kept as a parent of crosses"},
        Word<TreePurpose>{TreePurpose::seedling, "seedling", "a seedling under test"},
        Word<TreePurpose>{TreePurpose::pollinizer, "pollinizer", "kept to pollinate its neighbours"},
        Word<TreePurpose>{TreePurpose::other, "other", "any other tree"},
    };
    return table;
}

std::span<const Word<PlacedBy>> words(PlacedBy) {
    static constexpr std::array table{
        Word<PlacedBy>{PlacedBy::surveyed, "surveyed", "measured on the ground"},
        Word<PlacedBy>{PlacedBy::computed, "computed", "computed from its row and position"},
        Word<PlacedBy>{PlacedBy::digitised, "digitised", "drawn on a map or picture"},
        Word<PlacedBy>{PlacedBy::estimated, "estimated", "estimated, to be measured"},
    };
    return table;
}

std::span<const Word<AccessionKind>> words(AccessionKind) {
    static constexpr std::array table{
        Word<AccessionKind>{AccessionKind::cultivar, "cultivar", "a named variety"},
        Word<AccessionKind>{AccessionKind::selection, "selection", "a seedling chosen and kept by grafting"},
        Word<AccessionKind>{AccessionKind::seedling, "seedling", "a single seedling"},
        Word<AccessionKind>{AccessionKind::species, "species", "a wild species or type of it"},
        Word<AccessionKind>{AccessionKind::unknown, "unknown", "not known"},
    };
    return table;
}

std::span<const Word<WeatherSource>> words(WeatherSource) {
    static constexpr std::array table{
        Word<WeatherSource>{WeatherSource::observed, "observed", "measured at the station"},
        Word<WeatherSource>{WeatherSource::forecast, "forecast", "forecast by a weather service"},
    };
    return table;
}

std::span<const Word<Store>> words(Store) {
    static constexpr std::array table{
        Word<Store>{Store::room, "room", "at room temperature, about 20 °C"},
        Word<Store>{Store::refrigerator, "refrigerator", "dry at about 4 °C"},
        Word<Store>{Store::freezer, "freezer", "dry at about -20 °C"},
        Word<Store>{Store::deep_freezer, "deep_freezer", "dry at about -80 °C"},
    };
    return table;
}

std::span<const Word<BranchTask>> words(BranchTask) {
    static constexpr std::array table{
        Word<BranchTask>{BranchTask::bag, "bag", "closed flowers bagged"},
        Word<BranchTask>{BranchTask::emasculate, "emasculate", "anthers removed from closed flowers"},
        Word<BranchTask>{BranchTask::unbag, "unbag", "bags removed"},
        Word<BranchTask>{BranchTask::cut_branch, "cut_branch", "donor branch cut, to be forced"},
        Word<BranchTask>{BranchTask::indoor_bloom, "indoor_bloom", "forced branch in bloom indoors"},
    };
    return table;
}

std::span<const Word<TraitKind>> words(TraitKind) {
    static constexpr std::array table{
        Word<TraitKind>{TraitKind::leaf, "leaf", "scored on leaves or shoots"},
        Word<TraitKind>{TraitKind::bloom, "bloom", "scored on flowers"},
        Word<TraitKind>{TraitKind::fruit, "fruit", "scored on fruit"},
        Word<TraitKind>{TraitKind::tree, "tree", "scored on the tree as a whole"},
    };
    return table;
}

}  // namespace pipward::record
