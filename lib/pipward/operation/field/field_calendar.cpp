// SPDX-License-Identifier: MIT
#include "pipward/paper/field_calendar.h"

#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/operation/season/detail/plan_answer.h"
#include "pipward/paper/read_calendar.h"
#include "pipward/season/work_to_come.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request : CrossingRequest {
    std::string orchard;
    std::optional<InputFile> before;
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

/// With what the calendar was told before and that is not to be done any more.
std::vector<paper::CalendarEvent> told(const Request& request, const std::vector<Event>& events,
                                       const Wording& wording) {
    auto now = words_of(events);
    if (!request.before) {
        return now;
    }
    return paper::told_again(std::move(now), paper::events_of_calendar(read_input_file(request.before->path)),
                             request.as_of, wording);
}

Sentence summary_of(const std::vector<Event>& events, const std::vector<paper::CalendarEvent>& told) {
    const auto cancelled = std::ranges::count(told, true, &paper::CalendarEvent::cancelled);
    const auto count = say("{} days or spans of work are in the calendar.", events.size());
    return cancelled == 0
               ? count
               : count + verbatim(" ") + say("No longer to be done, and cancelled: {}.", cancelled);
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto work = season::work_to_come(plan_wish(request), place, step_of(lent));
    const auto events = events_of(work, place);
    const auto calendar = told(request, events, lent.wording);
    Outcome outcome;
    outcome.tables = {event_table.of(events)};
    outcome.files = {{"field-calendar.ics", "text/calendar",
                      paper::calendar_text(calendar, orchard_name(request.orchard, request.book),
                                           request.as_of, lent.wording)}};
    outcome.findings = std::move(place.findings);
    outcome.answer = work_answer(work, request.as_of);
    outcome.summary = summary_of(events, calendar);
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return extended<Request>(crossing_parameters(),
                             {parameter(&Request::orchard, "calendar-name", "Calendar",
                                        "The calendar's name; the book's file name where not given."),
                              parameter(&Request::before, "before", "Calendar made before",
                                        "The file that was made before and is in your calendar: what was "
                                        "told there and is no longer to be done is cancelled.")},
                             {"keep"});
}

}  // namespace

std::unique_ptr<const Operation> field_calendar() {
    return declare<Request>(
        {.about =
             {"field-calendar", "Field calendar", "Season",
              "Writes the season's work and the seed work into a calendar file that any calendar can "
              "read: collecting pollen, bagging, pollinating, harvest, stratification, sowing, each "
              "with its span of days. Read again after a new plan, it moves the existing entries; with the "
              "file made before it cancels those that are gone."},
         .parameters = parameters(),
         .results = {event_table.shape()},
         .examples = {{"The work to come as seen on 20 March.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"After a new plan, with what is gone cancelled.",
                       {{"book", "BOOK"}, {"before", "FILE"}, {"as-of", "2026-04-10"}},
                       "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
