// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

/// In which order to make a round of stops so that the way is short.
namespace pipward::place::detail {

/// Metres between any two places: as far there as back.
class PlaceDistances {
  public:
    explicit PlaceDistances(std::size_t places) : places_(places), metres_(places * places, 0.0) {}

    std::size_t places() const { return places_; }
    double operator()(std::size_t a, std::size_t b) const { return metres_[a * places_ + b]; }
    void set(std::size_t a, std::size_t b, double metres) {
        metres_[a * places_ + b] = metres;
        metres_[b * places_ + a] = metres;
    }

  private:
    std::size_t places_;
    std::vector<double> metres_;
};

/// A stop that may be made at any one of several places: either side of a row.
using StopPlaces = std::vector<std::uint32_t>;

struct Round {
    std::vector<StopPlaces> stops;  ///< each has at least one place; no two share one
    StopPlaces start;               ///< where to begin; anywhere where empty
    StopPlaces end;                 ///< where to end; anywhere where empty
};

struct Visit {
    std::uint32_t stop = 0;   ///< into Round::stops
    std::uint32_t place = 0;  ///< where it is made
};

/// With so many stops the shortest order is found for certain.
inline constexpr std::size_t exact_stops = 12;

/// The order of a round: every stop once. The shortest of all for up to exact_stops stops (Held & Karp 1962,
/// J. SIAM 10:196); for more a good one by local search. `tell` is called now and then with the share done;
/// it may throw to stop the work.
std::vector<Visit> visit_order(const PlaceDistances& distances, const Round& round,
                               const std::function<void(double)>& tell = {});

/// Inside of the room: the two ways. Both need at least one stop; the first at most exact_stops.
std::vector<Visit> shortest_order(const PlaceDistances& distances, const Round& round);
std::vector<Visit> searched_order(const PlaceDistances& distances, const Round& round,
                                  const std::function<void(double)>& tell = {});

/// How far a round in that order is, from its start to its end.
double round_length(const PlaceDistances& distances, const Round& round, const std::vector<Visit>& order);

/// Inside of the room: from the nearest of `places`, or nothing where there is none.
double nearest_of(const PlaceDistances& distances, const StopPlaces& places, std::uint32_t to);

}  // namespace pipward::place::detail
