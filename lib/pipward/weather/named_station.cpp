// SPDX-License-Identifier: MIT
#include "pipward/weather/named_station.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/value/complaint.h"
#include "pipward/value/nearest.h"

namespace pipward::weather {
namespace {

Error no_such_station(const std::string& wanted, const std::vector<std::string>& names) {
    const auto meant = nearest(wanted, names);
    return {Trouble::usage,
            about_parameter("station", wanted, say("The book has no station '{}'.", wanted),
                            meant           ? say("Did you mean '{}'?", *meant)
                            : names.empty() ? say("Add a station to the book first.")
                                            : say("It has: {}.", fmt::format("{}", fmt::join(names, ", "))))};
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

}  // namespace pipward::weather
