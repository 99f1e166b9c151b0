// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/bloom_bar.h"

#include <algorithm>
#include <map>
#include <set>

#include "panel/table_view.h"
#include "pipward/bloom/model.h"
#include "text.h"

namespace pipward::desktop {
namespace {

QDate middle(std::vector<QDate> days) {
    if (days.empty()) {
        return {};
    }
    const auto half = days.begin() + static_cast<std::ptrdiff_t>(days.size() / 2);
    std::nth_element(days.begin(), half, days.end());
    return *half;
}

std::set<QString> wanted_parents(const Table& cross_outlook) {
    std::set<QString> wanted;
    const TableView view(cross_outlook);
    for (std::size_t row = 0; row < view.size(); ++row) {
        wanted.insert(view.text(row, "seed_parent"));
        wanted.insert(view.text(row, "donor"));
    }
    return wanted;
}

QDate middle_of(const TableView& view, const std::vector<std::size_t>& rows, const char* column) {
    std::vector<QDate> days;
    for (const auto row : rows) {
        if (const QDate day = view.day(row, column); day.isValid()) {
            days.push_back(day);
        }
    }
    return middle(std::move(days));
}

BloomBar bar_of(const TableView& view, const QString& accession, const std::vector<std::size_t>& rows,
                bool wanted) {
    // The column of the model tells the way of forecasting as well.
    const QString own_observations = to_qt(bloom::to_text(bloom::NeedSource::own_observations));
    BloomBar bar{accession,
                 middle_of(view, rows, "first_p50"),
                 middle_of(view, rows, "full_p10"),
                 middle_of(view, rows, "full_p50"),
                 middle_of(view, rows, "full_p90"),
                 middle_of(view, rows, "end_p50"),
                 wanted,
                 {},
                 view.text(rows.front(), "warnings"),
                 !view.text(rows.front(), "model").contains(own_observations)};
    for (const auto row : rows) {
        if (const QString label = view.text(row, "tree"); !label.isEmpty()) {
            bar.trees << label;
        }
    }
    return bar;
}

}  // namespace

std::vector<BloomBar> bloom_bars(const Table& bloom_window, const Table& cross_outlook) {
    const TableView view(bloom_window);
    std::map<QString, std::vector<std::size_t>> rows_of;
    for (std::size_t row = 0; row < view.size(); ++row) {
        rows_of[view.text(row, "accession")].push_back(row);
    }
    const auto wanted = wanted_parents(cross_outlook);
    std::vector<BloomBar> bars;
    for (const auto& [accession, rows] : rows_of) {
        BloomBar bar = bar_of(view, accession, rows, wanted.count(accession) > 0);
        if (bar.full_p50.isValid()) {
            bars.push_back(std::move(bar));
        }
    }
    std::ranges::sort(bars, [](const BloomBar& a, const BloomBar& b) {
        return std::make_tuple(!a.wanted, a.full_p50, a.accession) <
               std::make_tuple(!b.wanted, b.full_p50, b.accession);
    });
    return bars;
}

}  // namespace pipward::desktop
