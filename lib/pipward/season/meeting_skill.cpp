// SPDX-License-Identifier: MIT
#include "pipward/season/meeting_skill.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

#include "pipward/cross/detail/bloom_course.h"
#include "pipward/cross/detail/forcing.h"
#include "pipward/cross/detail/meeting.h"

namespace pipward::season {
namespace {

constexpr int bins = 10;
constexpr double least_common_days = 2;

struct Foretold {
    double chance = 0;
    bool came = false;
};

using Kind = std::pair<MeetingWay, bloom::DayOfYear>;
using AllForetold = std::map<Kind, std::vector<Foretold>>;

bool tells_whole_bloom(const bloom::NotedStages& stages) {
    return stages.contains(first_bloom) && stages.contains(bloom_end);
}

bool bloomed_together(const bloom::NotedStages& seed, const bloom::NotedStages& donor) {
    const double first = std::max(seed.at(first_bloom), donor.at(first_bloom));
    const double last = std::min(seed.at(bloom_end), donor.at(bloom_end));
    return last - first >= least_common_days;
}

bool was_ready(const bloom::NotedStages& seed, const bloom::NotedStages& donor) {
    return donor.at(first_bloom) + cross::drying_days <= seed.at(bloom_end);
}

struct Side {
    const bloom::NotedStages* noted;
    cross::BloomCourses courses;
};

std::vector<Side> sides_of(const bloom::PastForecast& past) {
    std::vector<Side> sides;
    for (const auto& [accession, noted] : past.noted) {
        const auto window = past.forecast.of_accession.find(accession);
        if (window != past.forecast.of_accession.end() && tells_whole_bloom(noted)) {
            sides.push_back(
                {&noted, cross::bloom_courses(past.forecast, past.forecast.windows[window->second])});
        }
    }
    return sides;
}

void add_pairs(AllForetold& all, const bloom::PastForecast& past) {
    const auto sides = sides_of(past);
    for (const auto& seed : sides) {
        for (const auto& donor : sides) {
            if (&seed == &donor) {
                continue;
            }
            all[{MeetingWay::same_day, past.issued}].push_back(
                {cross::chance_same_day(seed.courses, donor.courses),
                 bloomed_together(*seed.noted, *donor.noted)});
            all[{MeetingWay::kept, past.issued}].push_back(
                {cross::chance_kept(seed.courses, donor.courses), was_ready(*seed.noted, *donor.noted)});
        }
    }
}

double share_that_came(const std::vector<Foretold>& foretold) {
    const auto came = std::ranges::count_if(foretold, &Foretold::came);
    return static_cast<double>(came) / static_cast<double>(foretold.size());
}

double squared(double value) {
    return value * value;
}

MeetingScore score_of(const Kind& kind, const std::vector<Foretold>& foretold, double climatology) {
    MeetingScore score;
    score.way = kind.first;
    score.issued = kind.second;
    score.n = static_cast<int>(foretold.size());
    for (const auto& [chance, came] : foretold) {
        const double outcome = came ? 1 : 0;
        score.mean_chance += chance / score.n;
        score.observed_share += outcome / score.n;
        score.brier += squared(chance - outcome) / score.n;
        score.brier_climatology += squared(climatology - outcome) / score.n;
    }
    return score;
}

void add_scores(std::vector<MeetingScore>& scores, const Kind& kind, const std::vector<Foretold>& foretold) {
    const double climatology = share_that_came(foretold);
    scores.push_back(score_of(kind, foretold, climatology));
    std::map<int, std::vector<Foretold>> of_bin;
    for (const auto& one : foretold) {
        of_bin[std::min(bins - 1, static_cast<int>(one.chance * bins))].push_back(one);
    }
    for (const auto& [bin, members] : of_bin) {
        auto score = score_of(kind, members, climatology);
        score.chance_from = static_cast<double>(bin) / bins;
        score.chance_to = static_cast<double>(bin + 1) / bins;
        scores.push_back(score);
    }
}

}  // namespace

std::string_view to_text(MeetingWay way) {
    return way == MeetingWay::same_day ? "same_day" : "kept";
}

std::vector<MeetingScore> score_meetings(Place& place, const Past& past, const bloom::ForwardRequest& request,
                                         const Step& step) {
    auto averaged = request;
    averaged.methods = {bloom::BloomMethod::averaged};
    const auto progress = [&](double share) {
        step(share, say("Foretelling past meetings"));
        return true;
    };
    AllForetold all;
    bloom::for_each_past_forecast(
        {place.orchard, place.station, place.latitude, place.as_of, past.seasons}, averaged,
        [&](const bloom::PastForecast& one) { add_pairs(all, one); }, progress);
    std::vector<MeetingScore> scores;
    for (const auto& [kind, foretold] : all) {
        add_scores(scores, kind, foretold);
    }
    return scores;
}

}  // namespace pipward::season
