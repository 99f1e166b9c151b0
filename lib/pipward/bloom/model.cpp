// SPDX-License-Identifier: MIT
#include "pipward/bloom/model.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>
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
        need.own_sd_days = fitted.own_sd_of[row.accession];
        seasons[need.accession].insert(row.season);
    }
    for (auto& [name, need] : needs) {
        need.seasons = static_cast<int>(seasons[name].size());
    }
    return needs;
}

// Accessions of which nothing is known spread at least as wide as cultivars of a species do; wider where
// only another species of the genus was noted, and wider still where only other genera were. Days; common
// practice, no source.
constexpr double least_between_sd = 3.5;
constexpr double between_species_sd = 6.0;
constexpr double between_genera_sd = 10.0;

double between_sd(const detail::RowFit& fitted, detail::CentreOf centre) {
    switch (centre) {
        case detail::CentreOf::genus:
            return between_species_sd;
        case detail::CentreOf::orchard:
            return between_genera_sd;
        case detail::CentreOf::species:
            break;
    }
    return std::max(least_between_sd, fitted.strength.between_sd);
}

// A species of which nothing was noted: its genus's mean where that was, else the orchard's.
std::optional<int> kin_of(const detail::FitTable& table, const std::string& species) {
    const auto genus = [](const std::string& name) { return name.substr(0, name.find(' ')); };
    const auto found = std::ranges::find_if(
        table.species, [&](const std::string& other) { return genus(other) == genus(species); });
    return found == table.species.end() || species.empty()
               ? std::nullopt
               : std::optional{static_cast<int>(found - table.species.begin())};
}

detail::OrchardMean mean_of_kind(const detail::FitTable& table, const detail::RowFit& fitted,
                                 const std::string& species) {
    const double luck_sd = fitted.season_sd_days / std::sqrt(std::max(1, fitted.seasons));
    const auto own = std::ranges::find(table.species, species);
    if (own != table.species.end()) {
        const auto s = static_cast<std::size_t>(own - table.species.begin());
        const bool unknown = species.empty() && table.species.size() > 1;
        return {unknown ? fitted.pooled.centre : fitted.pooled.species_centres[s],
                between_sd(fitted, unknown ? detail::CentreOf::orchard : fitted.pooled.centre_of[s]),
                luck_sd};
    }
    if (const auto kin = kin_of(table, species)) {
        return {fitted.pooled.species_centres[*kin], between_species_sd, luck_sd};
    }
    const bool one_kind = species.empty() && table.species.size() == 1;
    return {fitted.pooled.centre,
            one_kind ? between_sd(fitted, detail::CentreOf::species) : between_genera_sd, luck_sd};
}

void tell_species(BloomModel& model, const detail::SpeciesByName& species) {
    for (auto& [name, need] : model.needs) {
        if (const auto found = species.find(name); found != species.end()) {
            need.species = found->second;
        }
        if (need.own_sd_days == 0) {
            need.own_sd_days = model.own_sd_days;
        }
    }
}

}  // namespace

std::string_view to_text(BloomMethod method) {
    static constexpr std::array<std::string_view, 5> words{"averaged", "mean_day", "recent_mean",
                                                           "degree_days", "chill_then_heat"};
    return words[static_cast<std::size_t>(method)];
}

std::span<const BloomMethod> bloom_methods() {
    static constexpr std::array methods{BloomMethod::averaged, BloomMethod::mean_day,
                                        BloomMethod::recent_mean, BloomMethod::degree_days,
                                        BloomMethod::chill_then_heat};
    return methods;
}

std::string_view to_text(NeedSource source) {
    static constexpr std::array<std::string_view, 4> words{"own_observations", "mid_parent", "one_parent",
                                                           "orchard_mean"};
    return words[static_cast<std::size_t>(source)];
}

BloomModel fit(BloomMethod method, std::span<const Observation> observations, const CurvesOf& curves,
               std::span<const Accession> accessions) {
    const auto species = detail::species_by_name(accessions);
    const auto table = detail::fit_table(method, observations, curves, species);
    require_rows(table);
    std::vector<int> rows(table.rows.size());
    std::iota(rows.begin(), rows.end(), 0);
    const auto fitted = detail::fit_rows(table, std::move(rows));

    BloomModel model;
    model.method = method;
    model.weights = fitted.weights;
    model.season_sd_days = fitted.season_sd_days;
    model.own_sd_days = fitted.own_sd_days;
    model.drift = fitted.drift;
    model.needs = own_needs(table, fitted);
    detail::borrow_needs(model.needs, accessions, [&](const Accession& accession) {
        const auto found = species.find(accession.name);
        return mean_of_kind(table, fitted, found == species.end() ? "" : found->second);
    });
    tell_species(model, species);
    model.findings = detail::model_findings(table, fitted, model.needs);
    return model;
}

double predict(const BloomModel& model, const Need& need, const SeasonCurves& curves, CelsiusStep offset) {
    return detail::weighted_day(model.weights, need.amount, detail::runs_of(model.method, curves, offset));
}

}  // namespace pipward::bloom
