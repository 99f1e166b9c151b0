// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <optional>

#include "pipward/book/book.h"
#include "pipward/book/detail/check.h"
#include "pipward/math/quantile.h"
#include "pipward/value/season.h"

namespace pipward::book {
namespace {

// The earliest and the latest bloom of one kind of fruit in one orchard lie some six weeks apart over all its
// years. Common practice, no source.
constexpr int far_off_days = 60;
constexpr std::size_t enough_notes = 10;
constexpr int bloom_begins = 57;
constexpr int bloom_ends = 69;

bool is_of_bloom(const BloomNote& noted, Day as_of) {
    return noted.bbch.code >= bloom_begins && noted.bbch.code <= bloom_ends && noted.noted_on <= as_of;
}

int day_in_season(Day day, Hemisphere hemisphere) {
    return day - anchor_of(season_of(day, hemisphere), hemisphere);
}

std::optional<int> usual_day(const Orchard& orchard, Hemisphere hemisphere, Day as_of) {
    std::vector<int> days;
    for (const auto& noted : orchard.bloom_notes) {
        if (is_of_bloom(noted, as_of)) {
            days.push_back(day_in_season(noted.noted_on, hemisphere));
        }
    }
    if (days.size() < enough_notes) {
        return std::nullopt;
    }
    return math::middle_value(std::move(days));
}

/// Days after the book's usual day of bloom; nothing where that is near enough.
std::optional<int> far_off(Day day, int usual, Hemisphere hemisphere) {
    const int later = day_in_season(day, hemisphere) - usual;
    return std::abs(later) > far_off_days ? std::optional{later} : std::nullopt;
}

Sentence how_far_the_note(int later) {
    return later > 0
               ? say("The note lies about {} days after the book's other notes of bloom; it is not used.",
                     later)
               : say("The note lies about {} days before the book's other notes of bloom; it is not used.",
                     -later);
}

Sentence how_far_the_work(int later) {
    return later > 0 ? say("The work lies about {} days after the book's other notes of bloom.", later)
                     : say("The work lies about {} days before the book's other notes of bloom.", -later);
}

struct FarOff {
    const BloomNote* noted;
    int later = 0;  // days
};

std::vector<FarOff> far_off_notes(const Orchard& orchard, Day as_of) {
    const auto hemisphere = detail::hemisphere_in(orchard);
    const auto usual = usual_day(orchard, hemisphere, as_of);
    std::vector<FarOff> found;
    for (const auto& noted : orchard.bloom_notes) {
        const auto later = usual ? far_off(noted.noted_on, *usual, hemisphere) : std::nullopt;
        if (later && is_of_bloom(noted, as_of)) {
            found.push_back({&noted, *later});
        }
    }
    return found;
}

void check_notes(const Orchard& orchard, Day as_of, Findings& findings) {
    for (const auto& [noted, later] : far_off_notes(orchard, as_of)) {
        findings.push_back(detail::warning(
            {"bloom_note", detail::fid_name(noted->fid), "noted_on", to_iso(noted->noted_on)},
            how_far_the_note(later),
            say("Check the date and the stage; a second bloom in autumn is better left out.")));
    }
}

void check_work(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto hemisphere = detail::hemisphere_in(orchard);
    const auto usual = usual_day(orchard, hemisphere, as_of);
    for (const auto& work : orchard.pollinations) {
        const auto later = usual ? far_off(work.worked_on, *usual, hemisphere) : std::nullopt;
        if (later) {
            findings.push_back(detail::warning({"pollination", work.tag, "worked_on", to_iso(work.worked_on)},
                                               how_far_the_work(*later), say("Check the date.")));
        }
    }
}

}  // namespace

Hemisphere detail::hemisphere_in(const Orchard& orchard) {
    const auto placed = std::ranges::find_if(
        orchard.stations, [](const Station& station) { return station.latitude.has_value(); });
    return placed == orchard.stations.end() ? Hemisphere::north : hemisphere_of(*placed->latitude);
}

std::set<std::int64_t> misdated_notes(const Orchard& orchard, Day as_of) {
    std::set<std::int64_t> fids;
    for (const auto& far_off : far_off_notes(orchard, as_of)) {
        fids.insert(far_off.noted->fid);
    }
    return fids;
}

void detail::check_time_of_bloom(const Orchard& orchard, Day as_of, Findings& findings) {
    check_notes(orchard, as_of, findings);
    check_work(orchard, as_of, findings);
}

}  // namespace pipward::book
