// SPDX-License-Identifier: MIT
#include "pipward/paper/calendar.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/detail/calendar_uid.h"
#include "pipward/paper/text.h"
#include "pipward/record/reader_days.h"

namespace pipward::paper {
namespace {

constexpr std::size_t longest_line = 75;  ///< octets, without the line end
constexpr int alarm_hour = 6;

/// RFC 5545, 3.3.11: these four have a meaning of their own.
std::string escaped(std::string_view text) {
    std::string safe;
    for (const char c : text) {
        if (c == '\\' || c == ';' || c == ',') {
            safe += '\\';
        }
        safe += c == '\n' ? std::string("\\n") : c == '\r' ? std::string() : std::string(1, c);
    }
    return safe;
}

bool is_inside_of_character(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

/// RFC 5545, 3.1: a long line goes on after a line end and a blank, never inside of a character.
std::string folded(std::string_view line) {
    std::string text;
    std::size_t room = longest_line;
    while (line.size() > room) {
        auto end = room;
        while (end > 1 && is_inside_of_character(line[end])) {
            --end;
        }
        text += std::string(line.substr(0, end)) + "\r\n ";
        line.remove_prefix(end);
        room = longest_line - 1;
    }
    return text + std::string(line) + "\r\n";
}

std::string property(std::string_view name, std::string_view value) {
    return folded(fmt::format("{}:{}", name, value));
}

std::string words(std::string_view name, const Sentence& sentence, const Wording& wording) {
    return sentence.empty() ? std::string() : property(name, escaped(clean_text(sentence.in(wording))));
}

std::string basic_day(Day day) {
    const auto parts = parts_of(day);
    return fmt::format("{:04}{:02}{:02}", parts.year, parts.month, parts.day);
}

std::string alarm(const CalendarEvent& event, const Wording& wording) {
    return property("BEGIN", "VALARM") + property("ACTION", "DISPLAY") +
           words("DESCRIPTION", event.title, wording) +
           property("TRIGGER", fmt::format("PT{}H", alarm_hour)) + property("END", "VALARM");
}

std::string event_text(const CalendarEvent& event, Day as_of, const Wording& wording) {
    return property("BEGIN", "VEVENT") + property("UID", detail::uid_of(event.key)) +
           property("DTSTAMP", basic_day(as_of) + "T000000Z") +
           property("SEQUENCE", fmt::format("{}", std::max(event.sequence, sequence_on(as_of)))) +
           property("STATUS", event.cancelled ? "CANCELLED" : "CONFIRMED") +
           property("DTSTART;VALUE=DATE", basic_day(event.from)) +
           property("DTEND;VALUE=DATE", basic_day(event.to + 1)) + words("SUMMARY", event.title, wording) +
           words("DESCRIPTION", event.text, wording) + words("LOCATION", event.place, wording) +
           property("TRANSP", "TRANSPARENT") + (event.cancelled ? std::string() : alarm(event, wording)) +
           property("END", "VEVENT");
}

bool is_the_same(const CalendarEvent& a, const CalendarEvent& b, const Wording& wording) {
    const auto same = [&](const Sentence& one, const Sentence& other) {
        return clean_text(one.in(wording)) == clean_text(other.in(wording));
    };
    return a.from == b.from && a.to == b.to && a.cancelled == b.cancelled && same(a.title, b.title) &&
           same(a.text, b.text) && same(a.place, b.place);
}

const CalendarEvent* event_of(const std::vector<CalendarEvent>& events, const std::string& key) {
    const auto found = std::ranges::find(events, key, &CalendarEvent::key);
    return found == events.end() ? nullptr : &*found;
}

void number(CalendarEvent& event, const CalendarEvent* before, Day as_of, const Wording& wording) {
    event.sequence = sequence_on(as_of);
    if (before != nullptr) {
        const int changed = is_the_same(event, *before, wording) ? 0 : 1;
        event.sequence = std::max(event.sequence, before->sequence + changed);
    }
}

}  // namespace

int sequence_on(Day as_of) {
    return as_of - *parse_iso_day("2000-01-01");
}

std::vector<CalendarEvent> told_again(std::vector<CalendarEvent> now,
                                      const std::vector<CalendarEvent>& before, Day as_of,
                                      const Wording& wording) {
    const auto said = with_reader_days(wording, {});
    for (auto& event : now) {
        number(event, event_of(before, event.key), as_of, said);
    }
    for (const auto& old : before) {
        if (old.to >= as_of && event_of(now, old.key) == nullptr) {
            auto gone = old;
            gone.cancelled = true;
            number(gone, &old, as_of, said);
            now.push_back(std::move(gone));
        }
    }
    return now;
}

std::string calendar_text(std::span<const CalendarEvent> events, const std::string& orchard, Day as_of,
                          const Wording& wording) {
    auto text = property("BEGIN", "VCALENDAR") + property("VERSION", "2.0") +
                property("PRODID", "-//Pipward//Field calendar//EN") + property("CALSCALE", "GREGORIAN") +
                property("X-WR-CALNAME", escaped(clean_text(orchard)));
    const auto said = with_reader_days(wording, {});  // a calendar outlives the year
    for (const auto& event : events) {
        text += event_text(event, as_of, said);
    }
    return text + property("END", "VCALENDAR");
}

}  // namespace pipward::paper
