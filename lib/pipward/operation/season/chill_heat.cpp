// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <array>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/season/chill_heat_days.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {

namespace {

using enum CellType;

struct Request : SeasonRequest {
    std::optional<Day> from;
    std::optional<Day> to;
    Celsius base{4.5};
    Celsius upper{30};
    clock::CutOff cut_off = clock::CutOff::none;
};

const std::vector<ColumnOf<season::ChillHeatDay>>& clock_day_columns() {
    using One = const season::ChillHeatDay&;
    static const std::vector<ColumnOf<season::ChillHeatDay>> columns{
        {{"station", text, "", "Station", "The weather station."},
         [](One d) { return text_cell(d.station); }},
        {{"day", day, "", "Day", "The day; sums stand at its end."}, [](One d) { return Cell{d.day}; }},
        {{"t_min_c", number, "°C", "Minimum", "Lowest temperature of the day."},
         [](One d) { return number_cell(d.temperature.t_min.degrees, 2); }},
        {{"t_max_c", number, "°C", "Maximum", "Highest temperature of the day."},
         [](One d) { return number_cell(d.temperature.t_max.degrees, 2); }},
        {{"chilling_hours", number, "h", "Chilling hours", "Hours between 0 and 7.2 °C."},
         [](One d) { return number_cell(d.sums.chilling_hours.value, 2); }},
        {{"utah_units", number, "Utah units", "Utah units", "Chill by the Utah model; warm hours subtract."},
         [](One d) { return number_cell(d.sums.utah_units.value, 2); }},
        {{"chill_portions", number, "chill portions", "Chill portions", "Chill by the Dynamic Model."},
         [](One d) { return number_cell(d.sums.chill_portions.value, 2); }},
        {{"gdd_mean", number, "°C d", "Degree-days, mean",
          "Growing degree-days from the day's mean; unknown where the mean method has no such cut-off."},
         [](One d) { return d.sums.gdd_mean ? number_cell(d.sums.gdd_mean->value, 2) : Cell{}; }},
        {{"gdd_triangle", number, "°C d", "Degree-days, triangle",
          "Growing degree-days from a single triangle."},
         [](One d) { return number_cell(d.sums.gdd_triangle.value, 2); }},
        {{"gdd_sine", number, "°C d", "Degree-days, sine", "Growing degree-days from a single sine wave."},
         [](One d) { return number_cell(d.sums.gdd_sine.value, 2); }},
        {{"gdh_linear", number, "°C h", "Degree-hours, linear",
          "Growing degree-hours above 4.5 °C, no more above 25."},
         [](One d) { return number_cell(d.sums.gdh_linear.value, 2); }},
        {{"gdh_asymcur", number, "°C h", "Degree-hours, ASYMCUR",
          "Growing degree-hours on the asymmetric curve."},
         [](One d) { return number_cell(d.sums.gdh_asymcur.value, 2); }},
        {{"day_length_h", number, "h", "Day length", "Sunrise to sunset."},
         [](One d) { return number_cell(d.day_length, 2); }},
    };
    return columns;
}

constexpr TableOf<season::ChillHeatDay> clock_day_table{
    "chill_heat_day", "Chill and heat sums", "Chill and heat day by day, summed since the first day.",
    clock_day_columns, [] {
        return TableView{
            .first = {"day", "t_min_c", "t_max_c", "chill_portions", "gdh_asymcur", "chilling_hours",
                      "utah_units", "gdd_sine", "gdh_linear", "gdd_triangle", "gdd_mean", "day_length_h"},
            .once = {"station"}};
    }};

Sentence summary_of(const std::vector<season::ChillHeatDay>& days) {
    const auto& last = days.back();
    return say("From {} to {} at {}: {:.1f} chill portions, {:.0f} growing degree hours.",
               to_iso(days.front().day), to_iso(last.day), last.station, last.sums.chill_portions.value,
               last.sums.gdh_asymcur.value);
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
    lent.step(0.5, say("Summing chill and heat"));
    const auto clock = season::chill_heat_days(
        place, {request.from, request.to, {request.base, request.upper, request.cut_off}});
    Outcome outcome;
    outcome.tables = {clock_day_table.of(clock)};
    outcome.findings = std::move(place.findings);
    outcome.summary = summary_of(clock);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> chill_heat() {
    return declare<Request>(
        {.about = {"chill-heat", "Chill and heat sums", "Season",
                   "Sums chill and heat day by day at a station, by every usual model: chilling hours, Utah "
                   "units, chill portions, growing degree-days and growing degree-hours."},
         .parameters = season_parameters<Request>(
             {parameter(&Request::from, "from", "From",
                        "First day of the sums; the season's first, 1 October in the northern hemisphere, "
                        "where not given."),
              parameter(&Request::to, "to", "To",
                        "The last day; the last one known up to the reference date where not given."),
              parameter(&Request::base, "base-c", "Base", "The lower threshold of the degree-days.")
                  .between(-5.0, 20.0),
              parameter(&Request::upper, "upper-c", "Upper threshold",
                        "The upper threshold of the degree-days, used only with a cut-off.")
                  .between(0.0, 50.0),
              parameter(&Request::cut_off, "cut-off", "Cut-off",
                        "How heat above the upper threshold counts.")}),
         .results = {clock_day_table.shape()},
         .examples = {{"Chill and heat of the winter so far.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"March in degree-days above 10 °C, those above 30 cut off.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"from", "2026-03-01"},
                        {"to", "2026-03-20"},
                        {"base-c", "10"},
                        {"cut-off", "horizontal"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
