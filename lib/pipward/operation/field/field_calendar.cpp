// SPDX-License-Identifier: MIT
#include "pipward/paper/field_calendar.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/operation/season/detail/plan_answer.h"
#include "pipward/season/work_to_come.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request : CrossingRequest {
    std::string orchard;
};

struct Event {
    paper::CalendarEvent words;
    season::FieldWorkItem item;
};

/// Work that has no day of its own yet stands in no calendar, nor does what is over.
std::vector<Event> events_of(const std::vector<season::FieldWorkItem>& items, const season::Place& place) {
    const OrchardIndex book(place.orchard);
    std::vector<Event> events;
    for (const auto& item : items) {
        if (item.from && *item.to >= place.as_of) {
            events.push_back({paper::calendar_event(item, book), item});
        }
    }
    return events;
}

const std::vector<ColumnOf<Event>>& event_columns() {
    static const std::vector<ColumnOf<Event>> columns{
        {{"do_from", day, "", "From", "First day."}, [](const Event& e) { return Cell{e.words.from}; }},
        {{"do_to", day, "", "To", "Last day."}, [](const Event& e) { return Cell{e.words.to}; }},
        {{"kind", text, "", "Kind", "Pollen, flowers, fruit or seed."},
         [](const Event& e) { return Cell{season::kind_words(e.item.kind)}; }},
        {{"what", text, "", "What", "What is to be done."},
         [](const Event& e) { return Cell{e.words.title}; }},
        {{"where", text, "", "Where", "The tree's address."},
         [](const Event& e) { return e.words.place.empty() ? Cell{} : Cell{e.words.place}; }},
        {{"why", text, "", "Why", "Basis of the calculation."},
         [](const Event& e) { return text_cell(e.item.why); }},
    };
    return columns;
}

constexpr TableOf<Event> event_table{
    "field_calendar", "Field calendar", "Work to come, by its first day.", event_columns, [] {
        return TableView{.first = {"do_from", "do_to", "what", "where", "kind"}, .below = {"why"}};
    }};

std::vector<paper::CalendarEvent> words_of(const std::vector<Event>& events) {
    std::vector<paper::CalendarEvent> words;
    for (const auto& event : events) {
        words.push_back(event.words);
    }
    return words;
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto work = season::work_to_come(plan_wish(request), place, step_of(lent));
    const auto events = events_of(work, place);
    Outcome outcome;
    outcome.tables = {event_table.of(events)};
    outcome.files = {{"field-calendar.ics", "text/calendar",
                      paper::calendar_text(words_of(events), orchard_name(request.orchard, request.book),
                                           request.as_of, lent.wording)}};
    outcome.findings = std::move(place.findings);
    outcome.answer = work_answer(work, request.as_of);
    outcome.summary = say("{} days or spans of work are in the calendar.", events.size());
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return extended<Request>(crossing_parameters(),
                             {parameter(&Request::orchard, "calendar-name", "Calendar",
                                        "The calendar's name; the book's file name where not given.")},
                             {"keep"});
}

}  // namespace

std::unique_ptr<const Operation> field_calendar() {
    return declare<Request>(
        {.about = {"field-calendar", "Field calendar", "Season",
                   "Writes the season's work and the seed work into a calendar file that any calendar can "
                   "read: collecting pollen, bagging, pollinating, harvest, stratification, sowing, each "
                   "with its span of days. Read again after a new plan, it moves the existing entries."},
         .parameters = parameters(),
         .results = {event_table.shape()},
         .examples = {{"The work to come as seen on 20 March.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
