// SPDX-License-Identifier: MIT
#include "pipward/place/detail/visit_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <set>

#include "paths.h"
#include "place/tour_files.h"
#include "testing.h"

namespace pipward::place {
namespace {

struct Spot {
    double x = 0;
    double y = 0;
};

// Numbers that look like chance and are the same everywhere (Lehmer's generator).
class Numbers {
  public:
    explicit Numbers(std::uint64_t seed) : state_(seed) {}
    double next() {
        state_ = state_ * 48271 % 2147483647;
        return static_cast<double>(state_) / 2147483647.0;
    }

  private:
    std::uint64_t state_;
};

detail::PlaceDistances straight(const std::vector<Spot>& spots) {
    detail::PlaceDistances distances(spots.size());
    for (std::size_t a = 0; a < spots.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            distances.set(a, b, std::hypot(spots[a].x - spots[b].x, spots[a].y - spots[b].y));
        }
    }
    return distances;
}

std::vector<Spot> scattered(std::size_t count, std::uint64_t seed) {
    Numbers numbers(seed);
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < count; ++i) {
        spots.push_back({100 * numbers.next(), 100 * numbers.next()});
    }
    return spots;
}

// A closed tour: from place 0 over all others and back.
detail::Round closed(std::size_t places) {
    detail::Round round;
    for (std::uint32_t place = 1; place < places; ++place) {
        round.stops.push_back({place});
    }
    round.start = round.end = {0};
    return round;
}

double by_brute_force(const detail::PlaceDistances& distances, const detail::Round& round) {
    std::vector<std::uint32_t> stops(round.stops.size());
    std::iota(stops.begin(), stops.end(), 0U);
    double shortest = std::numeric_limits<double>::infinity();
    do {
        const auto sides = std::size_t{1} << stops.size();
        for (std::size_t side = 0; side < sides; ++side) {
            std::vector<detail::Visit> order;
            for (const auto stop : stops) {
                const auto& places = round.stops[stop];
                order.push_back({stop, places[(side >> stop) % places.size()]});
            }
            shortest = std::min(shortest, detail::round_length(distances, round, order));
        }
    } while (std::next_permutation(stops.begin(), stops.end()));
    return shortest;
}

// Stops with one or two places each; with or without a start and an end.
detail::Round varied_round(std::size_t stops, int variant, std::uint32_t& places) {
    detail::Round round;
    for (std::size_t stop = 0; stop < stops; ++stop) {
        round.stops.push_back({places++});
        if ((stop + static_cast<std::size_t>(variant)) % 3 != 0) {
            round.stops.back().push_back(places++);
        }
    }
    if (variant % 2 == 1) {
        round.start = {places++, places++};
    }
    if (variant % 4 >= 2) {
        round.end = variant % 4 == 3 ? round.start : detail::StopPlaces{places++};
    }
    return round;
}

void expect_each_stop_once(const detail::Round& round, const std::vector<detail::Visit>& order) {
    std::set<std::uint32_t> stops;
    for (const auto& visit : order) {
        EXPECT_TRUE(stops.insert(visit.stop).second) << visit.stop;
        EXPECT_NE(std::ranges::find(round.stops.at(visit.stop), visit.place),
                  round.stops.at(visit.stop).end());
    }
    EXPECT_EQ(stops.size(), round.stops.size());
}

TEST(VisitOrder, OfFewStopsIsAsShortAsTheBestOfAllOrdersAndSides) {
    int cases = 0;
    for (std::size_t stops = 1; stops <= 6; ++stops) {
        for (int variant = 0; variant < 8; ++variant) {
            std::uint32_t places = 0;
            const auto round = varied_round(stops, variant, places);
            const auto distances = straight(scattered(places, 7 * stops + static_cast<std::size_t>(variant)));
            const auto order = detail::visit_order(distances, round);
            expect_each_stop_once(round, order);
            EXPECT_NEAR(detail::round_length(distances, round, order), by_brute_force(distances, round), 1e-9)
                << stops << " stops, variant " << variant;
            ++cases;
        }
    }
    EXPECT_EQ(cases, 48);
}

TEST(VisitOrder, ByLocalSearchIsHardlyEverLongerThanTheShortest) {
    // The two sides of a row lie near each other, or a walk round the row apart.
    int shortest_found = 0;
    constexpr int cases = 20;
    for (int variant = 0; variant < cases; ++variant) {
        std::uint32_t places = 0;
        const auto round = varied_round(11, variant, places);
        const auto distances = straight(scattered(places, 1000 + static_cast<std::size_t>(variant)));
        const double shortest =
            detail::round_length(distances, round, detail::shortest_order(distances, round));
        const auto searched = detail::searched_order(distances, round);
        expect_each_stop_once(round, searched);
        const double metres = detail::round_length(distances, round, searched);
        shortest_found += metres <= shortest + 1e-9 ? 1 : 0;
        EXPECT_LE(metres, 1.02 * shortest) << variant;
    }
    EXPECT_GE(shortest_found, 18);
}

