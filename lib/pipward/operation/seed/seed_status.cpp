// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/season/detail/plan_answer.h"
#include "pipward/operation/seed/detail/named_crosses.h"
#include "pipward/operation/seed/detail/seed_status_tables.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    Day as_of;
    std::string crosses;
    bool open_only = false;
};

bool is_open(const seed::CrossTally& tally, const seed::NextWork& next) {
    return next.work != seed::SeedWork::nothing || !tally.flowers.count;
}

std::vector<CrossRow> cross_rows(const Request& request, const std::vector<std::string>& named,
                                 const std::vector<seed::CrossTally>& tallies, const Orchard& orchard) {
    const OrchardIndex book(orchard);
    std::vector<CrossRow> rows;
    for (const auto& tally : tallies) {
        const auto next = seed::next_work(tally, book, request.as_of);
        if (is_named(named, tally.goal->code) && (!request.open_only || is_open(tally, next))) {
            rows.push_back({&tally, next});
        }
    }
    return rows;
}

std::vector<LotRow> lot_rows(const Request& request, const std::vector<std::string>& named,
                             const std::vector<seed::LotCourse>& courses, double expected) {
    std::vector<LotRow> rows;
    for (const auto* course : seed::lots_on_hand(courses, "", request.as_of)) {
        if (is_named(named, course->lot->cross)) {
            rows.push_back({course, request.as_of, expected});
        }
    }
    return rows;
}

Sentence summary_of(const std::vector<CrossRow>& rows, const std::vector<LotRow>& lots) {
    const auto late = std::ranges::count_if(rows, [](const CrossRow& row) { return row.next.late; });
    const auto open = std::ranges::count_if(
        rows, [](const CrossRow& row) { return row.next.work != seed::SeedWork::nothing; });
    const auto crosses = rows.size() == 1 ? say("1 cross") : say("{} crosses", rows.size());
    const auto waiting = open == 1 ? say("1 has work due") : say("{} have work due", open);
    const auto left =
        lots.size() == 1 ? say("Seed is left in 1 lot.") : say("Seed is left in {} lots.", lots.size());
    return say("{}: {}, {} of it late. {}", crosses, waiting, late, left);
}

/// The seed's work of the crosses that are shown.
std::vector<season::FieldWorkItem> work_of(const std::vector<CrossRow>& rows, const Orchard& orchard,
                                           Day as_of) {
    auto work = season::seed_work(orchard, as_of);
    std::erase_if(work, [&](const season::FieldWorkItem& item) {
        return std::ranges::none_of(rows,
                                    [&](const CrossRow& row) { return row.tally->goal->code == item.cross; });
    });
    return work;
}

/// Fruit set by genus where any was counted.
std::vector<FigureRow> figure_rows(const seed::Learned& learned) {
    std::vector<FigureRow> rows;
    for (const auto& [genus, set] : learned.fruit_set_of_genus) {
        rows.push_back({genus.empty() ? say("fruit set of pollinated flowers")
                                      : say("fruit set of pollinated flowers, {}", genus),
                        &set});
    }
    if (rows.empty()) {
        rows.push_back({say("fruit set of pollinated flowers"), &learned.fruit_set});
    }
    rows.push_back({say("spread of fruit set between crosses"), &learned.fruit_set_sd});
    rows.push_back({say("sound seeds per fruit"), &learned.seeds_per_fruit, 1, "seeds"});
    rows.push_back({say("germination of seeds"), &learned.germination});
    return rows;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0, say("Reading the book"));
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto named = named_crosses(request.crosses, reading.orchard);
    const auto tallies = seed::tally_crosses(reading.orchard, request.as_of);
    const auto courses = seed::lot_courses(reading.orchard, request.as_of);
    const auto learned = seed::learn(reading.orchard, request.as_of, {});
    const auto crosses = cross_rows(request, named, tallies, reading.orchard);
    const auto lots = lot_rows(request, named, courses, learned.germination.used);
    const auto figures = figure_rows(learned);
    Outcome outcome;
    outcome.findings = reading.findings;
    outcome.tables = {seed_status_table.of(crosses), seed_on_hand_table.of(lots),
                      seed_figures_table.of(figures)};
    outcome.answer = work_answer(work_of(crosses, reading.orchard, request.as_of), request.as_of);
    outcome.summary = summary_of(crosses, lots);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> seed_status() {
    return declare<Request>(
        {.about = {"seed-status", "Status of crosses", "Seed",
                   "Follows every cross from the flowers pollinated to the seedlings standing, with the next "
                   "task and what is late; shows the seed in stock and the orchard's own figures."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::crosses, "crosses", "Crosses",
                                  "Only these crosses, separated by commas; all where none is named."),
                        parameter(&Request::open_only, "open-only", "Open ones only",
                                  "Whether completed and failed crosses are left out."),
                        as_of_parameter(&Request::as_of)},
         .results = {seed_status_table.shape(), seed_on_hand_table.shape(), seed_figures_table.shape()},
         .examples = {{"Where every cross stands in spring.", {{"book", "BOOK"}, {"as-of", "2026-04-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
