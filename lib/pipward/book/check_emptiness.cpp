// SPDX-License-Identifier: MIT
#include "pipward/book/check.h"

namespace pipward {

void check_emptiness(const Orchard& orchard, const Names& names, Findings& findings) {
    const auto lacks = [&](const auto& rows, const char* table) {
        return rows.empty() && !names.unread.contains(table);
    };
    if (lacks(orchard.trees, "tree")) {
        findings.push_back(
            error({"tree"}, "The book has no trees.",
                  "Digitise the trees in a GIS, or copy a layer that you have into the table."));
    }
    if (lacks(orchard.bloom_notes, "bloom_note")) {
        findings.push_back(warning({"bloom_note"}, "The book has no bloom notes.",
                                   "Write down the stages you see; without any, bloom cannot be foreseen."));
    }
    if (lacks(orchard.stations, "station")) {
        findings.push_back(error({"station"}, "The book has no weather station.",
                                 "Add a station with its place and elevation."));
    } else if (lacks(orchard.weather, "weather_day")) {
        findings.push_back(error({"weather_day"}, "The book has no weather.",
                                 "Import daily temperatures with weather-import."));
    }
}

}  // namespace pipward
