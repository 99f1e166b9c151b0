// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/weather/hours.h"

/// The weather that the made-up station lived through, and what it wrote down of it.
namespace pipward::larkfold {

/// The day that the demonstration looks from; the station's last reading in the book.
Day demonstration_day();

/// What the air really did, day by day without gaps. Bloom follows this, whatever the station missed.
struct TrueWeather {
    Day first;
    std::vector<weather::DayExtremes> days;  ///< to the tenth of a degree

    const weather::DayExtremes& at(Day day) const { return days[static_cast<std::size_t>(day - first)]; }
    Day end() const { return first + static_cast<int>(days.size()); }
};

/// From 1 October 2011 to 30 June 2026. Each day's mean is a monthly normal, plus a departure of the month,
/// one of the winter, and a day-to-day departure that decays (AR(1)); each day's range is a monthly normal
/// times a factor that decays likewise.
TrueWeather true_weather();

/// The station's rows: observed up to the demonstration day but for a gap of two days and one of five weeks,
/// then ten forecast days that err the more the farther they look.
std::vector<WeatherDay> station_record(const TrueWeather& weather);
/// The three weeks that follow in the same spring, observed: for trying an import.
std::vector<WeatherDay> later_days(const TrueWeather& weather);

}  // namespace pipward::larkfold
