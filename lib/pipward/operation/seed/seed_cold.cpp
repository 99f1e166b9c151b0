// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/store_log.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/seed/lot_cold.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::optional<InputFile> log;
    bool all = false;
};

using seed::LotCold;

Cell need_cell(const seed::CrossColdNeed& need) {
    return need.least_days == need.full_days ? Cell{std::to_string(need.full_days)}
                                             : Cell{say("{} to {}", need.least_days, need.full_days)};
}

const std::vector<ColumnOf<LotCold>>& cold_columns() {
    static const std::vector<ColumnOf<LotCold>> columns{
        {{"lot", text, "", "Seed lot", "Its code."},
         [](const LotCold& r) { return text_cell(r.course->lot->code); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const LotCold& r) { return text_cell(r.course->lot->cross); }},
        {{"cold_from", day, "", "Cold from", "First day in the cold."},
         [](const LotCold& r) { return cell(r.course->lot->cold_from); }},
        {{"need_days", text, "d", "Need", "Days of moist cold that its species needs, least and full."},
         [](const LotCold& r) { return need_cell(r.need); }},
        {{"cold_days", number, "d", "Cold so far",
          "Days that count: whole ones from 0.5 to 5 degrees C, parts up to 9.5, less for warm ones."},
         [](const LotCold& r) { return number_cell(r.sum.days, 1); }},
        {{"chill_portions", number, "portions", "Chill portions", "The same readings by the Dynamic Model."},
         [](const LotCold& r) { return number_cell(r.sum.portions.value, 1); }},
        {{"first_ready", day, "", "First sprouts from", "The day after the least need is met."},
         [](const LotCold& r) { return cell(r.first_ready); }},
        {{"ready", day, "", "Ready on", "The day after the full need is met."},
         [](const LotCold& r) { return cell(r.ready); }},
        {{"sow_by", day, "", "Sow by", "Thirty days later it will sprout in its bag."},
         [](const LotCold& r) { return r.ready ? Cell{*r.ready + seed::days_to_sow} : Cell{}; }},
        {{"state", text, "", "State", "Where it stands, and what disturbed it."},
         [](const LotCold& r) { return Cell{r.state}; }},
    };
    return columns;
}

constexpr TableOf<LotCold> cold_table{
    "seed_cold", "Seed in the cold",
    "The moist cold that every lot has had, when it will be ready and by when to sow.", cold_columns};

std::optional<intake::StoreReadings> read_log(const Request& request) {
    if (!request.log) {
        return std::nullopt;
    }
    auto readings = intake::read_store_log(read_input_file(request.log->path), request.log->path);
    expect_no_errors(readings.findings);
    return readings;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto log = read_log(request);
    const auto courses = seed::lot_courses(reading.orchard, request.as_of);
    Outcome outcome;
    outcome.findings = reading.findings;
    std::optional<seed::StoreLog> store;
    if (log) {
        store = intake::log_of(*log);
        add_findings(outcome, log->findings);
    }
    const auto rows =
        seed::lots_in_cold(courses, reading.orchard, {store, request.as_of, request.all}, outcome.findings);
    const auto ready =
        std::ranges::count_if(rows, [](const LotCold& row) { return row.sum.reached[1].has_value(); });
    outcome.tables = {cold_table.of(rows)};
    outcome.summary = say("{} lots in the cold, {} of them ready.", rows.size(), ready);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> seed_cold() {
    return declare<Request>(
        {.about = {"seed-cold", "Seed in the cold", "Seed",
                   "Counts the moist cold of every seed lot, in days that count and in chill portions, from "
                   "the store's one temperature or a thermometer's log; flags warm spells and frost, and "
                   "tells when each lot will be ready and by when to sow it."},
         .parameters = {book_parameter(&Request::book),
                        parameter(
                            &Request::log, "log", "Thermometer log",
                            "CSV of the store's readings: day, a time of day if there is one, degrees "
                            "Celsius. Where it is not given, the temperature noted with each lot holds.")
                            .named(sheet_files),
                        parameter(&Request::all, "all", "All lots",
                                  "Whether lots whose cold is over are told as well."),
                        as_of_parameter(&Request::as_of)},
         .results = {cold_table.shape()},
         .examples = {{"The lots in the cold in January.", {{"book", "BOOK"}, {"as-of", "2026-01-15"}}},
                      {"The same by a thermometer's log.",
                       {{"book", "BOOK"}, {"as-of", "2026-01-15"}, {"log", "FILE"}},
                       "time,degrees\n2025-12-01 06:00,3.5\n2025-12-02 06:00,4.0\n2025-12-03 06:00,12.0\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
