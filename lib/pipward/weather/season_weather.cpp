// SPDX-License-Identifier: MIT
#include "pipward/weather/season_weather.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "pipward/weather/filled_days.h"
#include "pipward/weather/gaps.h"

namespace pipward::weather {
namespace {

struct SeasonSpan {
    Day first;
    Day needed;  ///< the season is usable when its days reach this one
    Day last;
};

SeasonSpan span_of(Season season, Hemisphere hemisphere) {
    const Day anchor = anchor_of(season, hemisphere);
    return {anchor + season_first, anchor + shortest_season_end, anchor + season_last};
}

/// The days that `keep` wants, from the first such day to the last.
template <class Keep>
DailySeries kept(const DailySeries& series, Keep keep) {
    DailySeries result;
    for (Day day = series.first; day < series.end(); day = day + 1) {
        const auto reading = series.at(day);
        if (!reading || !keep(day, reading->origin)) {
            continue;
        }
        if (result.days.empty()) {
            result.first = day;
        }
        result.days.resize(static_cast<std::size_t>(day - result.first) + 1);
        result.days.back() = reading;
    }
    return result;
}

// A day or two that lack at a season's edge are as good as the day beside them: few days of early autumn, or
// the last one of April, decide nothing.
constexpr int most_missing_at_start = 5;
constexpr int most_missing_at_end = 1;

DailySeries with_whole_edges(DailySeries series, Hemisphere hemisphere) {
    if (series.days.empty()) {
        return series;
    }
    const SeasonSpan first = span_of(season_of(series.first, hemisphere), hemisphere);
    const int late = series.first - first.first;
    if (late > 0 && late <= most_missing_at_start) {
        auto reading = series.days.front();
        reading->origin = DayOrigin::interpolated;
        series.days.insert(series.days.begin(), static_cast<std::size_t>(late), reading);
        series.first = first.first;
    }
    const Day end = series.end() - 1;
    const int lacking = span_of(season_of(end, hemisphere), hemisphere).needed - end;
    if (lacking > 0 && lacking <= most_missing_at_end) {
        auto reading = series.days.back();
        reading->origin = DayOrigin::interpolated;
        series.days.insert(series.days.end(), static_cast<std::size_t>(lacking), reading);
    }
    return series;
}

std::vector<DayExtremes> unbroken_days(const DailySeries& series, Day first, Day last) {
    std::vector<DayExtremes> days;
    for (Day day = first; day <= last; day = day + 1) {
        const auto reading = series.at(day);
        if (!reading) {
            break;
        }
        days.push_back({reading->t_min, reading->t_max});
    }
    return days;
}

Finding about_season(Level level, Season season, Sentence message, Sentence remedy) {
    return {.level = level,
            .table = "weather_day",
            .row = say("season {}", season.year),
            .field = {},
            .value = {},
            .message = std::move(message),
            .remedy = std::move(remedy)};
}

Sentence gap_sentence(const Gap& gap) {
    return say("No temperatures for {} days from {} to {}; gaps of up to {} days are filled.", gap.length,
               to_iso(gap.first), to_iso(gap.first + gap.length - 1), longest_filled_gap);
}

/// Why the record has nothing usable on `missing`.
Sentence why_missing(const GapReport& known, Day missing) {
    const DailySeries& series = known.series;
    if (series.days.empty()) {
        return say("The weather record has no observed day.");
    }
    if (missing < series.first) {
        return say("The weather record begins only on {}.", to_iso(series.first));
    }
    const auto gap = std::ranges::find_if(known.gaps, [&](const Gap& candidate) {
        return candidate.first <= missing && missing < candidate.first + candidate.length;
    });
    return gap == known.gaps.end() ? say("The weather record ends on {}.", to_iso(series.end() - 1))
                                   : gap_sentence(*gap);
}

Finding season_refused(Season season, const GapReport& known, Day missing) {
    return about_season(Level::warning, season,
                        say("The season is left out. {}", why_missing(known, missing)),
                        say("Import the missing days of this station if they exist."));
}

int filled_days_between(const std::vector<Gap>& gaps, Day first, Day end) {
    int days = 0;
    for (const Gap& gap : gaps) {
        if (gap.filled) {
            days += std::max(0, std::min(gap.first + gap.length, end) - std::max(gap.first, first));
        }
    }
    return days;
}

void record_filled_days(const SeasonWeather& weather, const std::vector<Gap>& gaps, Findings& findings) {
    const Day end = weather.first + static_cast<int>(weather.days.size());
    if (const int days = filled_days_between(gaps, weather.first, end); days > 0) {
        findings.push_back(about_season(Level::notice, weather.season, filled_days_words(days), {}));
    }
}

/// Every reason why the days from the season's first to `last` are not unbroken.
Findings spoiling_gaps(const GapReport& known, Season season, Day first, Day last) {
    Findings findings;
    const Sentence remedy = say("Import the missing days of this station.");
    if (first < known.series.first) {
        findings.push_back(about_season(Level::error, season, why_missing(known, first), remedy));
    }
    for (const Gap& gap : known.gaps) {
        if (!gap.filled && gap.first + gap.length > first && gap.first <= last) {
            findings.push_back(about_season(Level::error, season, gap_sentence(gap), remedy));
        }
    }
    return findings;
}

Day last_observed(const DailySeries& series, Day before_all) {
    for (Day day = series.end() - 1; day >= series.first; day = day - 1) {
        if (const auto reading = series.at(day); reading && reading->origin == DayOrigin::observed) {
            return day;
        }
    }
    return before_all;
}

void warn_of_missing_days(CurrentSeason& current, Day wanted) {
    const Day end = current.weather.first + static_cast<int>(current.weather.days.size());
    if (const int missing = wanted - end + 1; missing > 0) {
        current.findings.push_back(about_season(
            Level::warning, current.weather.season,
            missing == 1 ? say("The last day, {}, has no temperatures.", to_iso(wanted))
                         : say("The last {} days, up to {}, have no temperatures.", missing, to_iso(wanted)),
            say("Import the latest temperatures of this station.")));
    }
}

}  // namespace

SeasonsReport past_seasons(const DailySeries& station, Hemisphere hemisphere, Day as_of) {
    const auto observed = kept(
        station, [&](Day day, DayOrigin origin) { return day <= as_of && origin != DayOrigin::forecast; });
    const GapReport known = fill_gaps(with_whole_edges(observed, hemisphere), hemisphere);
    SeasonsReport report;
    if (known.series.days.empty()) {
        return report;
    }
    const Season latest = season_of(known.series.end() - 1, hemisphere);
    for (Season season = season_of(known.series.first, hemisphere); season <= latest; ++season.year) {
        const SeasonSpan span = span_of(season, hemisphere);
        if (span.last >= as_of) {
            break;
        }
        if (span.last < known.series.first) {
            continue;  // the record begins in this season's summer, of which nobody asks anything
        }
        SeasonWeather weather{season, span.first, unbroken_days(known.series, span.first, span.last)};
        const Day end = span.first + static_cast<int>(weather.days.size());
        if (end <= span.needed) {
            report.findings.push_back(season_refused(season, known, end));
            continue;
        }
        record_filled_days(weather, known.gaps, report.findings);
        report.seasons.push_back(std::move(weather));
    }
    return report;
}

CurrentSeason current_season(const DailySeries& station, Season season, Hemisphere hemisphere, Day as_of) {
    const SeasonSpan span = span_of(season, hemisphere);
    const Day until = std::min(as_of, span.last);
    const auto told = kept(station, [&](Day day, DayOrigin origin) {
        return day <= until || (day <= span.last && origin == DayOrigin::forecast);
    });
    const GapReport known = fill_gaps(told, hemisphere);
    const Day observed = std::min(last_observed(known.series, span.first - 1), until);
    if (observed >= span.first) {
        if (Findings gaps = spoiling_gaps(known, season, span.first, observed); !gaps.empty()) {
            throw Error(Trouble::input, std::move(gaps));
        }
    }
    CurrentSeason current;
    current.weather = {season, span.first, unbroken_days(known.series, span.first, span.last)};
    current.observed_days = std::max(0, observed - span.first + 1);
    record_filled_days(current.weather, known.gaps, current.findings);
    warn_of_missing_days(current, until);
    return current;
}

}  // namespace pipward::weather
