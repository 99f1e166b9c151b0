// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "pipward/season/pipeline.h"

namespace pipward::season {

/// How a cross would be made this spring, the better way round.
struct CrossMeeting {
    std::string seed_parent;             ///< the one that had better bear the seed
    std::string pollen_parent;           ///< the other of the pair
    std::optional<cross::CrossWay> way;  ///< the likeliest; nothing where nothing can be told
};

/// Of every pair, as if each were a goal of the season with so many seedlings wanted. The place's own goals
/// stand aside meanwhile and are there again afterwards.
std::vector<CrossMeeting> meetings_of(const std::vector<std::pair<std::string, std::string>>& pairs,
                                      const std::vector<int>& seedlings, Place& place,
                                      const bloom::BloomForecast& forecast,
                                      const cross::CrossingAssumptions& assumptions);

}  // namespace pipward::season
