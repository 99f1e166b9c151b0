// SPDX-License-Identifier: MIT
#include "pipward/season/detail/station_choice.h"

#include <algorithm>
#include <map>

#include "pipward/value/complaint.h"
#include "pipward/weather/named_station.h"

namespace pipward::season::detail {
namespace {

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
        place.findings.push_back(about_table(Level::notice, "station",
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
    return weather::named_station(stations, wanted);
}

}  // namespace

void choose_station(Place& place, const std::string& wanted) {
    place.station = station_of(place, wanted);
    if (!place.station.latitude) {
        throw unusable("station", say("Station {} has no location on the map.", place.station.name),
                       say("Give it a point: day length depends on its latitude."));
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

}  // namespace pipward::season::detail
