// SPDX-License-Identifier: MIT
// Makes the made-up Larkfold Orchard again: make-larkfold BOOK [CSV]
//   BOOK  the orchard book to write, a .gpkg; an older one of that name is replaced
//   CSV   the days after the book's last observed one, for trying an import of weather
#include <cpl_conv.h>
#include <fmt/format.h>

#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>

#include "bloom_walks.h"
#include "book_rows.h"
#include "crosses.h"
#include "parents.h"
#include "past_crosses.h"
#include "pipward/book/book.h"
#include "pipward/operation/book/style_book.h"
#include "planting.h"
#include "seedlings.h"
#include "site.h"
#include "weather_story.h"

namespace {

using namespace pipward;
using namespace pipward::larkfold;

/// The time that the GeoPackage says it was written at, so that it is the same file every time.
constexpr auto file_time = "2026-03-20T12:00:00.000Z";

template <class Record>
void add(std::vector<Record>& all, const std::vector<Record>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

void grow(Orchard& orchard) {
    orchard.stations = {larkfold_station()};
    for (const auto& parent : parents()) {
        orchard.accessions.push_back(accession_of(parent));
    }
    add(orchard.accessions, seedling_accessions());
    orchard.blend_members = pollen_blends();
    orchard.trees = planted_trees();
    add(orchard.trees, seedling_trees());
}

void work(Orchard& orchard, TrueBloom& bloom) {
    orchard.bloom_observations = bloom_observations(orchard.trees, bloom);
    orchard.goals = cross_goals();
    auto store = pollen_store(bloom);
    orchard.pollen_lots = std::move(store.lots);
    orchard.pollen_tests = std::move(store.tests);
    auto past = past_crosses(orchard.trees, bloom);
    orchard.pollinations = std::move(past.pollinations);
    orchard.fruits = std::move(past.fruits);
    orchard.seed_lots = std::move(past.seed_lots);
    orchard.germination_counts = std::move(past.germination_counts);
    orchard.seed_withdrawals = std::move(past.seed_withdrawals);
    orchard.trait_scores = seedling_scores(orchard.trees);
}

void write_book(const std::string& path, const Orchard& orchard) {
    std::filesystem::remove(path);
    book::create_book(path, site_crs);
    for (const auto& table : ground_tables()) {
        book::append_rows(path, table);
    }
    for (const auto& table : record_tables(orchard)) {
        book::append_rows(path, table);
    }
    operation::style_book(path);
}

void write_later_days(const std::string& path, const TrueWeather& weather) {
    std::ofstream file(path, std::ios::binary);
    file << "day,t_min_c,t_max_c\n";
    for (const auto& row : later_days(weather)) {
        file << fmt::format("{},{:.1f},{:.1f}\n", to_iso(row.day), row.t_min.degrees, row.t_max.degrees);
    }
    if (!file.flush()) {
        throw std::runtime_error("could not write " + path);
    }
}

void make(const std::string& book, const std::string& csv) {
    const auto weather = true_weather();
    TrueBloom bloom(weather);
    Orchard orchard;
    grow(orchard);
    work(orchard, bloom);
    orchard.weather = station_record(weather);
    write_book(book, orchard);
    if (!csv.empty()) {
        write_later_days(csv, weather);
    }
}

}  // namespace

int main(int count, char** words) {
    if (count < 2 || count > 3) {
        fmt::print(stderr, "usage: make-larkfold BOOK.gpkg [DAYS.csv]\n");
        return 2;
    }
    try {
        CPLSetThreadLocalConfigOption("OGR_CURRENT_DATE", file_time);
        make(words[1], count == 3 ? words[2] : "");
    } catch (const Error& error) {
        for (const auto& finding : error.findings()) {
            fmt::print(stderr, "{}\n", to_text(finding));
        }
        return 1;
    } catch (const std::exception& error) {
        fmt::print(stderr, "error: {}\n", error.what());
        return 3;
    }
    return 0;
}
