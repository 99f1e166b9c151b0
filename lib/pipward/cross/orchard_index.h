// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/bloom/forecast.h"
#include "pipward/record/orchard.h"

namespace pipward::cross {

/// The book as crossing asks it: by name, as it stood on the day of the plan. Points into the orchard and the
/// forecast, which must outlive it. Everything is in an order of its own, whatever the order of the records.
struct OrchardIndex {
    Day as_of;
    std::map<std::string, const Accession*> accessions;
    std::map<std::string, std::vector<const BlendMember*>> blends;
    std::map<std::string, std::vector<bloom::TreeBloom>> trees;  ///< living, by accession
    std::map<std::string, std::vector<const PollenLot*>> lots;   ///< in hand, by donor
    std::map<std::string, std::vector<PollenTest>> tests;        ///< by lot
    std::map<std::string, double> worked_from_lot;               ///< flowers, by lot
    std::map<std::string, int> worked_for_cross;                 ///< flowers of a first pass, by cross
    std::map<std::string, double> pollen_per_flower_mg;          ///< by donor, weighed by its own lots
    std::optional<double> usual_pollen_per_flower_mg;            ///< by all lots together
};

OrchardIndex index_orchard(const Orchard& orchard, const bloom::BloomForecast& forecast);

/// Raw pollen of one donor flower: of the donor's own lots, else of all lots, else `otherwise`.
Milligrams pollen_per_flower(const OrchardIndex& index, const std::string& donor, Milligrams otherwise);

/// The record of an accession, or nothing.
const Accession* accession_named(const OrchardIndex& index, const std::string& name);

}  // namespace pipward::cross
