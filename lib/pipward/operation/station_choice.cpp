// SPDX-License-Identifier: MIT
#include "pipward/operation/station_choice.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/operation/complaint.h"
#include "pipward/value/nearest.h"

namespace pipward::operation {
namespace {

Error no_such_station(const std::string& wanted, const std::vector<std::string>& names) {
    const auto meant = nearest(wanted, names);
    return {Trouble::usage,
            about_parameter("station", wanted, say("The book has no station '{}'.", wanted),
                            meant           ? say("Did you mean '{}'?", *meant)
                            : names.empty() ? say("Add a station to the book first.")
                                            : say("It has: {}.", fmt::format("{}", fmt::join(names, ", "))))};
}

Error unusable(std::string table, Sentence message, Sentence remedy) {
    return {Trouble::input,
            about_table(Level::error, std::move(table), std::move(message), std::move(remedy))};
}

std::map<std::string, int> days_by_station(const std::vector<WeatherDay>& weather) {
    std::map<std::string, int> days;
    for (const auto& day : weather) {
        ++days[day.station];
    }
    return days;
}

const Station& longest_record(Place& place) {
    const auto& stations = place.orchard.stations;
    auto days = days_by_station(place.orchard.weather);
    const auto best =
        std::ranges::max_element(stations, {}, [&](const Station& station) { return days[station.name]; });
    if (stations.size() > 1) {
        place.findings.push_back(about_table(Level::note, "station",
                                             say("Of {} stations {} was used: it has the most days, {}.",
                                                 stations.size(), best->name, days[best->name]),
                                             say("Name another with station.")));
    }
    return *best;
}

const Station& station_of(Place& place, const std::string& wanted) {
    const auto& stations = place.orchard.stations;
    if (wanted.empty()) {
        if (stations.empty()) {
            throw unusable("station", say("The book has no weather station."),
                           say("Add a point with its name and elevation to the table station."));
        }
        return longest_record(place);
    }
    return named_station(stations, wanted);
}

}  // namespace

const Station& named_station(const std::vector<Station>& stations, const std::string& wanted) {
    const auto found = std::ranges::find(stations, wanted, &Station::name);
    if (found == stations.end()) {
        std::vector<std::string> names;
        std::ranges::transform(stations, std::back_inserter(names), &Station::name);
        throw no_such_station(wanted, names);
    }
    return *found;
}

void choose_station(Place& place, const std::string& wanted) {
    place.station = station_of(place, wanted);
    if (!place.station.latitude) {
        throw unusable("station", say("Station {} has no place on the map.", place.station.name),
                       say("Give it a point: its latitude tells the length of the day."));
    }
    place.latitude = *place.station.latitude;
    place.hemisphere = hemisphere_of(place.latitude);
    place.series = weather::daily_series(place.orchard.weather, place.station.name);
    place.season = season_of(place.as_of, place.hemisphere);
    if (place.series.days.empty()) {
        throw unusable("weather_day", say("Station {} has no temperatures.", place.station.name),
                       say("Import them with weather-import."));
    }
}

}  // namespace pipward::operation
