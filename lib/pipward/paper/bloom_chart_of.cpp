// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>
#include <tuple>

#include "pipward/paper/bloom_chart.h"
#include "pipward/paper/day_axis.h"

namespace pipward::paper {
namespace {

// The day of the forecast is drawn when it is this near; farther away it would squeeze the bars.
constexpr int as_of_reach = 21;

struct Parents {
    std::set<std::string> seed;
    std::set<std::string> pollen;
};

Parents parents_of(const cross::SeasonPlan& plan) {
    Parents parents;
    for (const auto& way : plan.ways) {
        parents.seed.insert(way.seed_parent);
        parents.pollen.insert(way.donor);
    }
    for (const auto& task : plan.pollen) {
        parents.pollen.insert(task.donor);
    }
    return parents;
}

BloomBar bar_of(const std::string& accession, const bloom::BloomWindow& window, const Parents& parents) {
    return {accession,
            window.first.p50,
            window.full,
            window.end.p50,
            window.source,
            window.observations_used,
            parents.seed.contains(accession),
            parents.pollen.contains(accession)};
}

void widen(BloomChart& chart, Day from, Day to) {
    chart.from = std::min(chart.from, monday_of(from));
    chart.to = std::max(chart.to, monday_of(to) + 6);
}

void leave_out_seedlings(BloomChart& chart) {
    const auto only_borrows = [](const BloomBar& bar) {
        return !bar.is_wanted() && bar.source != bloom::NeedSource::own_observations;
    };
    const auto borrowers = static_cast<int>(std::ranges::count_if(chart.bars, only_borrows));
    if (borrowers > few_borrowed) {
        std::erase_if(chart.bars, only_borrows);
        chart.left_out = borrowers;
    }
}

}  // namespace

void span_bars(BloomChart& chart) {
    const Day start = chart.bars.empty() ? chart.as_of : chart.bars.front().full.p50;
    chart.from = monday_of(start);
    chart.to = chart.from + 6;
    for (const auto& bar : chart.bars) {
        widen(chart, std::min(bar.first, bar.full.p10), std::max(bar.end, bar.full.p90));
    }
    if (chart.as_of >= chart.from - as_of_reach && chart.as_of <= chart.to + as_of_reach) {
        widen(chart, chart.as_of, chart.as_of);
    }
}

BloomChart bloom_chart_of(const bloom::BloomForecast& forecast, const cross::SeasonPlan& plan) {
    BloomChart chart;
    chart.title = say("Bloom {}, forecast of {}", forecast.season.year, to_iso(forecast.as_of));
    chart.as_of = forecast.as_of;
    const auto parents = parents_of(plan);
    for (const auto& [accession, window] : forecast.of_accession) {
        if (window >= forecast.windows.size()) {
            continue;
        }
        chart.bars.push_back(bar_of(accession, forecast.windows[window], parents));
    }
    std::ranges::sort(chart.bars, {}, [](const BloomBar& bar) {
        return std::tuple{!bar.is_wanted(), bar.full.p50, bar.name};
    });
    leave_out_seedlings(chart);
    span_bars(chart);
    return chart;
}

}  // namespace pipward::paper
