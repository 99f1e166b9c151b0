// SPDX-License-Identifier: MIT
#include "pipward/paper/calendar.h"
#include "days.h"
#include "pipward/paper/read_calendar.h"
#include "pipward/paper/text.h"

#include <gtest/gtest.h>

namespace pipward::paper {
namespace {

using testing::day_of;

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

std::string value_of(const std::string& text, const std::string& name) {
    const auto at = text.find("\r\n" + name + ":") + 3 + name.size();
    return text.substr(at, text.find("\r\n", at) - at);
}

// RFC 5545, 3.8.1.11: STATUS of an event; 3.8.7.4: SEQUENCE rises with every significant revision.
TEST(Calendar, CancelsWhatIsGoneAndNotOver) {
    const auto as_of = day_of("2026-03-20");
    auto told = told_again({collecting()}, {}, as_of);
    ASSERT_EQ(told.size(), 1U);
    const auto gone = told_again({}, told, as_of);
    ASSERT_EQ(gone.size(), 1U);
    EXPECT_TRUE(gone[0].cancelled);
    EXPECT_GT(gone[0].sequence, told[0].sequence) << "on the very day";
    const auto text = text_of(gone);
    EXPECT_TRUE(holds(text, "STATUS:CANCELLED"));
    EXPECT_EQ(value_of(text, "UID"), value_of(text_of(told), "UID"));
    EXPECT_EQ(text.find("VALARM"), std::string::npos);
    EXPECT_TRUE(holds(text_of(told), "STATUS:CONFIRMED"));
    EXPECT_TRUE(told_again({}, told, day_of("2026-04-23")).empty()) << "what is over stays as it was";
}

TEST(Calendar, CountsARevisionOnlyWhereSomethingChanged) {
    const auto as_of = day_of("2026-03-20");
    const auto told = told_again({collecting()}, {}, as_of);
    EXPECT_EQ(told_again({collecting()}, told, as_of)[0].sequence, told[0].sequence);
    auto moved = collecting();
    moved.to = moved.to + 1;
    EXPECT_GT(told_again({moved}, told, as_of)[0].sequence, told[0].sequence);
    const auto gone = told_again({}, told, as_of);
    const auto again = told_again({collecting()}, gone, as_of);
    ASSERT_EQ(again.size(), 1U);
    EXPECT_FALSE(again[0].cancelled);
    EXPECT_GT(again[0].sequence, gone[0].sequence);
    EXPECT_EQ(told_again({}, gone, as_of)[0].sequence, gone[0].sequence) << "cancelled already";
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

TEST(ReadCalendar, GivesBackWhatWasTold) {
    const Day as_of = day_of("2026-03-20");
    CalendarEvent strange = collecting();
    strange.key = "pollen Grün/\"1\"_x";
    strange.text =
        verbatim("First, then; both\\and\nnext line of a text that is long enough to be folded somewhere");
    auto gone = collecting();
    gone.key = "gone";
    gone.cancelled = true;
    const auto text = calendar_text(std::vector{strange, gone}, "Larkfold", as_of);
    const auto read = events_of_calendar(text);
    ASSERT_EQ(read.size(), 2U);
    EXPECT_EQ(read[0].key, strange.key);
    EXPECT_EQ(read[0].from, strange.from);
    EXPECT_EQ(read[0].to, strange.to);
    EXPECT_EQ(read[0].title.text(), strange.title.text());
    EXPECT_EQ(read[0].text.text(), clean_text(strange.text.text()));
    EXPECT_EQ(read[0].sequence, sequence_on(as_of));
    EXPECT_TRUE(read[1].cancelled);
    EXPECT_EQ(told_again({strange}, read, as_of)[0].sequence, sequence_on(as_of)) << "nothing has changed";
}

TEST(ReadCalendar, PassesOverEventsOfOthers) {
    auto text = calendar_text(std::vector{collecting()}, "Larkfold", day_of("2026-03-20"));
    const std::string other =
        "BEGIN:VEVENT\r\nUID:dentist-1\r\nDTSTAMP:20260301T000000Z\r\nDTSTART:20260401T090000Z\r\nEND:"
        "VEVENT\r\n";
    text.insert(text.find("END:VCALENDAR"), other);
    EXPECT_EQ(events_of_calendar(text).size(), 1U);
}

TEST(ReadCalendar, RefusesWhatIsNoCalendar) {
    for (const auto* text : {"", "date,t_min,t_max\n", "BEGIN:VEVENT\r\nEND:VEVENT\r\n"}) {
        EXPECT_THROW(events_of_calendar(text), Error) << text;
    }
}

}  // namespace
}  // namespace pipward::paper
