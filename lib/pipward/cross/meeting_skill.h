// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string_view>
#include <vector>

#include "pipward/bloom/forward.h"

/// Whether the probabilities that a plan relies on are the shares in which it came about.
namespace pipward::cross {

/// How two accessions can meet.
enum class MeetingWay {
    same_day,  ///< both in bloom, from first bloom to the end, on the same days, two of them at least
    kept,      ///< pollen of the donor's first flowers is dry before the seed parent's bloom ends
};
/// The word as above: "same_day".
std::string_view to_text(MeetingWay way);

/// Probabilities of one tenth of the scale, or (0 to 1) of all, with what came; each day of issue apart.
struct MeetingScore {
    MeetingWay way = MeetingWay::same_day;  ///< the one scored
    bloom::DayOfYear issued;                ///< when the forecasts were made
    double probability_from = 0;            ///< least of the tenth, 0..1
    double probability_to = 1;              ///< greatest of the tenth, 0..1
    int n = 0;                              ///< pairs of accessions in springs in which both were observed
    double mean_probability = 0;            ///< forecast, 0..1
    double observed_share = 0;              ///< in which it came about, 0..1
    double brier = 0;  ///< mean square of probability less what came, 1 or 0 (Brier 1950), 0..1
    /// The same of the share over all pairs and springs, as if known beforehand.
    double brier_climatology = 0;
};

/// Every ordered pair of accessions in every past spring in which first bloom and the end of both were
/// observed, as forecast by the averaged method, whatever methods are asked for. Germination is not in the
/// probabilities. By way and day of issue: all together, then each tenth of the scale in which any fell.
/// `progress` is told 0..1 and returns false to stop (Error, cancelled).
std::vector<MeetingScore> meeting_scores(const bloom::ForwardGround& ground,
                                         const bloom::ForwardRequest& request,
                                         const std::function<bool(double)>& progress = {});

}  // namespace pipward::cross
