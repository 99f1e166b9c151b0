// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/detail/structures.h"
#include "pipward/bloom/observation.h"

/// The observations as numbers, ready for any number of fits on parts of them.
namespace pipward::bloom::detail {

/// One observation: of an accession, in a season, at an offset.
struct FitRow {
    int accession = 0;                         ///< into FitTable::accessions
    int season = 0;                            ///< into FitTable::seasons
    double observed = 0;                       ///< full bloom, fractional season day
    double weight = 1;                         ///< by how surely it was noted, 1 for a note good to a day
    const Observation* observation = nullptr;  ///< never null
    /// One a structure, of its season and offset; never null.
    const std::vector<StructureRun>* runs = nullptr;
    std::vector<double> amounts;  ///< collected by the observed day, one a structure
};

/// Everything that a fit of one method asks for.
struct FitTable {
    BloomMethod method = BloomMethod::averaged;  ///< whose structures the amounts are of
    std::vector<std::string> accessions;         ///< sorted
    std::vector<std::string> species;            ///< of the accessions, sorted; may hold an empty one
    std::vector<int> species_of;                 ///< by accession, into species
    std::vector<int> genus_of;                   ///< by species, numbered as they come
    std::vector<Season> seasons;                 ///< sorted
    std::vector<FitRow> rows;  ///< in an order of their own, whatever the observations' order
    /// What the rows point into.
    std::shared_ptr<const std::map<CurvesKey, std::vector<StructureRun>>> runs;
};

/// The species of each accession by its name, as it is known from the book or its pedigree; without those of
/// which nothing is known.
using SpeciesByName = std::map<std::string, std::string>;
SpeciesByName species_by_name(std::span<const Accession> accessions);

/// Observations whose season and offset have no curves are left out. `observations` and `curves` must
/// outlive the table. Of the recent mean only each accession's last springs are in it.
FitTable fit_table(BloomMethod method, std::span<const Observation> observations, const CurvesOf& curves,
                   const SpeciesByName& species = {});

}  // namespace pipward::bloom::detail
