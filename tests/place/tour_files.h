// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

#include "pipward/place/detail/visit_order.h"

/// Reads the instances of TSPLIB 95 that the tests need, by its own rules of distance.
namespace pipward::testing {

struct TourFile {
    std::string kind;  // EDGE_WEIGHT_TYPE
    std::size_t size = 0;
    std::vector<double> numbers;  // of the one section that has any
};

inline std::optional<TourFile> read_tour_file(const std::string& path) {
    std::ifstream file(path);
    if (!file) {
        return std::nullopt;
    }
    TourFile tour;
    bool in_section = false;
    for (std::string line; std::getline(file, line) && line.find("DISPLAY_DATA_SECTION") != 0;) {
        std::istringstream words(line);
        std::string first;
        words >> first;
        const auto after = line.find(':') == std::string::npos ? "" : line.substr(line.find(':') + 1);
        if (first.rfind("DIMENSION", 0) == 0) {
            tour.size = std::stoul(after);
        } else if (first.rfind("EDGE_WEIGHT_TYPE", 0) == 0) {
            std::istringstream(after) >> tour.kind;
        } else if (first == "NODE_COORD_SECTION" || first == "EDGE_WEIGHT_SECTION") {
            in_section = true;
        } else if (in_section) {
            std::istringstream numbers(line);
            for (double number = 0; numbers >> number;) {
                tour.numbers.push_back(number);
            }
        }
    }
    return tour;
}

inline double geographic_radians(double degrees_minutes) {
    const double degrees = std::trunc(degrees_minutes);
    return 3.141592 * (degrees + 5.0 * (degrees_minutes - degrees) / 3.0) / 180.0;
}

inline double geographic_distance(double lat1, double lon1, double lat2, double lon2) {
    const double q1 = std::cos(geographic_radians(lon1) - geographic_radians(lon2));
    const double q2 = std::cos(geographic_radians(lat1) - geographic_radians(lat2));
    const double q3 = std::cos(geographic_radians(lat1) + geographic_radians(lat2));
    return std::trunc(6378.388 * std::acos(0.5 * ((1.0 + q1) * q2 - (1.0 - q1) * q3)) + 1.0);
}

inline place::detail::PlaceDistances distances_of(const TourFile& tour) {
    place::detail::PlaceDistances distances(tour.size);
    std::size_t next = 0;
    for (std::size_t a = 0; a < tour.size; ++a) {
        for (std::size_t b = 0; b <= a; ++b) {
            if (tour.kind == "EXPLICIT") {  // lower triangle with its diagonal
                distances.set(a, b, tour.numbers.at(next++));
                continue;
            }
            const auto at = [&](std::size_t node, std::size_t i) { return tour.numbers.at(3 * node + i); };
            distances.set(a, b,
                          tour.kind == "GEO"
                              ? (a == b ? 0 : geographic_distance(at(a, 1), at(a, 2), at(b, 1), at(b, 2)))
                              : std::floor(std::hypot(at(a, 1) - at(b, 1), at(a, 2) - at(b, 2)) + 0.5));
        }
    }
    return distances;
}

}  // namespace pipward::testing
