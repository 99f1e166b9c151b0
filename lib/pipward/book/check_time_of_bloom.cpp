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
constexpr std::size_t enough_observations = 10;
constexpr int bloom_begins = 57;
constexpr int bloom_ends = 69;

bool is_of_bloom(const BloomObservation& observed, Day as_of) {
    return observed.bbch.code >= bloom_begins && observed.bbch.code <= bloom_ends &&
           observed.observed_on <= as_of;
}

int day_in_season(Day day, Hemisphere hemisphere) {
    return day - anchor_of(season_of(day, hemisphere), hemisphere);
}

std::optional<int> usual_day(const Orchard& orchard, Hemisphere hemisphere, Day as_of) {
    std::vector<int> days;
    for (const auto& observed : orchard.bloom_observations) {
        if (is_of_bloom(observed, as_of)) {
            days.push_back(day_in_season(observed.observed_on, hemisphere));
        }
    }
    if (days.size() < enough_observations) {
        return std::nullopt;
    }
    return math::middle_value(std::move(days));
}

/// Days after the book's usual day of bloom; nothing where that is near enough.
std::optional<int> far_off(Day day, int usual, Hemisphere hemisphere) {
    const int later = day_in_season(day, hemisphere) - usual;
    return std::abs(later) > far_off_days ? std::optional{later} : std::nullopt;
}

Sentence how_far_the_observation(int later) {
    return later > 0 ? say("The observation lies about {} days after the book's other bloom observations; it "
                           "is not used.",
                           later)
                     : say("The observation lies about {} days before the book's other bloom observations; "
                           "it is not used.",
                           -later);
}

Sentence how_far_the_work(int later) {
    return later > 0 ? say("The work lies about {} days after the book's other bloom observations.", later)
                     : say("The work lies about {} days before the book's other bloom observations.", -later);
}

struct FarOff {
    const BloomObservation* observed;
    int later = 0;  // days
};

std::vector<FarOff> far_off_observations(const Orchard& orchard, Day as_of) {
    const auto hemisphere = detail::hemisphere_in(orchard);
    const auto usual = usual_day(orchard, hemisphere, as_of);
    std::vector<FarOff> found;
    for (const auto& observed : orchard.bloom_observations) {
        const auto later = usual ? far_off(observed.observed_on, *usual, hemisphere) : std::nullopt;
        if (later && is_of_bloom(observed, as_of)) {
            found.push_back({&observed, *later});
        }
    }
    return found;
}

void check_bloom_observations_all(const Orchard& orchard, Day as_of, Findings& findings) {
    for (const auto& [observed, later] : far_off_observations(orchard, as_of)) {
        findings.push_back(detail::warning(
            {"bloom_observation", detail::fid_name(observed->fid), "observed_on",
             to_iso(observed->observed_on)},
            how_far_the_observation(later),
            say("Check the date and the stage; a second bloom in autumn is better left out.")));
    }
}

void check_work_in_bloom(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto hemisphere = detail::hemisphere_in(orchard);
    const auto usual = usual_day(orchard, hemisphere, as_of);
    for (const auto& work : orchard.pollinations) {
        const auto later = usual ? far_off(work.pollinated_on, *usual, hemisphere) : std::nullopt;
        if (later) {
            findings.push_back(
                detail::warning({"pollination", work.tag, "pollinated_on", to_iso(work.pollinated_on)},
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

std::set<std::int64_t> misdated_observations(const Orchard& orchard, Day as_of) {
    std::set<std::int64_t> fids;
    for (const auto& far_off : far_off_observations(orchard, as_of)) {
        fids.insert(far_off.observed->fid);
    }
    return fids;
}

void detail::check_time_of_bloom(const Orchard& orchard, Day as_of, Findings& findings) {
    check_bloom_observations_all(orchard, as_of, findings);
    check_work_in_bloom(orchard, as_of, findings);
}

}  // namespace pipward::book
