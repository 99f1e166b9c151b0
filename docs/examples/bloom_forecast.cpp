// SPDX-License-Identifier: MIT
// When will each accession bloom? bloom_forecast BOOK DAY
#include <fmt/format.h>
#include <pipward/book/book.h>
#include <pipward/season/pipeline.h>

int main(int count, char** words) {
    if (count != 3 || !pipward::parse_iso_day(words[2])) {
        fmt::print(stderr, "bloom_forecast BOOK DAY, as in: bloom_forecast larkfold.gpkg 2026-03-20\n");
        return 2;
    }
    try {
        auto reading = pipward::book::read_book(words[1]);
        auto place = pipward::season::place_of(
            std::move(reading.orchard), {*pipward::parse_iso_day(words[2]), ""}, std::move(reading.findings));
        const auto told = pipward::season::make_forecast(place, pipward::season::MethodChoice::averaged);
        for (const auto& [accession, window] : told.forecast.of_accession) {
            const auto& full = told.forecast.windows[window].full;
            fmt::print("{}: full bloom {} to {}, median {}\n", accession, to_iso(full.p10), to_iso(full.p90),
                       to_iso(full.p50));
        }
    } catch (const pipward::Error& error) {
        for (const auto& finding : error.findings()) {
            fmt::print(stderr, "{}\n", to_text(finding));
        }
        return 1;
    }
}
