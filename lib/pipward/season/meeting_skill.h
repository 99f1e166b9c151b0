// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "pipward/season/pipeline.h"

/// Whether the chances that a plan lives on are the shares in which it came about.
namespace pipward::season {

enum class MeetingWay {
    same_day,  ///< both in bloom, from first bloom to the end, on the same days, two of them at least
    kept,      ///< pollen of the donor's first flowers is dry before the seed parent's bloom ends
};
std::string_view to_text(MeetingWay way);

/// Chances of one tenth of the scale, or (0 to 1) of all, with what came; `issued` apart.
struct MeetingScore {
    MeetingWay way = MeetingWay::same_day;
    bloom::DayOfYear issued;
    double chance_from = 0;
    double chance_to = 1;
    int n = 0;  ///< pairs of accessions in springs in which both were noted
    double mean_chance = 0;
    double observed_share = 0;
    double brier = 0;              ///< mean square of chance less what came, 1 or 0 (Brier 1950)
    double brier_climatology = 0;  ///< of the share over all pairs and springs, told beforehand
};

/// Every ordered pair of accessions in every past spring in which first bloom and the end of both were noted,
/// as foretold by the averaged method. Germination is not in the chances.
std::vector<MeetingScore> score_meetings(Place& place, const Past& past, const bloom::ForwardRequest& request,
                                         const Step& step = quietly());

}  // namespace pipward::season
