// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/observation_findings.h"

#include <fmt/format.h>

namespace pipward::bloom::detail {
namespace {

Sentence not_learned_from(int observations, bool under_way) {
    if (under_way) {
        return observations == 1 ? say("1 observation of this season is not used in the fit: its weather is "
                                       "not complete yet.")
                                 : say("{} observations of this season are not used in the fit: its weather "
                                       "is not complete yet.",
                                       observations);
    }
    return observations == 1
               ? say("1 observation of this season is not used in the fit: its weather is not complete.")
               : say("{} observations of this season are not used in the fit: its weather is not complete.",
                     observations);
}

Finding without_weather(Season season, int observations, bool under_way) {
    Finding finding;
    finding.level = Level::notice;
    finding.table = "bloom_observation";
    finding.field = "observed_on";
    finding.value = fmt::format("{}", season.year);
    finding.message = not_learned_from(observations, under_way);
    finding.remedy =
        under_way ? say("While the season is under way its observations update its own forecast instead.")
                  : say("Add the station's days from 1 October (in the south 1 April) to the end of bloom.");
    return finding;
}

constexpr std::size_t few_seasons_to_name = 3;

Finding seasons_without_weather(const ObservationsOfSeasons& without) {
    int observations = 0;
    for (const auto& [season, count] : without) {
        observations += count;
    }
    auto finding = without_weather(without.begin()->first, observations, false);
    finding.value = fmt::format("{} to {}", without.begin()->first.year, without.rbegin()->first.year);
    finding.message =
        say("{} observations of {} seasons are not used in the fit: their weather is not complete.",
            observations, without.size());
    return finding;
}

}  // namespace

void add_without_weather(Findings& findings, ObservationsOfSeasons without, Season under_way) {
    if (const auto now = without.extract(under_way)) {
        findings.push_back(without_weather(under_way, now.mapped(), true));
    }
    if (without.size() > few_seasons_to_name) {
        findings.push_back(seasons_without_weather(without));
        return;
    }
    for (const auto& [season, observations] : without) {
        findings.push_back(without_weather(season, observations, false));
    }
}

Finding out_of_season(const StageSeen& seen) {
    return {Level::warning,
            "bloom_observation",
            fmt::format("fid {}", seen.fid),
            "observed_on",
            to_iso(seen.observed_on),
            say("Stage {} on this day cannot belong to a spring's bloom.", seen.stage.code),
            say("Check the date and the stage; the observation is not used.")};
}

}  // namespace pipward::bloom::detail
