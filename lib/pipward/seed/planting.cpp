// SPDX-License-Identifier: MIT
#include "pipward/seed/planting.h"

#include <algorithm>
#include <array>
#include <random>

namespace pipward::seed {
namespace {

struct Plot {
    std::size_t family = 0;
    int seedlings = 0;
};

/// The standard library's shuffle may differ from one system to the next; this one does not.
void shuffle(std::vector<Plot>& plots, std::mt19937& source) {
    for (std::size_t left = plots.size(); left > 1; --left) {
        std::swap(plots[left - 1], plots[source() % left]);
    }
}

/// The seedlings of a family that fall to one of the blocks: the same for all, give or take one.
int share_of_block(int seedlings, int block, int blocks) {
    return seedlings * (block + 1) / blocks - seedlings * block / blocks;
}

void add_plots(std::vector<Plot>& plots, std::size_t family, int seedlings, int plot) {
    for (; seedlings > 0; seedlings -= plot) {
        plots.push_back({family, std::min(seedlings, plot)});
    }
}

std::vector<Plot> mixed(const std::vector<Family>& families, const PlantingWish& wish) {
    std::vector<Plot> all;
    std::mt19937 source(wish.chance);
    const int blocks = std::max(1, wish.blocks);
    for (int block = 0; block < blocks; ++block) {
        std::vector<Plot> plots;
        for (std::size_t i = 0; i < families.size(); ++i) {
            add_plots(plots, i, share_of_block(families[i].seedlings, block, blocks), std::max(1, wish.plot));
        }
        shuffle(plots, source);
        all.insert(all.end(), plots.begin(), plots.end());
    }
    return all;
}

std::vector<Plot> in_order(const std::vector<Family>& families, const PlantingWish& wish) {
    if (wish.order == PlantingOrder::mixed) {
        return mixed(families, wish);
    }
    std::vector<Plot> plots;
    for (std::size_t i = 0; i < families.size(); ++i) {
        plots.push_back({i, families[i].seedlings});
    }
    return plots;
}

bool is_check_place(std::size_t place, int check_every) {
    return check_every > 0 && (place + 1) % static_cast<std::size_t>(check_every) == 0;
}

}  // namespace

std::vector<PlantedPlace> plan_planting(const std::vector<Family>& families, std::size_t places,
                                        const PlantingWish& wish) {
    std::vector<PlantedPlace> planted;
    std::size_t place = 0;
    for (const auto& plot : in_order(families, wish)) {
        for (int i = 0; i < plot.seedlings; ++i) {
            while (place < places && is_check_place(place, wish.check_every)) {
                planted.push_back({place++, 0, true});
            }
            if (place >= places) {
                return planted;
            }
            planted.push_back({place++, plot.family, false});
        }
    }
    return planted;
}

std::size_t places_needed(int seedlings, int check_every) {
    std::size_t place = 0;
    for (int left = seedlings; left > 0; ++place) {
        left -= is_check_place(place, check_every) ? 0 : 1;
    }
    return place;
}

std::span<const Word<PlantingOrder>> words(PlantingOrder) {
    static constexpr std::array table{
        Word<PlantingOrder>{PlantingOrder::together, "together", "each family as one group"},
        Word<PlantingOrder>{PlantingOrder::mixed, "mixed",
                            "families in short plots, in random order, alike in every part of the rows"}};
    return table;
}

}  // namespace pipward::seed
