// SPDX-License-Identifier: MIT
#include "pipward/paper/calendar.h"

#include <gtest/gtest.h>

namespace pipward::paper {
namespace {

Day day_of(const char* iso) {
    return *parse_iso_day(iso);
}

CalendarEvent collecting() {
    return {"gather-2026-Wrenlea",
            day_of("2026-04-20"),
            day_of("2026-04-22"),
            say("Collect pollen of {}", "Wrenlea"),
            say("Risk; see row 3, position 4."),
            say("block Upper")};
}

std::string text_of(std::vector<CalendarEvent> events, const char* as_of = "2026-03-20") {
    return calendar_text(events, "Larkfold", day_of(as_of));
}

bool holds(const std::string& text, std::string_view line) {
    return text.find("\r\n" + std::string(line) + "\r\n") != std::string::npos;
}

// RFC 5545, 3.6.1: the end of an all-day event is the day after its last; erratum 3892: VALUE=DATE is needed.
TEST(Calendar, WritesWholeDaysWithTheirEndExclusive) {
    const auto text = text_of({collecting()});
    EXPECT_TRUE(holds(text, "DTSTART;VALUE=DATE:20260420"));
    EXPECT_TRUE(holds(text, "DTEND;VALUE=DATE:20260423"));
    EXPECT_TRUE(text.starts_with("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    EXPECT_TRUE(text.ends_with("END:VCALENDAR\r\n"));
}

TEST(Calendar, EscapesWhatHasAMeaningOfItsOwn) {
    EXPECT_TRUE(holds(text_of({collecting()}), "DESCRIPTION:Risk\\; see row 3\\, position 4."));
}

TEST(Calendar, KeepsTheUidAndRaisesTheSequenceWhenItIsMadeAgain) {
    const auto line = [](const std::string& text, const std::string& name) {
        const auto at = text.find("\r\n" + name + ":") + 3 + name.size();
        return text.substr(at, text.find("\r\n", at) - at);
    };
    auto moved = collecting();
    moved.from = moved.from + 2;
    moved.to = moved.to + 2;
    const auto before = text_of({collecting()});
    const auto after = text_of({moved}, "2026-03-27");
    EXPECT_EQ(line(before, "UID"), line(after, "UID"));
    EXPECT_EQ(std::stoi(line(before, "SEQUENCE")) + 7, std::stoi(line(after, "SEQUENCE")));
}

// RFC 5545, 3.1: lines of at most 75 octets, folded with CRLF and a blank, which unfolding takes away.
TEST(Calendar, FoldsLongLinesBetweenCharacters) {
    auto event = collecting();
    std::string name;
    for (int i = 0; i < 60; ++i) {
        name += "ü€";
    }
    event.title = verbatim(name);
    const auto text = text_of({event});
    std::string unfolded = text;
    for (auto at = unfolded.find("\r\n "); at != std::string::npos; at = unfolded.find("\r\n ")) {
        unfolded.erase(at, 3);
    }
    EXPECT_TRUE(holds(unfolded, "SUMMARY:" + name));
    for (std::size_t at = 0, end = 0; (end = text.find("\r\n", at)) != std::string::npos; at = end + 2) {
        EXPECT_LE(end - at, 75U);
        EXPECT_NE(static_cast<unsigned char>(text[end - 1]) & 0xC0U, 0xC0U) << "cut inside of a character";
    }
}

TEST(Calendar, GivesDifferentWorkDifferentUids) {
    auto other = collecting();
    other.key = "collect-2026-Wren_lea";
    auto third = collecting();
    third.key = "collect-2026-Wren lea";
    const auto text = text_of({collecting(), other, third});
    EXPECT_TRUE(holds(text, "UID:pipward-collect-2026-Wren_5flea"));
    EXPECT_TRUE(holds(text, "UID:pipward-collect-2026-Wren_20lea"));
}

}  // namespace
}  // namespace pipward::paper
