// SPDX-License-Identifier: MIT
#include "pipward/book/checked_reading.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>

namespace pipward::book {
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
    const auto misdated = misdated_observations(orchard, present);
    std::erase_if(orchard.bloom_observations,
                  [&](const BloomObservation& remark) { return misdated.contains(remark.fid); });
}

constexpr std::array<std::string_view, 3> weather_tables{"station", "weather_day", "bloom_observation"};

constexpr std::array<std::string_view, 3> ground_tables{"tree", "tree_row", "block"};

bool is_of(const std::array<std::string_view, 3>& tables, const Finding& finding) {
    return std::ranges::find(tables, finding.table) != tables.end();
}

struct CheckedReading {
    BookReading reading;
    Day present;
};

CheckedReading read_and_check(const BookAt& book, Day as_of, const ReadingStep& step) {
    const auto tell = [&](double share, const Sentence& doing) {
        if (step) {
            step(share, doing);
        }
    };
    tell(0.0, say("Reading the book"));
    auto reading = read_book(book);
    tell(0.05, say("Checking the book"));
    const Day present = present_of(reading.orchard, as_of);
    const auto more = check_orchard(reading.orchard, present, unread_in(reading.findings));
    reading.findings.insert(reading.findings.end(), more.begin(), more.end());
    return {std::move(reading), present};
}

BookReading sound(CheckedReading checked) {
    auto& reading = checked.reading;
    if (has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
    leave_out_misdated(reading.orchard, checked.present);
    return std::move(reading);
}

/// What of the tables can be read; `needed` are the rows without which nothing can be done.
template <class Rows>
BookReading read_what_can_be(const BookAt& book, const std::set<std::string>& tables, Rows Orchard::*needed) {
    auto reading = read_tables(book, tables);
    if ((reading.orchard.*needed).empty() && has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
    tell_as_warnings(reading.findings);
    return reading;
}

}  // namespace

BookReading read_checked(const BookAt& book, Day as_of, const ReadingStep& step) {
    return sound(read_and_check(book, as_of, step));
}

BookReading read_checked_without_weather(const BookAt& book, Day as_of, const ReadingStep& step) {
    auto checked = read_and_check(book, as_of, step);
    std::erase_if(checked.reading.findings,
                  [](const Finding& finding) { return is_of(weather_tables, finding); });
    return sound(std::move(checked));
}

BookReading read_checked_without_ground(const BookAt& book, Day as_of, const ReadingStep& step) {
    auto checked = read_and_check(book, as_of, step);
    auto& findings = checked.reading.findings;
    std::erase_if(findings, [](const Finding& finding) { return is_of(weather_tables, finding); });
    for (auto& finding : findings) {
        finding.level =
            is_of(ground_tables, finding) ? std::min(finding.level, Level::warning) : finding.level;
    }
    return sound(std::move(checked));
}

BookReading read_trees(const BookAt& book) {
    return read_what_can_be(book,
                            {"block", "tree_row", "tree", "accession", "blend", "bloom_observation",
                             "cross_goal", "pollination", "pollen_lot", "seed_lot", "trait_score"},
                            &Orchard::trees);
}

BookReading read_stands(const BookAt& book) {
    return read_what_can_be(book, {"block", "tree_row", "tree"}, &Orchard::trees);
}

BookReading read_line(const BookAt& book) {
    return read_what_can_be(book, {"tree", "accession", "blend", "cross_goal", "trait_score"},
                            &Orchard::accessions);
}

void tell_as_warnings(Findings& findings) {
    for (auto& finding : findings) {
        finding.level = std::min(finding.level, Level::warning);
    }
}

}  // namespace pipward::book
