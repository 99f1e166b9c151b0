// SPDX-License-Identifier: MIT
#include "pipward/cross/meeting_skill.h"

#include <algorithm>
#include <map>
#include <utility>

#include "pipward/cross/detail/bloom_course.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/meeting.h"
#include "pipward/math/squared.h"

namespace pipward::cross {
namespace {

constexpr int bins = 10;
constexpr double least_common_days = 2;

struct MeetingForecast {
    double probability = 0;
    bool came = false;
};

using Kind = std::pair<MeetingWay, bloom::DayOfYear>;
using ForecastsByKind = std::map<Kind, std::vector<MeetingForecast>>;

bool tells_whole_bloom(const bloom::ObservedStages& stages) {
    return stages.contains(first_bloom) && stages.contains(bloom_end);
}

bool bloomed_together(const bloom::ObservedStages& seed, const bloom::ObservedStages& donor) {
    const double first = std::max(seed.at(first_bloom), donor.at(first_bloom));
    const double last = std::min(seed.at(bloom_end), donor.at(bloom_end));
    return last - first >= least_common_days;
}

bool was_ready(const bloom::ObservedStages& seed, const bloom::ObservedStages& donor) {
    return donor.at(first_bloom) + detail::drying_days <= seed.at(bloom_end);
}

struct Side {
    const bloom::ObservedStages* observed;
    detail::BloomCourses courses;
};

std::vector<Side> sides_of(const bloom::PastForecast& past) {
    std::vector<Side> sides;
    for (const auto& [accession, observed] : past.observed) {
        const auto window = past.forecast.of_accession.find(accession);
        if (window != past.forecast.of_accession.end() && tells_whole_bloom(observed)) {
            sides.push_back(
                {&observed, detail::bloom_courses(past.forecast, past.forecast.windows[window->second])});
        }
    }
    return sides;
}

void add_pairs(ForecastsByKind& all, const bloom::PastForecast& past) {
    const auto sides = sides_of(past);
    for (const auto& seed : sides) {
        for (const auto& donor : sides) {
            if (&seed == &donor) {
                continue;
            }
            all[{MeetingWay::same_day, past.issued}].push_back(
                {detail::chance_same_day(seed.courses, donor.courses),
                 bloomed_together(*seed.observed, *donor.observed)});
            all[{MeetingWay::kept, past.issued}].push_back({detail::chance_kept(seed.courses, donor.courses),
                                                            was_ready(*seed.observed, *donor.observed)});
        }
    }
}

double share_that_came(const std::vector<MeetingForecast>& forecasts) {
    const auto came = std::ranges::count_if(forecasts, &MeetingForecast::came);
    return static_cast<double>(came) / static_cast<double>(forecasts.size());
}

MeetingScore score_of(const Kind& kind, const std::vector<MeetingForecast>& forecasts, double climatology) {
    MeetingScore score;
    score.way = kind.first;
    score.issued = kind.second;
    score.n = static_cast<int>(forecasts.size());
    for (const auto& [probability, came] : forecasts) {
        const double outcome = came ? 1 : 0;
        score.mean_probability += probability / score.n;
        score.observed_share += outcome / score.n;
        score.brier += math::squared(probability - outcome) / score.n;
        score.brier_climatology += math::squared(climatology - outcome) / score.n;
    }
    return score;
}

void add_scores(std::vector<MeetingScore>& scores, const Kind& kind,
                const std::vector<MeetingForecast>& forecasts) {
    const double climatology = share_that_came(forecasts);
    scores.push_back(score_of(kind, forecasts, climatology));
    std::map<int, std::vector<MeetingForecast>> of_bin;
    for (const auto& one : forecasts) {
        of_bin[std::min(bins - 1, static_cast<int>(one.probability * bins))].push_back(one);
    }
    for (const auto& [bin, members] : of_bin) {
        auto score = score_of(kind, members, climatology);
        score.probability_from = static_cast<double>(bin) / bins;
        score.probability_to = static_cast<double>(bin + 1) / bins;
        scores.push_back(score);
    }
}

}  // namespace

std::string_view to_text(MeetingWay way) {
    return way == MeetingWay::same_day ? "same_day" : "kept";
}

std::vector<MeetingScore> meeting_scores(const bloom::ForwardGround& ground,
                                         const bloom::ForwardRequest& request,
                                         const std::function<bool(double)>& progress) {
    auto averaged = request;
    averaged.methods = {bloom::BloomMethod::averaged};
    ForecastsByKind all;
    bloom::for_each_past_forecast(
        ground, averaged, [&](const bloom::PastForecast& one) { add_pairs(all, one); }, progress);
    std::vector<MeetingScore> scores;
    for (const auto& [kind, forecasts] : all) {
        add_scores(scores, kind, forecasts);
    }
    return scores;
}

}  // namespace pipward::cross
