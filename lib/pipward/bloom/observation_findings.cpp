// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/observation_findings.h"

#include <fmt/format.h>

namespace pipward::bloom::detail {
namespace {

Sentence not_learned_from(int notes, bool under_way) {
    if (under_way) {
        return notes == 1 ? say("1 note of this season is not learned from: its weather is not whole yet.")
                          : say("{} notes of this season are not learned from: its weather is not whole yet.",
                                notes);
    }
    return notes == 1 ? say("1 note of this season is not learned from: its weather is not whole.")
                      : say("{} notes of this season are not learned from: its weather is not whole.", notes);
}

Finding without_weather(Season season, int notes, bool under_way) {
    Finding finding;
    finding.level = Level::note;
    finding.table = "bloom_note";
    finding.field = "noted_on";
    finding.value = fmt::format("{}", season.year);
    finding.message = not_learned_from(notes, under_way);
    finding.remedy =
        under_way ? say("While the season is under way its notes move its own forecast instead.")
                  : say("Add the station's days from 1 October (in the south 1 April) to the end of bloom.");
    return finding;
}

constexpr std::size_t few_seasons_to_name = 3;

Finding seasons_without_weather(const NotesOfSeasons& without) {
    int notes = 0;
    for (const auto& [season, count] : without) {
        notes += count;
    }
    auto finding = without_weather(without.begin()->first, notes, false);
    finding.value = fmt::format("{} to {}", without.begin()->first.year, without.rbegin()->first.year);
    finding.message = say("{} notes of {} seasons are not learned from: their weather is not whole.", notes,
                          without.size());
    return finding;
}

}  // namespace

void add_without_weather(Findings& findings, NotesOfSeasons without, Season under_way) {
    if (const auto now = without.extract(under_way)) {
        findings.push_back(without_weather(under_way, now.mapped(), true));
    }
    if (without.size() > few_seasons_to_name) {
        findings.push_back(seasons_without_weather(without));
        return;
    }
    for (const auto& [season, notes] : without) {
        findings.push_back(without_weather(season, notes, false));
    }
}

Finding out_of_season(const StageSeen& seen) {
    return {Level::warning,
            "bloom_note",
            fmt::format("fid {}", seen.fid),
            "noted_on",
            to_iso(seen.noted_on),
            say("Stage {} on this day cannot belong to a spring's bloom.", seen.stage.code),
            say("Check the date and the stage; the note is not used.")};
}

}  // namespace pipward::bloom::detail
