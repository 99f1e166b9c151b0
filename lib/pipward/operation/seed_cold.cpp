// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/column_of.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/input_file.h"
#include "pipward/operation/list.h"
#include "pipward/operation/read_checked.h"
#include "pipward/seed/lot_course.h"
#include "pipward/seed/next_work.h"
#include "pipward/seed/store_log.h"

namespace pipward::operation {
namespace {

using enum CellType;

/// Seed that has had its cold for so long sprouts in the bag and breaks when it is sown (common practice, no
/// source).
constexpr int days_to_sow = 30;
constexpr double usual_store_degrees = 4;

struct Request {
    BookName book;
    Day as_of;
    std::optional<InputFile> log;
    bool all = false;
};

struct ColdRow {
    const seed::LotCourse* course = nullptr;
    seed::CrossColdNeed need{};
    seed::ColdSum sum{};
    std::optional<Day> first_ready{};  ///< the least need is met, that day or foretold
    std::optional<Day> ready{};        ///< the full need
    bool assumed_store = false;
    Sentence state{};
};

Cell need_cell(const seed::CrossColdNeed& need) {
    return need.least_days == need.full_days ? Cell{std::to_string(need.full_days)}
                                             : Cell{say("{} to {}", need.least_days, need.full_days)};
}

const std::vector<ColumnOf<ColdRow>>& cold_columns() {
    static const std::vector<ColumnOf<ColdRow>> columns{
        {{"lot", text, "", "Seed lot", "Its code."},
         [](const ColdRow& r) { return text_cell(r.course->lot->code); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const ColdRow& r) { return text_cell(r.course->lot->cross); }},
        {{"cold_from", day, "", "Cold from", "First day in the cold."},
         [](const ColdRow& r) { return cell(r.course->lot->cold_from); }},
        {{"need_days", text, "d", "Need", "Days of moist cold that its species needs, least and full."},
         [](const ColdRow& r) { return need_cell(r.need); }},
        {{"cold_days", number, "d", "Cold so far",
          "Days that count: whole ones from 0.5 to 5 degrees C, parts up to 9.5, less for warm ones."},
         [](const ColdRow& r) { return number_cell(r.sum.days, 1); }},
        {{"chill_portions", number, "portions", "Chill portions", "The same readings by the Dynamic Model."},
         [](const ColdRow& r) { return number_cell(r.sum.portions.value, 1); }},
        {{"first_ready", day, "", "First sprouts from", "The day after the least need is met."},
         [](const ColdRow& r) { return cell(r.first_ready); }},
        {{"ready", day, "", "Ready on", "The day after the full need is met."},
         [](const ColdRow& r) { return cell(r.ready); }},
        {{"sow_by", day, "", "Sow by", "Thirty days later it will sprout in its bag."},
         [](const ColdRow& r) { return r.ready ? Cell{*r.ready + days_to_sow} : Cell{}; }},
        {{"state", text, "", "State", "Where it stands, and what disturbed it."},
         [](const ColdRow& r) { return Cell{r.state}; }},
    };
    return columns;
}

TableShape cold_shape() {
    return shape_of<ColdRow>(
        {"seed_cold",
         "Seed in the cold",
         "The moist cold that every lot has had, when it will be ready and by when to sow.",
         false,
         {}},
        cold_columns());
}

Sentence spell_words(const seed::Spell& spell, bool warm) {
    return warm ? say("Warm from {} to {}, up to {:.1f} degrees C.", to_iso(spell.from), to_iso(spell.to),
                      spell.extreme.degrees)
                : say("Frost from {} to {}, down to {:.1f} degrees C: look at the seed.", to_iso(spell.from),
                      to_iso(spell.to), spell.extreme.degrees);
}

Sentence state_words(const ColdRow& row, Day as_of) {
    std::vector<Sentence> words;
    if (row.sum.reached[1]) {
        words.push_back(say("Ready: sow it, or sprouts break."));
    } else if (row.sum.reached[0]) {
        words.push_back(say("The first may sprout: look every week."));
    } else {
        words.push_back(say("{:.0f} of {} days.", row.sum.days, row.need.full_days));
    }
    if (row.ready && as_of > *row.ready + days_to_sow) {
        words.push_back(say("Late for sowing."));
    }
    for (const auto& spell : row.sum.warm) {
        words.push_back(spell_words(spell, true));
    }
    for (const auto& spell : row.sum.frost) {
        words.push_back(spell_words(spell, false));
    }
    if (row.sum.unknown_days > 0) {
        words.push_back(say("{} days without a reading count nothing.", row.sum.unknown_days));
    }
    if (row.need.guessed) {
        words.push_back(say("The species is not known: an apple's need is taken."));
    }
    if (row.assumed_store) {
        words.push_back(
            say("The store's temperature is not known: {:.0f} degrees C is taken.", usual_store_degrees));
    }
    return joined(words, verbatim(" "));
}

/// The morning after the last cold day that was needed: 90 days from 25 November end on 23 February. What is
/// left to come is foretold as if the store kept a steady, right cold.
std::optional<Day> ready_on(const seed::ColdSum& sum, std::size_t which, double need, Day last,
                            bool goes_on) {
    if (sum.reached[which]) {
        return *sum.reached[which] + 1;
    }
    return goes_on ? std::optional{last + 1 + static_cast<int>(std::ceil(need - sum.days - 1e-9))}
                   : std::nullopt;
}

ColdRow row_of(const seed::LotCourse& course, const seed::CrossColdNeed& need, const seed::StoreReadings* log,
               Day as_of) {
    const auto& lot = *course.lot;
    const Day last = lot.cold_to ? std::min(*lot.cold_to, as_of) : as_of;
    ColdRow row{&course, need};
    row.assumed_store = log == nullptr && !lot.cold;
    const auto store = log != nullptr ? seed::log_of(*log)
                                      : seed::steady_store(lot.cold.value_or(Celsius{usual_store_degrees}));
    const double least = need.least_days;
    const double full = need.full_days;
    row.sum = seed::count_cold(*lot.cold_from, last, store, {least, full});
    const bool goes_on = !lot.cold_to || *lot.cold_to > as_of;
    row.first_ready = ready_on(row.sum, 0, least, last, goes_on);
    row.ready = ready_on(row.sum, 1, full, last, goes_on);
    row.state = state_words(row, as_of);
    return row;
}

bool is_wanted(const seed::LotCourse& course, const Request& request) {
    const bool in_cold = course.lot->cold_from && *course.lot->cold_from <= request.as_of;
    const bool done =
        (course.lot->cold_to && *course.lot->cold_to < request.as_of) || course.out >= course.lot->seeds;
    return in_cold && (request.all || !done);
}

const CrossGoal* goal_of(const Orchard& orchard, const std::string& code) {
    const auto found = std::ranges::find(orchard.goals, code, &CrossGoal::code);
    return found == orchard.goals.end() ? nullptr : &*found;
}

std::optional<seed::StoreReadings> read_log(const Request& request) {
    if (!request.log) {
        return std::nullopt;
    }
    auto readings = seed::read_store_log(read_input_file(request.log->path), request.log->path);
    if (has_errors(readings.findings)) {
        throw Error(Trouble::input, readings.findings);
    }
    return readings;
}

Finding not_in_cold(const seed::LotCourse& course) {
    return {Level::note,
            "seed_lot",
            course.lot->code,
            "cold_from",
            "",
            say("The lot is not in the cold yet, as far as the book tells."),
            say("Note the first day when it goes in.")};
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto log = read_log(request);
    const auto courses = seed::lot_courses(reading.orchard, request.as_of);
    Outcome outcome;
    outcome.findings = reading.findings;
    std::vector<ColdRow> rows;
    for (const auto& course : courses) {
        const auto* goal = goal_of(reading.orchard, course.lot->cross);
        if (goal != nullptr && is_wanted(course, request)) {
            rows.push_back(row_of(course, seed::cold_need_of_cross(*goal, reading.orchard),
                                  log ? &*log : nullptr, request.as_of));
        } else if (!course.lot->cold_from && !course.sprouted && course.out < course.lot->seeds) {
            outcome.findings.push_back(not_in_cold(course));
        }
    }
    std::ranges::stable_sort(rows, {}, [](const ColdRow& row) { return row.ready.value_or(Day{}); });
    const auto ready =
        std::ranges::count_if(rows, [](const ColdRow& row) { return row.sum.reached[1].has_value(); });
    outcome.tables = {table_of<ColdRow>(cold_shape(), rows, cold_columns())};
    outcome.summary = say("{} lots in the cold, {} of them ready.", rows.size(), ready);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> seed_cold() {
    return declare<Request>(
        {.about =
             {"seed-cold", "Seed in the cold", "Seed",
              "Counts the moist cold of every seed lot, in days that count and in chill portions, from the "
              "store's one temperature or a thermometer's log; flags warm spells and frost, and tells when "
              "each "
              "lot will be ready and by when to sow it."},
         .parameters = {book_parameter(&Request::book),
                        parameter(
                            &Request::log, "log", "Thermometer log",
                            "CSV of the store's readings: day, a time of day if there is one, degrees "
                            "Celsius. Where it is not given, the temperature noted with each lot holds.")
                            .named("*.csv"),
                        parameter(&Request::all, "all", "All lots",
                                  "Whether lots whose cold is over are told as well."),
                        as_of_parameter(&Request::as_of)},
         .results = {cold_shape()},
         .examples = {{"The lots in the cold in January.", {{"book", "BOOK"}, {"as-of", "2026-01-15"}}},
                      {"The same by a thermometer's log.",
                       {{"book", "BOOK"}, {"as-of", "2026-01-15"}, {"log", "FILE"}},
                       "time,degrees\n2025-12-01 06:00,3.5\n2025-12-02 06:00,4.0\n2025-12-03 06:00,12.0\n"}},
         .run = run});
}

}  // namespace pipward::operation
