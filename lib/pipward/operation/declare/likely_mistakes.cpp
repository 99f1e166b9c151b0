// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/likely_mistakes.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/place/misplaced.h"
#include "pipward/weather/odd_days.h"

namespace pipward::operation::detail {
namespace {

using weather::OddDay;
using weather::Oddity;

constexpr std::size_t few = 3;

Sentence of_one(const OddDay& odd) {
    switch (odd.oddity) {
        case Oddity::zeros_for_missing:
            return say(
                "Both temperatures are 0, unlike the days around: they seem to stand for a missing reading.");
        case Oddity::both_zero:
            return say("Both temperatures are 0: do they stand for a missing reading?");
        case Oddity::point_lost:
            return say(
                "The temperature is ten times what the days around have: it seems to have lost its decimal "
                "point.");
        case Oddity::far_off:
            return say("The temperature lies far off those of the days around.");
        case Oddity::unchanging:
            return say("A temperature stays the same for {} days from here: the thermometer may be stuck.",
                       odd.days);
    }
    return {};
}

Sentence of_many(Oddity oddity, std::size_t days) {
    switch (oddity) {
        case Oddity::zeros_for_missing:
        case Oddity::both_zero:
            return say("On {} days both temperatures are 0: they seem to stand for missing readings.", days);
        case Oddity::point_lost:
            return say(
                "On {} days a temperature is ten times what the days around have: it seems to have lost its "
                "decimal point.",
                days);
        case Oddity::far_off:
            return say("On {} days a temperature lies far off those of the days around.", days);
        case Oddity::unchanging:
            return say("A temperature stays the same for days on {} occasions: the thermometer may be stuck.",
                       days);
    }
    return {};
}

Finding about(const std::string& station, const OddDay& odd, const std::string& row, Sentence message) {
    const bool nothing = odd.oddity == Oddity::zeros_for_missing || odd.oddity == Oddity::both_zero;
    return {Level::warning,
            "weather_day",
            fmt::format("{} {}", station, row),
            "t_min_c, t_max_c",
            nothing ? std::string{"0, 0"} : fmt::format("{:.1f}", odd.reading.degrees),
            std::move(message),
            nothing ? say("If nothing was measured, remove the days: short gaps are filled, long ones told.")
                    : say("Check them, and correct or remove what is wrong.")};
}

void check_station(const Orchard& orchard, const std::string& station, Findings& findings) {
    std::map<Oddity, std::vector<OddDay>> kinds;
    for (const auto& odd : weather::odd_days(weather::daily_series(orchard.weather, station))) {
        kinds[odd.oddity].push_back(odd);
    }
    for (const auto& [kind, days] : kinds) {
        if (days.size() > few) {
            findings.push_back(
                about(station, days.front(),
                      fmt::format("{} to {}", to_iso(days.front().day), to_iso(days.back().day)),
                      of_many(kind, days.size())));
            continue;
        }
        for (const auto& odd : days) {
            findings.push_back(about(station, odd, to_iso(odd.day), of_one(odd)));
        }
    }
}

}  // namespace

Findings likely_mistakes(const Orchard& orchard) {
    auto findings = place::check_places(orchard);
    for (const auto& station : orchard.stations) {
        check_station(orchard, station.name, findings);
    }
    return findings;
}

}  // namespace pipward::operation::detail
