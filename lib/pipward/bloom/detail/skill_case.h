// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/bloom/curve_store.h"
#include "pipward/bloom/detail/climate.h"
#include "pipward/bloom/detail/row_fit.h"
#include "pipward/bloom/skill.h"

namespace pipward::bloom::detail {

/// One bloom forecast by one method, beside the bloom that came.
struct SkillCase {
    BloomMethod method = BloomMethod::averaged;  ///< that forecast it
    std::optional<int> lead;                     ///< days before bloom; empty: the weather was known
    std::optional<int> training_seasons;         ///< learned from so many; empty: from all others
    std::string accession;                       ///< its name
    Season season;                               ///< the one forecast
    double error = 0;                            ///< days, forecast less observed
    bool inside = false;                         ///< whether the bloom came between P10 and P90
};

/// Ensembles of one left-out season, shared by the methods: by offset and issue day.
class LeadEnsembles {
  public:
    LeadEnsembles(CurveStore& store, std::vector<LentSeason> lent, Season left_out)
        : store_(store), lent_(std::move(lent)), left_out_(left_out) {}

    /// The left-out season up to and with `issue` (a season day), then the remainder of each season that
    /// lends.
    const std::vector<SeasonCurves>& at(double offset, int issue);

  private:
    struct Key {
        double offset = 0;  ///< from the station, kelvin
        int issue = 0;      ///< season day of the forecast

        auto operator<=>(const Key&) const = default;
    };

    CurveStore& store_;
    std::vector<LentSeason> lent_;
    Season left_out_;
    std::map<Key, std::vector<SeasonCurves>> made_;
};

/// Scores one row by one fit with the weather known.
SkillCase known_case(const FitTable& table, const RowFit& fitted, const FitRow& row);
/// Scores one row as it would have been forecast `lead` days before its bloom.
SkillCase lead_case(const FitTable& table, const RowFit& fitted, const FitRow& row, int lead,
                    LeadEnsembles& ensembles);

/// Rows of the table in (or, for the fit, not in) the seasons marked.
std::vector<int> rows_in(const FitTable& table, const std::vector<bool>& seasons);

/// One score a group of method, lead, training seasons and (when asked) accession.
std::vector<SkillScore> scores_of(std::span<const SkillCase> cases, bool per_accession);

}  // namespace pipward::bloom::detail
