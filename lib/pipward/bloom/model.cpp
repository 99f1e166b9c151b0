// SPDX-License-Identifier: MIT
#include "pipward/bloom/model.h"

#include <array>
#include <cmath>
#include <numeric>
#include <set>

#include "pipward/bloom/detail/borrow.h"
#include "pipward/bloom/detail/model_findings.h"
#include "pipward/bloom/detail/row_fit.h"

namespace pipward::bloom {
namespace {

void require_rows(const detail::FitTable& table) {
    if (table.rows.empty()) {
        throw Error(
            Trouble::input,
            {Level::error, "bloom_observation", "", "", "",
             say("There is no bloom observation in a season with weather, so no bloom model can be fitted."),
             say("Add bloom observations (stage 51 to 69) of past springs and the station's days of those "
                 "springs.")});
    }
}

std::map<std::string, Need> own_needs(const detail::FitTable& table, const detail::RowFit& fitted) {
    std::map<std::string, Need> needs;
    std::map<std::string, std::set<int>> seasons;
    for (const int index : fitted.rows) {
        const auto& row = table.rows[index];
        auto& need = needs[table.accessions[row.accession]];
        need.accession = table.accessions[row.accession];
        need.observations += static_cast<int>(row.observation->observations.size());
        need.amount = fitted.pooled.needs[row.accession];
        need.sd_days = detail::need_sd_days(fitted, fitted.pooled.worth[row.accession]);
        seasons[need.accession].insert(row.season);
    }
    for (auto& [name, need] : needs) {
        need.seasons = static_cast<int>(seasons[name].size());
    }
    return needs;
}

detail::OrchardMean orchard_mean(const detail::RowFit& fitted) {
    return {fitted.pooled.centre, fitted.strength.between_sd,
            fitted.season_sd_days / std::sqrt(std::max(1, fitted.seasons))};
}

}  // namespace

std::string_view to_text(BloomMethod method) {
    static constexpr std::array<std::string_view, 4> words{"averaged", "mean_day", "degree_days",
                                                           "chill_then_heat"};
    return words[static_cast<std::size_t>(method)];
}

std::span<const BloomMethod> bloom_methods() {
    static constexpr std::array methods{BloomMethod::averaged, BloomMethod::mean_day,
                                        BloomMethod::degree_days, BloomMethod::chill_then_heat};
    return methods;
}

std::string_view to_text(NeedSource source) {
    static constexpr std::array<std::string_view, 4> words{"own_observations", "mid_parent", "one_parent",
                                                           "orchard_mean"};
    return words[static_cast<std::size_t>(source)];
}

BloomModel fit(BloomMethod method, std::span<const Observation> observations, const CurvesOf& curves,
               std::span<const Accession> accessions) {
    const auto table = detail::fit_table(method, observations, curves);
    require_rows(table);
    std::vector<int> rows(table.rows.size());
    std::iota(rows.begin(), rows.end(), 0);
    const auto fitted = detail::fit_rows(table, std::move(rows));

    BloomModel model;
    model.method = method;
    model.weights = fitted.weights;
    model.season_sd_days = fitted.season_sd_days;
    model.own_sd_days = fitted.own_sd_days;
    model.needs = own_needs(table, fitted);
    detail::borrow_needs(model.needs, accessions, orchard_mean(fitted));
    model.findings = detail::model_findings(table, fitted, model.needs);
    return model;
}

double predict(const BloomModel& model, const Need& need, const SeasonCurves& curves, CelsiusStep offset) {
    return detail::weighted_day(model.weights, need.amount, detail::runs_of(model.method, curves, offset));
}

}  // namespace pipward::bloom
