// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/sheet_parameters.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/crossing_request.h"
#include "pipward/paper/calendar.h"
#include "pipward/place/address.h"
#include "pipward/record/orchard_index.h"
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

/// In a calendar there is room for the names of the hazards only; sheets tell them in full.
Sentence care_words(const std::set<season::Hazard>& hazards) {
    std::vector<Sentence> names;
    for (const auto& caution : season::cautions_about(hazards)) {
        names.push_back(caution.about);
    }
    return names.empty() ? Sentence{} : say("Take care: {}", joined(names, verbatim(" ")));
}

Sentence with_words(const season::FieldWorkItem& item) {
    if (item.with.empty() || item.kind == season::WorkKind::seed) {
        return {};  // the reason names the seed lot
    }
    return item.kind == season::WorkKind::pollen ? say("Keep the pollen {}.", item.with)
                                                 : say("Pollen: {}.", item.with);
}

/// What is told of the work below its title: with what, why, what to mind.
Sentence text_of(const season::FieldWorkItem& item) {
    std::vector<Sentence> parts{item.tags.empty() ? Sentence{} : say("Tags: {}.", item.tags),
                                with_words(item), item.why, item.mind, care_words(item.hazards)};
    std::erase_if(parts, [](const Sentence& part) { return part.empty(); });
    return joined(parts, verbatim(" "));
}

Sentence place_of(const std::string& label, const OrchardIndex& book) {
    const auto* tree = book.tree(label);
    return tree == nullptr ? Sentence{} : place::address_of(*tree, book.orchard().rows);
}

Event event_of(const season::FieldWorkItem& item, const OrchardIndex& book) {
    return {{item.key, *item.from, *item.to, item.title, text_of(item), place_of(item.tree, book)}, item};
}

/// Work that has no day of its own yet stands in no calendar, nor does what is over.
std::vector<Event> events_of(const std::vector<season::FieldWorkItem>& items, const season::Place& place) {
    const OrchardIndex book(place.orchard);
    std::vector<Event> events;
    for (const auto& item : items) {
        if (item.from && *item.to >= place.as_of) {
            events.push_back(event_of(item, book));
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
        {{"why", text, "", "Why", "What that is reckoned from."},
         [](const Event& e) { return text_cell(e.item.why); }},
    };
    return columns;
}

TableShape event_shape() {
    return shape_of<Event>({"field_calendar", "Field calendar", "Work to come, by its first day.", false, {}},
                           event_columns());
}

std::vector<paper::CalendarEvent> words_of(const std::vector<Event>& events) {
    std::vector<paper::CalendarEvent> words;
    for (const auto& event : events) {
        words.push_back(event.words);
    }
    return words;
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    const auto events = events_of(season::work_to_come(plan_wish(request), place, step_of(lent)), place);
    Outcome outcome;
    outcome.tables = {table_of<Event>(event_shape(), events, event_columns())};
    outcome.files = {{"field-calendar.ics", "text/calendar",
                      paper::calendar_text(words_of(events), orchard_name(request.orchard, request.book),
                                           request.as_of, lent.wording)}};
    outcome.findings = std::move(place.findings);
    outcome.summary = say("{} days or spans of work are in the calendar.", events.size());
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    std::vector<Bound<Request>> all;
    for (const auto& shared : crossing_parameters()) {
        if (shared.words.key != "write") {
            all.emplace_back(shared);
        }
    }
    all.push_back(parameter(&Request::orchard, "calendar-name", "Calendar",
                            "The calendar's name; the book's file name where not given."));
    return all;
}

}  // namespace

std::unique_ptr<const Operation> field_calendar() {
    return declare<Request>(
        {.about = {"field-calendar", "Field calendar", "Season",
                   "Puts the season's work and the seed's into a calendar file that any calendar can read: "
                   "gathering, bagging, pollinating, picking, cold, sowing, each with its span of days. Read "
                   "again after a new plan, it moves what is there already."},
         .parameters = parameters(),
         .results = {event_shape()},
         .examples = {{"The work to come as seen on 20 March.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
