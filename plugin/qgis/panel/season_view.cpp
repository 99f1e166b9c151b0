// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/season_view.h"

#include <algorithm>

#include "panel/table_view.h"
#include "pipward/book/book.h"
#include "pipward/book/map_style.h"
#include "text.h"

namespace pipward::desktop {
namespace {

Table taken(operation::Outcome& plan, std::string_view name) {
    const auto found =
        std::ranges::find_if(plan.tables, [&](const Table& table) { return table.shape.name == name; });
    return found == plan.tables.end() ? Table{} : std::move(*found);
}

void add_places(SeasonView& season, const TableView& windows) {
    for (std::size_t row = 0; row < windows.size(); ++row) {
        if (const auto& at = windows.at(row)) {
            const QString label = windows.text(row, "tree");
            season.places.insert(label, {label, at->x, at->y});
        }
    }
}

}  // namespace

const Table* find_table(const operation::Outcome& outcome, std::string_view name) {
    const auto found =
        std::ranges::find_if(outcome.tables, [&](const Table& table) { return table.shape.name == name; });
    return found == outcome.tables.end() ? nullptr : &*found;
}

SeasonView make_season_view(operation::Outcome plan) {
    SeasonView season;
    const Table windows = taken(plan, "bloom_window");
    const TableView view(windows);
    if (const Table* outlook = find_table(plan, "cross_outlook"); outlook != nullptr) {
        season.bars = bloom_bars(windows, *outlook);
    }
    season.as_of = view.size() > 0 ? view.day(0, "as_of") : QDate();
    season.crs = to_qt(plan.crs);
    add_places(season, view);
    season.rest = std::move(plan);
    return season;
}

SeasonView stored_season(const QString& book) {
    const auto location = from_qt(book);
    operation::Outcome plan;
    for (const auto* table : {"bloom_window", "cross_outlook", "pollen_task", "field_task"}) {
        if (auto stored = book::read_result(location, table)) {
            plan.tables.push_back(std::move(*stored));
        }
    }
    plan.crs = book::look_at_book(location).crs_code;
    return make_season_view(std::move(plan));
}

}  // namespace pipward::desktop
