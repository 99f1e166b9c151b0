// SPDX-License-Identifier: MIT
#include "pipward/book/detail/check.h"

namespace pipward::book::detail {

void check_emptiness(const Orchard& orchard, const Names& names, Findings& findings) {
    const auto lacks = [&](const auto& rows, const char* table) {
        return rows.empty() && !names.unread.contains(table);
    };
    if (lacks(orchard.trees, "tree")) {
        findings.push_back(
            warning({"tree"}, say("The book has no trees."),
                    say("Digitise the trees in a GIS, or copy a layer that you have into the table.")));
    }
    if (lacks(orchard.bloom_observations, "bloom_observation")) {
        findings.push_back(warning({"bloom_observation"}, say("The book has no bloom observations."),
                                   say("Record BBCH stages; without any, bloom cannot be forecast.")));
    }
    if (lacks(orchard.stations, "station")) {
        findings.push_back(error({"station"}, say("The book has no weather station."),
                                 say("Add a station with its location and elevation.")));
    } else if (lacks(orchard.weather, "weather_day")) {
        findings.push_back(error({"weather_day"}, say("The book has no weather."),
                                 say("Import daily temperatures with weather-import.")));
    }
}

}  // namespace pipward::book::detail
