// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/clock/clock_sums.h"
#include "pipward/operation/column_of.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/list.h"
#include "pipward/operation/season_pipeline.h"
#include "pipward/weather/day_length.h"
#include "pipward/weather/gaps.h"
#include "pipward/weather/hours.h"

namespace pipward::operation {

namespace {

using enum CellType;

struct Request : SeasonRequest {
    std::optional<Day> from;
    std::optional<Day> to;
    Celsius base{4.5};
    Celsius upper{30};
    clock::CutOff cut_off = clock::CutOff::none;
};

/// One day with its sums.
struct ClockDay {
    std::string_view station;
    Day day;
    weather::DailyTemperature temperature;
    clock::ClockSums sums;
    double day_length = 0;
};

const std::vector<ColumnOf<ClockDay>>& clock_day_columns() {
    using One = const ClockDay&;
    static const std::vector<ColumnOf<ClockDay>> columns{
        {{"station", text, "", "Station", "The weather station."},
         [](One d) { return text_cell(d.station); }},
        {{"day", day, "", "Day", "The day; sums stand at its end."}, [](One d) { return Cell{d.day}; }},
        {{"t_min_c", number, "degrees C", "Minimum", "Lowest temperature of the day."},
         [](One d) { return number_cell(d.temperature.t_min.degrees, 2); }},
        {{"t_max_c", number, "degrees C", "Maximum", "Highest temperature of the day."},
         [](One d) { return number_cell(d.temperature.t_max.degrees, 2); }},
        {{"chilling_hours", number, "h", "Chilling hours", "Hours between 0 and 7.2 degrees C."},
         [](One d) { return number_cell(d.sums.chilling_hours.value, 2); }},
        {{"utah_units", number, "Utah units", "Utah units", "Chill by the Utah model; warm hours take away."},
         [](One d) { return number_cell(d.sums.utah_units.value, 2); }},
        {{"chill_portions", number, "chill portions", "Chill portions", "Chill by the Dynamic Model."},
         [](One d) { return number_cell(d.sums.chill_portions.value, 2); }},
        {{"gdd_mean", number, "degrees C x days", "Degree-days, mean",
          "Growing degree-days from the day's mean; unknown where the mean method has no such cut-off."},
         [](One d) { return d.sums.gdd_mean ? number_cell(d.sums.gdd_mean->value, 2) : Cell{}; }},
        {{"gdd_triangle", number, "degrees C x days", "Degree-days, triangle",
          "Growing degree-days from a single triangle."},
         [](One d) { return number_cell(d.sums.gdd_triangle.value, 2); }},
        {{"gdd_sine", number, "degrees C x days", "Degree-days, sine",
          "Growing degree-days from a single sine wave."},
         [](One d) { return number_cell(d.sums.gdd_sine.value, 2); }},
        {{"gdh_linear", number, "degrees C x hours", "Degree-hours, linear",
          "Growing degree-hours above 4.5 degrees C, no more above 25."},
         [](One d) { return number_cell(d.sums.gdh_linear.value, 2); }},
        {{"gdh_asymcur", number, "degrees C x hours", "Degree-hours, ASYMCUR",
          "Growing degree-hours on the asymmetric curve."},
         [](One d) { return number_cell(d.sums.gdh_asymcur.value, 2); }},
        {{"day_length_h", number, "h", "Day length", "Sunrise to sunset."},
         [](One d) { return number_cell(d.day_length, 2); }},
    };
    return columns;
}

TableShape clock_day_shape() {
    return shape_of(
        {"clock_day", "Season clock", "Chill and heat day by day, summed since the first day.", false, {}},
        clock_day_columns());
}

/// What is known on as_of: nothing observed later.
weather::DailySeries known_days(const Place& place) {
    auto known = place.series;
    for (Day day = known.first; day < known.end(); day = day + 1) {
        auto& reading = known.days[static_cast<std::size_t>(day - known.first)];
        if (day > place.as_of && reading && reading->origin == weather::DayOrigin::observed) {
            reading.reset();
        }
    }
    return known;
}

Day last_known(const weather::DailySeries& series, Day until) {
    Day last = std::min(until, series.end() - 1);
    while (last > series.first && !series.at(last)) {
        last = last - 1;
    }
    return last;
}

Error hole_at(const Place& place, Day missing) {
    return {Trouble::input,
            about_table(Level::error, "weather_day",
                        say("Station {} has no temperatures on {}, and sums cannot leap over it.",
                            place.station.name, to_iso(missing)),
                        say("Import the missing days, or choose from and to on one side of it."))};
}

Error nothing_between(Day first, Day last) {
    return {Trouble::usage,
            about_parameter("to", to_iso(last),
                            say("The last day, {}, is before the first, {}.", to_iso(last), to_iso(first)),
                            say("Give from as well, or a later to."))};
}

std::vector<weather::DailyTemperature> unbroken(const Place& place, const weather::DailySeries& series,
                                                Day first, Day last) {
    if (last < first) {
        throw nothing_between(first, last);
    }
    std::vector<weather::DailyTemperature> days;
    for (Day day = first; day <= last; day = day + 1) {
        const auto reading = series.at(day);
        if (!reading) {
            throw hole_at(place, day);
        }
        days.push_back(*reading);
    }
    return days;
}

std::vector<ClockDay> clock_days(const Place& place, const Request& request, Day first,
                                 const std::vector<weather::DailyTemperature>& days) {
    std::vector<weather::DayExtremes> extremes;
    std::vector<clock::DayRange> ranges;
    for (const auto& one : days) {
        extremes.push_back({one.t_min, one.t_max});
        ranges.push_back({one.t_min, one.t_max});
    }
    const auto hours = weather::hourly_temperatures(extremes, first, place.latitude);
    const auto sums = clock::clock_sums(ranges, hours, {request.base, request.upper, request.cut_off});
    std::vector<ClockDay> result;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const Day day = first + static_cast<int>(i);
        result.push_back({place.station.name, day, days[i], sums[i],
                          weather::sun_times(day, place.latitude).day_length()});
    }
    return result;
}

void note_filled_days(const std::vector<weather::DailyTemperature>& days, Findings& findings) {
    const auto filled =
        std::ranges::count(days, weather::DayOrigin::interpolated, &weather::DailyTemperature::origin);
    if (filled > 0) {
        findings.push_back(about_table(
            Level::note, "weather_day",
            say("{} missing day(s) in short gaps were filled from their neighbours.", filled), {}));
    }
}

Sentence summary_of(const ClockDay& last, Day first) {
    return say("From {} to {} at {}: {:.1f} chill portions, {:.0f} growing degree hours.", to_iso(first),
               to_iso(last.day), last.station, last.sums.chill_portions.value, last.sums.gdh_asymcur.value);
}

Findings check(const Request& request) {
    Findings findings;
    if (request.from && request.to && *request.to < *request.from) {
        findings.push_back(about_parameter("to", to_iso(*request.to), say("to is before from."),
                                           say("Give a last day that is not before the first.")));
    }
    if (request.cut_off != clock::CutOff::none && request.upper <= request.base) {
        findings.push_back(about_parameter("upper-c", fmt::format("{}", request.upper.degrees),
                                           say("upper-c is not above base-c."),
                                           say("Give a higher upper-c.")));
    }
    return findings;
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    lent.step(0.5, say("Counting chill and heat"));
    const auto series = weather::fill_gaps(known_days(place)).series;
    const Day first = request.from.value_or(anchor_of(place.season, place.hemisphere) + season_first);
    const Day last = request.to.value_or(std::max(first, last_known(series, place.as_of)));
    const auto days = unbroken(place, series, first, last);
    const auto clock = clock_days(place, request, first, days);
    note_filled_days(days, place.findings);
    Outcome outcome;
    outcome.tables = {table_of<ClockDay>(clock_day_shape(), clock, clock_day_columns())};
    outcome.findings = std::move(place.findings);
    outcome.summary = summary_of(clock.back(), first);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> season_clock() {
    return declare<Request>(
        {.about = {"season-clock", "Season clock", "Season",
                   "Counts chill and heat day by day at a station, by every clock in use: chilling hours, "
                   "Utah units, "
                   "chill portions, growing degree-days and growing degree-hours. Nothing is written."},
         .parameters = season_parameters<Request>(
             {parameter(
                  &Request::from, "from", "From",
                  "The day that sums begin on; the season's first, 1 October in the north, where not given."),
              parameter(&Request::to, "to", "To",
                        "The last day; the last one known up to as-of where not given."),
              parameter(&Request::base, "base-c", "Base", "The lower threshold of the degree-days.")
                  .between(-5.0, 20.0),
              parameter(&Request::upper, "upper-c", "Upper threshold",
                        "The upper threshold of the degree-days, looked at only with a cut-off.")
                  .between(0.0, 50.0),
              parameter(&Request::cut_off, "cut-off", "Cut-off",
                        "What heat above the upper threshold is worth.")}),
         .results = {clock_day_shape()},
         .examples = {{"Chill and heat of the winter so far.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"March in degree-days above 10 degrees C, those above 30 cut off.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"from", "2026-03-01"},
                        {"to", "2026-03-20"},
                        {"base-c", "10"},
                        {"cut-off", "horizontal"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation
