// SPDX-License-Identifier: MIT
// large_book PATH.gpkg TREES: a made-up book of 10,000, 100,000 or 1,000,000 trees, half of them seedlings
// with an accession of their own, with forty accessions observed in fourteen springs. All names and figures
// are invented.
#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

#include "pipward/book/book.h"
#include "pipward/book/records.h"
#include "place/large_orchard.h"

namespace pipward::testing {
namespace {

constexpr int first_year = 2010;
constexpr int springs = 14;
constexpr int observed_accessions = 40;

LargeForm form_of(int trees) {
    return trees >= 1'000'000 ? LargeForm{20, 200, 250, 300, 40}
           : trees >= 100'000 ? LargeForm{10, 100, 100, 300, 40}
                              : LargeForm{10, 20, 50, 200, 40};
}

// What the schema needs and searches do not.
void fill_in(Orchard& orchard) {
    for (auto& work : orchard.pollinations) {
        work.pollinated_on = make_day({2023, 4, 28}).value();
        work.flowers = 60;
    }
    for (auto& lot : orchard.seed_lots) {
        lot.seeds = 80;
    }
    Station station;
    station.name = "Yard";
    station.elevation = Metres{480};
    station.at = MapPoint{522000.0, 5331000.0, {}};
    orchard.stations.push_back(station);
}

void add_weather(Orchard& orchard) {
    for (Day day = make_day({first_year, 1, 1}).value();
         day <= make_day({first_year + springs - 1, 12, 31}).value(); day = day + 1) {
        const double season = std::cos((parts_of(day).month - 7.2) / 12 * 6.2832);
        WeatherDay made;
        made.station = "Yard";
        made.day = day;
        made.t_min = Celsius{4 + 9 * season};
        made.t_max = Celsius{13 + 11 * season};
        orchard.weather.push_back(made);
    }
}

void add_observations(Orchard& orchard) {
    for (int spring = 0; spring < springs; ++spring) {
        for (int i = 0; i < observed_accessions; ++i) {
            BloomObservation seen;
            seen.accession = orchard.accessions[static_cast<std::size_t>(i)].name;
            seen.observed_on = make_day({first_year + spring, 4, 20}).value() + (i * 7 + spring * 5) % 16;
            seen.bbch = Bbch{65};
            orchard.bloom_observations.push_back(seen);
        }
    }
}

template <class Record>
void append(const std::string& book, const std::vector<Record>& records) {
    if (!records.empty()) {
        book::append_rows(book, book::rows_to_append(records));
    }
}

}  // namespace
}  // namespace pipward::testing

int main(int argc, char** argv) {
    using namespace pipward;
    using namespace pipward::testing;
    if (argc < 3) {
        fmt::print(stderr, "usage: large_book PATH.gpkg TREES\n");
        return 2;
    }
    const std::string path = argv[1];
    try {
        auto orchard = large_orchard(form_of(std::atoi(argv[2])));
        fill_in(orchard);
        add_weather(orchard);
        add_observations(orchard);
        book::create_book(path, orchard.crs);
        append(path, orchard.stations);
        append(path, orchard.weather);
        append(path, orchard.accessions);
        append(path, orchard.trees);
        append(path, orchard.goals);
        append(path, orchard.pollinations);
        append(path, orchard.seed_lots);
        append(path, orchard.bloom_observations);
    } catch (const Error& error) {
        fmt::print(stderr, "{}\n", error.what());
        return 1;
    }
    return 0;
}