TEST(VisitOrder, GoesRoundACircleOfPointsAsTheyLie) {
    std::vector<Spot> spots;
    constexpr int count = 150;
    for (int i = 0; i < count; ++i) {
        const double angle = 2 * 3.14159265358979323846 * ((i * 47) % count) / count;
        spots.push_back({50 * std::cos(angle), 50 * std::sin(angle)});
    }
    const auto distances = straight(spots);
    const auto round = closed(count);
    const double chord = 100 * std::sin(3.14159265358979323846 / count);
    EXPECT_NEAR(detail::round_length(distances, round, detail::visit_order(distances, round)), count * chord,
                1e-6);
}

TEST(VisitOrder, OfAGridIsWithinTwoPercentOfTheShortest) {
    // A grid with an even number of points has a closed tour in which every step is one unit, and none
    // shorter.
    std::vector<Spot> spots;
    for (int i = 0; i < 18 * 20; ++i) {
        spots.push_back({static_cast<double>(i % 20), static_cast<double>(i / 20)});
    }
    const auto distances = straight(spots);
    const auto round = closed(spots.size());
    const auto order = detail::visit_order(distances, round);
    expect_each_stop_once(round, order);
    EXPECT_LE(detail::round_length(distances, round, order), 1.02 * 18 * 20);
}

TEST(VisitOrder, IsWithinTwoPercentOfPublishedShortestTours) {
    int seen = 0;
    for (const auto& row : testing::oracle_rows("place-tours.txt")) {
        const auto tour = testing::read_tour_file(testing::shared_file("tsp/" + row.at(0)));
        if (!tour) {
            continue;
        }
        const auto distances = testing::distances_of(*tour);
        const auto round = closed(tour->size);
        const double metres = detail::round_length(distances, round, detail::visit_order(distances, round));
        const double optimum = std::stod(row.at(1));
        EXPECT_GE(metres, optimum) << row.at(0);
        EXPECT_LE(metres, 1.02 * optimum) << row.at(0);
        RecordProperty(row.at(0), std::to_string(metres / optimum));
        ++seen;
    }
    if (seen == 0) {
        GTEST_SKIP() << "The open instances of tours are not here.";
    }
}

TEST(VisitOrder, IsTheSameEveryTimeAndNeverLongerThanGoingToTheNearest) {
    const auto distances = straight(scattered(120, 5));
    auto round = closed(120);
    round.end = {};
    const auto once = detail::visit_order(distances, round);
    const auto twice = detail::visit_order(distances, round);
    ASSERT_EQ(once.size(), twice.size());
    for (std::size_t i = 0; i < once.size(); ++i) {
        EXPECT_EQ(once[i].stop, twice[i].stop);
    }
    std::set<std::uint32_t> left;
    for (std::uint32_t stop = 0; stop < round.stops.size(); ++stop) {
        left.insert(stop);
    }
    std::vector<detail::Visit> greedy;
    for (std::uint32_t at = 0; !left.empty();) {
        const auto next = *std::ranges::min_element(
            left, {}, [&](auto stop) { return distances(at, round.stops[stop].front()); });
        greedy.push_back({next, round.stops[next].front()});
        at = greedy.back().place;
        left.erase(next);
    }
    EXPECT_LT(detail::round_length(distances, round, once), detail::round_length(distances, round, greedy));
}

TEST(VisitOrder, OfNothingIsEmptyAndOfOneStopTakesTheNearerSide) {
    const auto distances = straight({{0, 0}, {5, 0}, {3, 0}});
    EXPECT_TRUE(detail::visit_order(distances, {{}, {0}, {}}).empty());
    const auto order = detail::visit_order(distances, {{{1, 2}}, {0}, {}});
    ASSERT_EQ(order.size(), 1U);
    EXPECT_EQ(order[0].place, 2U);
}

TEST(VisitOrder, TakesManyStopsAtOneSpot) {
    const auto distances = straight(std::vector<Spot>(40, Spot{1, 1}));
    const auto round = closed(40);
    const auto order = detail::visit_order(distances, round);
    expect_each_stop_once(round, order);
    EXPECT_EQ(detail::round_length(distances, round, order), 0);
}

TEST(VisitOrder, StopsWhenAskedWhileItSearches) {
    const auto distances = straight(scattered(60, 9));
    EXPECT_THROW(
        (void)detail::visit_order(distances, closed(60), [](double) { throw std::runtime_error("stop"); }),
        std::runtime_error);
}

}  // namespace
}  // namespace pipward::place
