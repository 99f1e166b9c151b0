// SPDX-License-Identifier: MIT
#include "pipward/seed/first_fruiting.h"

#include <algorithm>

#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/season_request.h"
#include "pipward/operation/seed/detail/fruit_tables.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    Day as_of;
    std::optional<int> year;
    bool keep = true;
};

Sentence summary_of(const seed::FirstFruits& fruits, int year) {
    const auto number = [&](seed::FruitState state) {
        return std::ranges::count(fruits.seedlings, state, &seed::FirstFruit::state);
    };
    auto summary =
        say("{} seedlings standing: {} have bloomed; of the others {} should fruit in {}, {} may, {} are "
            "overdue, {} are too young.",
            fruits.seedlings.size(), number(seed::FruitState::bloomed), number(seed::FruitState::due), year,
            number(seed::FruitState::possible),
            number(seed::FruitState::waiting) + number(seed::FruitState::overdue),
            number(seed::FruitState::young));
    if (fruits.unknown > 0) {
        summary += verbatim(" ");
        summary += say("For {} more the year of sowing is not known.", fruits.unknown);
    }
    return summary;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const int year = request.year.value_or(parts_of(request.as_of).year);
    const auto fruits = seed::first_fruits(reading.orchard, year, request.as_of);
    Outcome outcome;
    outcome.findings = reading.findings;
    outcome.tables = {first_fruit_table(fruits, year, reading.orchard.rows)};
    outcome.crs = reading.orchard.crs;
    keep_results(request.book, request.keep, outcome, lent);
    outcome.tables.push_back(family_table.of(seed::family_scores(reading.orchard, request.as_of)));
    outcome.summary = summary_of(fruits, year);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> first_fruit() {
    return declare<Request>(
        {.about = {"first-fruiting", "First fruiting and families", "Seed",
                   "When first fruiting of every seedling is expected, by species, rootstock and year of "
                   "sowing, so that the map shows where to look this year; and a summary of the scores of "
                   "each family, trait by trait."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::year, "year", "Year",
                                  "The year; that of the reference date where not given.")
                            .between(1900, 2200),
                        keep_parameter(&Request::keep), as_of_parameter(&Request::as_of)},
         .results = {first_fruit_shape(), family_table.shape()},
         .examples = {{"Which seedlings should fruit in 2026.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
