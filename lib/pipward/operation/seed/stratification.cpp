// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/store_log.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/seed/lot_stratification.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::optional<InputFile> log;
    bool all = false;
};

using seed::LotStratification;

Cell need_cell(const seed::CrossStratificationNeed& need) {
    return need.least_days == need.full_days ? Cell{std::to_string(need.full_days)}
                                             : Cell{say("{} to {}", need.least_days, need.full_days)};
}

const std::vector<ColumnOf<LotStratification>>& stratification_columns() {
    static const std::vector<ColumnOf<LotStratification>> columns{
        {{"lot", text, "", "Seed lot", "Its code."},
         [](const LotStratification& r) { return text_cell(r.course->lot->code); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const LotStratification& r) { return text_cell(r.course->lot->cross); }},
        {{"stratified_from", day, "", "Stratified from", "First day of stratification."},
         [](const LotStratification& r) { return cell(r.course->lot->stratified_from); }},
        {{"need_days", text, "d", "Requirement",
          "Days of stratification that its species requires, minimum and full."},
         [](const LotStratification& r) { return need_cell(r.need); }},
        {{"stratified_days", number, "d", "Days so far",
          "Effective days: full from 0.5 to 5 °C, partial up to 9.5, reduced by warm days."},
         [](const LotStratification& r) { return number_cell(r.sum.days, 1); }},
        {{"chill_portions", number, "portions", "Chill portions",
          "The same temperatures by the Dynamic Model."},
         [](const LotStratification& r) { return number_cell(r.sum.portions.value, 1); }},
        {{"first_ready", day, "", "First germination from", "The day after the minimum requirement is met."},
         [](const LotStratification& r) { return cell(r.first_ready); }},
        {{"ready", day, "", "Ready on", "The day after the full requirement is met."},
         [](const LotStratification& r) { return cell(r.ready); }},
        {{"sow_by", day, "", "Sow by", "Thirty days later it will germinate in its bag."},
         [](const LotStratification& r) { return r.ready ? Cell{*r.ready + seed::days_to_sow} : Cell{}; }},
        {{"state", text, "", "State", "State, and disturbances."},
         [](const LotStratification& r) { return Cell{r.state}; }},
    };
    return columns;
}

constexpr TableOf<LotStratification> cold_table{
    "stratification", "Stratification",
    "Stratification of every lot so far, when it will be ready and by when to sow.", stratification_columns,
    [] {
        return TableView{.first = {"lot", "cross", "stratified_from", "stratified_days", "need_days",
                                   "chill_portions", "first_ready", "ready", "sow_by"},
                         .below = {"state"}};
    }};

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
    const auto ready = std::ranges::count_if(
        rows, [](const LotStratification& row) { return row.sum.reached[1].has_value(); });
    outcome.tables = {cold_table.of(rows)};
    outcome.summary = say("{} lots in stratification, {} of them ready.", rows.size(), ready);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> stratification() {
    return declare<Request>(
        {.about = {"stratification", "Stratification", "Seed",
                   "Sums the stratification of every seed lot, in effective days and in chill portions, from "
                   "the store's temperature or a temperature log; flags warm spells and frost, and shows "
                   "when each lot will be ready and by when to sow it."},
         .parameters = {book_parameter(&Request::book),
                        parameter(
                            &Request::log, "log", "Thermometer log",
                            "CSV of the store's temperature log: date, time of day if there is one, degrees "
                            "Celsius. Where it is not given, the temperature recorded with each lot is used.")
                            .named(sheet_files),
                        parameter(&Request::all, "all", "All lots",
                                  "Whether lots that are no longer in stratification are shown as well."),
                        as_of_parameter(&Request::as_of)},
         .results = {cold_table.shape()},
         .examples = {{"The lots in stratification in January.", {{"book", "BOOK"}, {"as-of", "2026-01-15"}}},
                      {"The same by a temperature log.",
                       {{"book", "BOOK"}, {"as-of", "2026-01-15"}, {"log", "FILE"}},
                       "time,degrees\n2025-12-01 06:00,3.5\n2025-12-02 06:00,4.0\n2025-12-03 06:00,12.0\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
