// SPDX-License-Identifier: MIT
#include "pipward/paper/read_calendar.h"

#include <libical/ical.h>

#include <memory>
#include <optional>

#include "pipward/paper/detail/calendar_uid.h"
#include "pipward/value/finding.h"

namespace pipward::paper {
namespace {

struct ComponentCloser {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, ComponentCloser>;

std::string text_of_property(const char* text) {
    return text == nullptr ? std::string() : std::string(text);
}

std::optional<Day> day_of_time(const icaltimetype& time) {
    return icaltime_is_null_time(time) != 0 ? std::nullopt : make_day({time.year, time.month, time.day});
}

// DTEND is the first day after (RFC 5545, 3.6.1).
std::optional<CalendarEvent> event_of_component(icalcomponent* component) {
    const auto key = detail::key_of_uid(text_of_property(icalcomponent_get_uid(component)));
    const auto from = day_of_time(icalcomponent_get_dtstart(component));
    const auto end = day_of_time(icalcomponent_get_dtend(component));
    if (!key || !from || !end || *end <= *from) {
        return std::nullopt;
    }
    return CalendarEvent{*key,
                         *from,
                         *end - 1,
                         verbatim(text_of_property(icalcomponent_get_summary(component))),
                         verbatim(text_of_property(icalcomponent_get_description(component))),
                         verbatim(text_of_property(icalcomponent_get_location(component))),
                         icalcomponent_get_sequence(component),
                         icalcomponent_get_status(component) == ICAL_STATUS_CANCELLED};
}

}  // namespace

std::vector<CalendarEvent> events_of_calendar(const std::string& text) {
    const Component calendar(icalparser_parse_string(text.c_str()));
    if (calendar == nullptr || icalcomponent_isa(calendar.get()) != ICAL_VCALENDAR_COMPONENT) {
        throw Error(Trouble::input, Finding{Level::error,
                                            {},
                                            {},
                                            {},
                                            {},
                                            say("The file is no calendar (RFC 5545)."),
                                            say("Name the file that field-calendar made before.")});
    }
    std::vector<CalendarEvent> events;
    for (auto* component = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
         component != nullptr;
         component = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT)) {
        if (auto event = event_of_component(component)) {
            events.push_back(std::move(*event));
        }
    }
    return events;
}

}  // namespace pipward::paper
