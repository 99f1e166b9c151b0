// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/fit_table.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>

#include "pipward/math/squared.h"
#include "pipward/record/descent.h"

namespace pipward::bloom::detail {
namespace {

// What one accession departs by from its model in one spring, beside the noting: so a note good to half a
// day is worth little more than one good to a day, and a note good to five days still counts.
constexpr double usual_departure = 2.0;  // days; common practice, no source

constexpr int recent_springs = 15;

// 1 for a note good to a day, by the inverse of the variance of departure and noting together: 1.18 for half
// a day, 0.17 for five.
double weight_of(double sd_days) {
    return (math::squared(usual_departure) + 1) / (math::squared(usual_departure) + math::squared(sd_days));
}

std::vector<const Observation*> in_order(std::span<const Observation> observations, const CurvesOf& curves) {
    std::vector<const Observation*> ordered;
    for (const auto& observation : observations) {
        if (curves.contains({observation.season, observation.offset.degrees})) {
            ordered.push_back(&observation);
        }
    }
    std::ranges::sort(ordered, [](const Observation* a, const Observation* b) {
        return std::tie(a->accession, a->season, a->offset, a->full_bloom, a->sd_days) <
               std::tie(b->accession, b->season, b->offset, b->full_bloom, b->sd_days);
    });
    return ordered;
}

// The last springs of each accession, for the mean that forgets.
std::vector<const Observation*> recent_only(const std::vector<const Observation*>& ordered) {
    std::map<std::string, std::set<Season>> springs;
    for (const auto* observation : ordered) {
        springs[observation->accession].insert(observation->season);
    }
    std::vector<const Observation*> recent;
    for (const auto* observation : ordered) {
        const auto& noted = springs[observation->accession];
        const auto later = std::distance(noted.upper_bound(observation->season), noted.end());
        if (later < recent_springs) {
            recent.push_back(observation);
        }
    }
    return recent;
}

std::string genus_in(const std::string& species) {
    return species.substr(0, species.find(' '));
}

template <class Value>
int index_in(const std::vector<Value>& sorted, const Value& value) {
    return static_cast<int>(std::ranges::lower_bound(sorted, value) - sorted.begin());
}

template <class Value>
void sort_unique(std::vector<Value>& values) {
    std::ranges::sort(values);
    values.erase(std::unique(values.begin(), values.end()), values.end());
}

void add_species(FitTable& table, const SpeciesByName& known) {
    std::vector<std::string> named;
    for (const auto& accession : table.accessions) {
        const auto found = known.find(accession);
        named.push_back(found == known.end() ? "" : found->second);
    }
    table.species = named;
    sort_unique(table.species);
    for (const auto& species : named) {
        table.species_of.push_back(index_in(table.species, species));
    }
    std::map<std::string, int> genera;
    for (const auto& species : table.species) {
        table.genus_of.push_back(
            genera.emplace(genus_in(species), static_cast<int>(genera.size())).first->second);
    }
}

FitRow row_of(const FitTable& table, const Observation& observation) {
    FitRow row;
    row.accession = index_in(table.accessions, observation.accession);
    row.season = index_in(table.seasons, observation.season);
    row.observed = observation.full_bloom;
    row.weight = weight_of(observation.sd_days);
    row.observation = &observation;
    row.runs = &table.runs->at({observation.season, observation.offset.degrees});
    row.amounts.reserve(row.runs->size());
    for (const auto& run : *row.runs) {
        row.amounts.push_back(amount_by(run, row.observed));
    }
    return row;
}

}  // namespace

SpeciesByName species_by_name(std::span<const Accession> accessions) {
    Orchard orchard;
    orchard.accessions.assign(accessions.begin(), accessions.end());
    const OrchardIndex book(orchard);
    SpeciesByName species;
    for (const auto& accession : orchard.accessions) {
        if (auto found = species_of(book, accession.name)) {
            species.emplace(accession.name, std::move(*found));
        }
    }
    return species;
}

FitTable fit_table(BloomMethod method, std::span<const Observation> observations, const CurvesOf& curves,
                   const SpeciesByName& species) {
    FitTable table;
    table.method = method;
    auto ordered = in_order(observations, curves);
    if (method == BloomMethod::recent_mean) {
        ordered = recent_only(ordered);
    }
    auto runs = std::make_shared<std::map<CurvesKey, std::vector<StructureRun>>>();
    for (const auto* observation : ordered) {
        table.accessions.push_back(observation->accession);
        table.seasons.push_back(observation->season);
        const CurvesKey key{observation->season, observation->offset.degrees};
        if (!runs->contains(key)) {
            runs->emplace(key, runs_of(method, curves.at(key), observation->offset));
        }
    }
    sort_unique(table.accessions);
    sort_unique(table.seasons);
    add_species(table, species);
    table.runs = std::move(runs);
    for (const auto* observation : ordered) {
        table.rows.push_back(row_of(table, *observation));
    }
    return table;
}

}  // namespace pipward::bloom::detail
