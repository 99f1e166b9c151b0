// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/read_checked.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <string_view>

namespace pipward::operation::detail {

namespace {

/// A record that goes on after so long a silence is a slip of the pen, not a record.
constexpr int longest_silence = 400;

/// The day that the book itself stands at: when a past day is looked from again, what was written down since
/// then is no mistake.
Day present_of(const Orchard& orchard, Day as_of) {
    std::set<Day> later;
    for (const auto& day : orchard.weather) {
        if (day.source == WeatherSource::observed && day.day > as_of) {
            later.insert(day.day);
        }
    }
    Day present = as_of;
    for (const Day day : later) {
        if (day - present > longest_silence) {
            break;
        }
        present = day;
    }
    return present;
}

void leave_out_misdated(Orchard& orchard, Day present) {
    const auto misdated = book::misdated_notes(orchard, present);
    std::erase_if(orchard.bloom_notes, [&](const BloomNote& note) { return misdated.contains(note.fid); });
}

constexpr std::array<std::string_view, 3> weather_tables{"station", "weather_day", "bloom_note"};

struct CheckedReading {
    book::BookReading reading;
    Day present;
};

CheckedReading read_and_check(const BookName& book, Day as_of, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    auto reading = book::read_book(book.location);
    lent.step(0.05, say("Checking the book"));
    const Day present = present_of(reading.orchard, as_of);
    const auto more = book::check_orchard(reading.orchard, present, book::unread_in(reading.findings));
    reading.findings.insert(reading.findings.end(), more.begin(), more.end());
    return {std::move(reading), present};
}

void expect_no_errors(book::BookReading& reading) {
    if (has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
}

}  // namespace

book::BookReading read_checked(const BookName& book, Day as_of, const Run& lent) {
    auto [reading, present] = read_and_check(book, as_of, lent);
    expect_no_errors(reading);
    leave_out_misdated(reading.orchard, present);
    return std::move(reading);
}

book::BookReading read_checked_without_weather(const BookName& book, Day as_of, const Run& lent) {
    auto [reading, present] = read_and_check(book, as_of, lent);
    std::erase_if(reading.findings, [](const Finding& finding) {
        return std::ranges::find(weather_tables, finding.table) != weather_tables.end();
    });
    expect_no_errors(reading);
    leave_out_misdated(reading.orchard, present);
    return std::move(reading);
}

void write_results(const BookName& book, std::span<const Table> results, const Wording& wording) {
    std::vector<Table> told;
    for (const auto& table : results) {
        told.push_back(spoken(table, wording));
    }
    try {
        book::replace_results(book.location, told);
    } catch (const Error& error) {
        auto findings = error.findings();
        if (error.trouble() == Trouble::access) {
            auto& remedy = findings.back().remedy;
            remedy += verbatim(remedy.empty() ? "" : " ");
            remedy += say("To see the results without keeping them, set write to no.");
        }
        throw Error(error.trouble(), std::move(findings));
    }
}

}  // namespace pipward::operation::detail
