// SPDX-License-Identifier: MIT
#include "pipward/place/sheet_walk.h"

#include <algorithm>

#include "pipward/value/complaint.h"

namespace pipward::place {
namespace {

void expect_a_days_walk(std::size_t stops) {
    if (stops > most_stops) {
        throw Error(Trouble::input,
                    about_table(Level::error, "tree",
                                say("{} trees are too many for one walk; {} is the most.", stops, most_stops),
                                say("Choose fewer days.")));
    }
}

}  // namespace

SheetWalk walk_to(const std::set<std::string>& labels, const Orchard& orchard,
                  const std::optional<WalkEnd>& start, const std::function<void(double)>& progress) {
    WalkWish wish;
    std::vector<const Tree*> without_place;
    for (std::size_t i = 0; i < orchard.trees.size(); ++i) {
        const auto& tree = orchard.trees[i];
        if (labels.contains(tree.label)) {
            tree.at ? wish.trees.push_back(static_cast<std::uint32_t>(i)) : without_place.push_back(&tree);
        }
    }
    expect_a_days_walk(wish.trees.size());
    wish.start = start;
    wish.rules = {Metres{1}, Metres{0}};
    SheetWalk walk;
    if (!wish.trees.empty()) {
        const auto planned = plan_walk(orchard, wish, progress);
        for (const auto& leg : planned.legs) {
            walk.metres += leg.metres;
            if (leg.tree) {
                walk.stops.push_back({&orchard.trees[*leg.tree], walk.metres});
            }
        }
    }
    std::ranges::sort(without_place, {}, &Tree::label);
    for (const auto* tree : without_place) {
        walk.stops.push_back({tree, std::nullopt});
    }
    return walk;
}

}  // namespace pipward::place
