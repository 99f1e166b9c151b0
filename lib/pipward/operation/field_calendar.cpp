// SPDX-License-Identifier: MIT
#include <algorithm>
#include <filesystem>

#include "pipward/operation/column_of.h"
#include "pipward/operation/crossing_request.h"
#include "pipward/operation/list.h"
#include "pipward/paper/calendar.h"
#include "pipward/paper/season_words.h"
#include "pipward/place/address.h"
#include "pipward/seed/next_work.h"

namespace pipward {
namespace {

using enum CellType;

struct Request : CrossingRequest {
    std::string orchard;
};

struct Event {
    CalendarEvent words;
    Sentence work;
};

Sentence pollen_work_title(const PollenTask& task) {
    const auto where = task.tree.empty() ? task.donor : task.tree;
    switch (task.work) {
        case PollenWork::gather:
            return say("Gather pollen of {} at {}: {}", task.donor, where, flowers_words(task.flowers));
        case PollenWork::cut_branch:
            return say("Cut branches of {} at {} to force", task.donor, where);
        case PollenWork::test_lot:
            break;
    }
    return say("Test stored pollen of {}", task.donor);
}

Sentence field_work_title(const FieldTask& task) {
    switch (task.work) {
        case FieldWork::bag:
            return say("Bag flowers of {} for cross {}", task.tree, task.cross);
        case FieldWork::pollinate:
            return say("Pollinate {} for cross {}: {}", task.tree, task.cross, flowers_words(task.flowers));
        case FieldWork::unbag:
            break;
    }
    return say("Take the bags off {}, cross {}", task.tree, task.cross);
}

Sentence seed_work_title(SeedWork work, const std::string& cross) {
    switch (work) {
        case SeedWork::pick:
            return say("Pick the fruit of cross {}", cross);
        case SeedWork::wash:
            return say("Wash the seed of cross {}", cross);
        case SeedWork::start_cold:
            return say("Put the seed of cross {} in the cold", cross);
        case SeedWork::sow:
            return say("Look for sprouts of cross {}", cross);
        case SeedWork::pot:
            return say("Pot the sprouts of cross {}", cross);
        case SeedWork::plant:
            return say("Plant the seedlings of cross {}", cross);
        case SeedWork::nothing:
            break;
    }
    return {};
}

Sentence place_of(const std::string& label, const Orchard& orchard) {
    const auto tree = std::ranges::find(orchard.trees, label, &Tree::label);
    return tree == orchard.trees.end() ? Sentence{} : address_of(*tree, orchard.rows);
}

Event pollen_event(const PollenTask& task, const Orchard& orchard) {
    const auto key =
        fmt::format("{}-{}-{}-{}", to_text(task.work), task.season_of_use.year, task.donor, task.tree);
    return {{key, task.do_from, std::max(task.do_from, task.do_to), pollen_work_title(task), task.why,
             place_of(task.tree, orchard)},
            say("pollen")};
}

Event field_event(const FieldTask& task, Season season, const Orchard& orchard) {
    const auto key = fmt::format("{}-{}-{}-{}", to_text(task.work), season.year, task.cross, task.tree);
    return {{key, task.do_from, std::max(task.do_from, task.do_to), field_work_title(task), task.why,
             place_of(task.tree, orchard)},
            say("flowers")};
}

std::vector<Event> pollen_events(const SeasonPlan& plan, const Orchard& orchard) {
    std::vector<Event> events;
    for (const auto& task : plan.pollen) {
        events.push_back(pollen_event(task, orchard));
    }
    for (const auto& task : plan.field) {
        events.push_back(field_event(task, plan.season, orchard));
    }
    return events;
}

std::vector<Event> seed_events(const Orchard& orchard, Day as_of) {
    std::vector<Event> events;
    for (const auto& tally : tally_crosses(orchard, as_of)) {
        const auto next = next_work(tally, orchard, as_of);
        if (next.work == SeedWork::nothing || !next.from) {
            continue;
        }
        const auto& cross = tally.goal->code;
        const auto key = fmt::format("seed-{}-{}", static_cast<int>(next.work), cross);
        events.push_back({{key,
                           *next.from,
                           std::max(*next.from, next.to.value_or(*next.from)),
                           seed_work_title(next.work, cross),
                           next.why,
                           {}},
                          say("seed")});
    }
    return events;
}

const std::vector<ColumnOf<Event>>& event_columns() {
    static const std::vector<ColumnOf<Event>> columns{
        {{"do_from", day, "", "From", "First day."}, [](const Event& e) { return Cell{e.words.from}; }},
        {{"do_to", day, "", "To", "Last day."}, [](const Event& e) { return Cell{e.words.to}; }},
        {{"kind", text, "", "Kind", "Pollen, flowers or seed."}, [](const Event& e) { return Cell{e.work}; }},
        {{"what", text, "", "What", "What is to be done."},
         [](const Event& e) { return Cell{e.words.title}; }},
        {{"where", text, "", "Where", "The tree's address."},
         [](const Event& e) { return e.words.place.empty() ? Cell{} : Cell{e.words.place}; }},
        {{"why", text, "", "Why", "What that is reckoned from."},
         [](const Event& e) { return Cell{e.words.text}; }},
    };
    return columns;
}

TableShape event_shape() {
    return shape_of<Event>({"field_calendar", "Field calendar", "Work to come, by its first day.", false, {}},
                           event_columns());
}

/// The season's work; where the season cannot be foretold its findings tell why and the seed's work stands
/// alone.
std::vector<Event> season_events(const Request& request, Place& place, const Run& lent) {
    try {
        const auto past = read_past(place, lent);
        const auto fitted = fit_past(place, past, request.method, lent);
        const auto forecast = forecast_season(place, past, fitted.model, lent);
        return pollen_events(plan_crosses(place, forecast, assumptions_of(request, place.orchard), lent),
                             place.orchard);
    } catch (const Error& error) {
        if (error.trouble() != Trouble::input) {
            throw;
        }
        place.findings = error.findings();
        for (auto& finding : place.findings) {
            finding.level = std::min(finding.level, Level::warning);
        }
        return {};
    }
}

std::string name_of(const Request& request) {
    if (!request.orchard.empty() || request.book.location.starts_with("PG:")) {
        return request.orchard;
    }
    return std::filesystem::path(request.book.location).stem().string();
}

std::vector<CalendarEvent> words_of(const std::vector<Event>& events) {
    std::vector<CalendarEvent> words;
    for (const auto& event : events) {
        words.push_back(event.words);
    }
    return words;
}

Outcome run(const Request& request, const Run& lent) {
    auto place = read_place(request, lent);
    auto events = season_events(request, place, lent);
    const auto seed = seed_events(place.orchard, request.as_of);
    events.insert(events.end(), seed.begin(), seed.end());
    std::erase_if(events, [&](const Event& event) { return event.words.to < request.as_of; });
    std::ranges::stable_sort(events, {}, [](const Event& event) { return event.words.from; });
    Outcome outcome;
    outcome.tables = {table_of<Event>(event_shape(), events, event_columns())};
    outcome.files = {{"field-calendar.ics", "text/calendar",
                      calendar_text(words_of(events), name_of(request), request.as_of, lent.wording)}};
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
                   "again "
                   "after a new plan, it moves what is there already."},
         .parameters = parameters(),
         .results = {event_shape()},
         .examples = {{"The work to come as seen on 20 March.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward
