// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/skill_case.h"

#include <algorithm>
#include <cmath>

#include "pipward/bloom/detail/window.h"
#include "pipward/math/quantile.h"

namespace pipward::bloom::detail {
namespace {

double own_spread(const RowFit& fitted, const FitRow& row) {
    return std::hypot(fitted.own_sd_of[row.accession],
                      need_sd_days(fitted, fitted.pooled.worth[row.accession]));
}

SkillCase case_of(const FitTable& table, const RowFit& fitted, const FitRow& row,
                  std::span<const double> members) {
    const double season_sd =
        std::hypot(fitted.season_sd_days, fitted.drift.at(table.seasons[row.season].year).sd);
    const auto window = quantiles_of(spread_days(members, season_sd, own_spread(fitted, row)));
    SkillCase scored;
    scored.method = table.method;
    scored.accession = table.accessions[row.accession];
    scored.season = table.seasons[row.season];
    scored.error = quantiles_of({members.begin(), members.end()}).p50 - row.observed;
    scored.inside = window.p10 <= row.observed && row.observed <= window.p90;
    return scored;
}

void add_case(SkillScore& score, const SkillCase& scored) {
    ++score.observations;
    score.rmse += scored.error * scored.error;
    score.mae += std::abs(scored.error);
    score.bias += scored.error;
    score.within_3_days += std::abs(scored.error) <= 3 ? 1 : 0;
    score.within_5_days += std::abs(scored.error) <= 5 ? 1 : 0;
    score.coverage_80 += scored.inside ? 1 : 0;
}

void finish(SkillScore& score, int seasons) {
    const double n = score.observations;
    score.seasons = seasons;
    score.rmse = std::sqrt(score.rmse / n);
    for (double* sum :
         {&score.mae, &score.bias, &score.within_3_days, &score.within_5_days, &score.coverage_80}) {
        *sum /= n;
    }
}

struct Group {
    SkillScore score;
    std::map<Season, double> squares;  // of errors, by season
    std::map<Season, int> notes;
};

struct GroupKey {
    std::optional<int> training_seasons;
    std::optional<int> lead;
    std::string accession;
    BloomMethod method;

    auto operator<=>(const GroupKey&) const = default;
};

void add_to(std::map<GroupKey, Group>& groups, const SkillCase& scored, const std::string& accession) {
    auto& group = groups[{scored.training_seasons, scored.lead, accession, scored.method}];
    group.score.method = scored.method;
    group.score.accession = accession;
    group.score.lead_days = scored.lead;
    group.score.training_seasons = scored.training_seasons;
    group.squares[scored.season] += scored.error * scored.error;
    ++group.notes[scored.season];
    add_case(group.score, scored);
}

// Mean squared error of each season.
std::map<Season, double> squares_by_season(const Group& group) {
    std::map<Season, double> squares;
    for (const auto& [season, sum] : group.squares) {
        squares[season] = sum / group.notes.at(season);
    }
    return squares;
}

void tell_gain(Group& group, const Group& averaged) {
    const auto own = squares_by_season(group);
    const auto other = squares_by_season(averaged);
    std::vector<double> gains;
    for (const auto& [season, square] : own) {
        if (const auto beside = other.find(season); beside != other.end()) {
            gains.push_back(beside->second - square);
        }
    }
    const auto n = static_cast<double>(gains.size());
    group.score.gain = math::mean(gains);
    double spread = 0;
    for (const double gain : gains) {
        spread += (gain - group.score.gain) * (gain - group.score.gain);
    }
    group.score.gain_error = n > 1 ? std::sqrt(spread / (n - 1) / n) : 0;
}

}  // namespace

const std::vector<SeasonCurves>& LeadEnsembles::at(double offset, int issue) {
    const auto [entry, added] = made_.try_emplace(Key{offset, issue});
    const auto* known = store_.at(left_out_, offset);
    if (!added || known == nullptr) {
        return entry->second;
    }
    for (const auto& [season, warmer] : lent_) {
        entry->second.push_back(
            with_remainder(*known, *store_.at(season, offset + warmer.degrees), issue - season_first + 1));
    }
    return entry->second;
}

SkillCase known_case(const FitTable& table, const RowFit& fitted, const FitRow& row) {
    const double day = forecast_day(fitted, row.accession, *row.runs, table.seasons[row.season]);
    return case_of(table, fitted, row, {&day, 1});
}

SkillCase lead_case(const FitTable& table, const RowFit& fitted, const FitRow& row, int lead,
                    LeadEnsembles& ensembles) {
    const auto offset = row.observation->offset;
    const int issue = static_cast<int>(std::floor(row.observed)) - lead;
    std::vector<double> members;
    for (const auto& curves : ensembles.at(offset.degrees, issue)) {
        members.push_back(forecast_day(fitted, row.accession, runs_of(table.method, curves, offset),
                                       table.seasons[row.season]));
    }
    if (members.empty()) {
        return known_case(table, fitted, row);
    }
    auto scored = case_of(table, fitted, row, members);
    scored.lead = lead;
    return scored;
}

std::vector<int> rows_in(const FitTable& table, const std::vector<bool>& seasons) {
    std::vector<int> rows;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (seasons[table.rows[i].season]) {
            rows.push_back(static_cast<int>(i));
        }
    }
    return rows;
}

std::vector<SkillScore> scores_of(std::span<const SkillCase> cases, bool per_accession) {
    std::map<GroupKey, Group> groups;
    for (const auto& scored : cases) {
        add_to(groups, scored, "");
        if (per_accession) {
            add_to(groups, scored, scored.accession);
        }
    }
    std::vector<SkillScore> scores;
    for (auto& [key, group] : groups) {
        finish(group.score, static_cast<int>(group.notes.size()));
        auto beside = key;
        beside.method = BloomMethod::averaged;
        if (const auto averaged = groups.find(beside); averaged != groups.end()) {
            tell_gain(group, averaged->second);
        }
        scores.push_back(group.score);
    }
    return scores;
}

}  // namespace pipward::bloom::detail
