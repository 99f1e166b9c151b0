// SPDX-License-Identifier: MIT
#include "pipward/bloom/skill.h"

#include <algorithm>
#include <numeric>
#include <random>
#include <set>

#include "pipward/bloom/detail/scoring_progress.h"
#include "pipward/bloom/detail/skill_case.h"

namespace pipward::bloom {
namespace {

// A rival that is only lucky on a few springs spoils more than a better one gains.
constexpr int least_springs_to_choose = 10;
constexpr double least_gain = 0.10;     // of the error
constexpr double errors_to_exceed = 2;  // standard errors of the paired gain
constexpr int draws = 60;
constexpr int tests_a_draw = 20;

struct SkillWork {
    std::vector<detail::FitTable> tables;  // one a method
    CurveStore store;
    std::span<const weather::SeasonWeather> seasons;
    const SkillRequest& request;
    const std::function<bool(double)>& progress;
    double done = 0;
    double steps = 1;
    std::vector<detail::SkillCase> cases;
};

void step(SkillWork& work) {
    work.done += 1;
    detail::tell_scoring(work.progress, std::min(1.0, work.done / work.steps));
}

bool has_observations(const detail::RowFit& fitted, const detail::FitRow& row) {
    return fitted.pooled.worth[row.accession] > 0;
}

std::vector<int> season_indices(const detail::FitTable& table) {
    std::vector<int> indices(table.seasons.size());
    std::iota(indices.begin(), indices.end(), 0);
    return indices;
}

void leave_out(SkillWork& work, const detail::FitTable& table, int season, detail::LeadEnsembles& ensembles) {
    std::vector<bool> kept(table.seasons.size(), true);
    kept[season] = false;
    const auto fitted = detail::fit_rows(table, detail::rows_in(table, kept));
    for (const auto& row : table.rows) {
        if (row.season != season || !has_observations(fitted, row)) {
            continue;
        }
        work.cases.push_back(detail::known_case(table, fitted, row));
        for (const int lead : work.request.leads) {
            work.cases.push_back(detail::lead_case(table, fitted, row, lead, ensembles));
        }
    }
}

void leave_each_out(SkillWork& work) {
    for (const int season : season_indices(work.tables.front())) {
        const Season left_out = work.tables.front().seasons[season];
        detail::LeadEnsembles ensembles(work.store, detail::lent_seasons(work.seasons, left_out), left_out);
        for (const auto& table : work.tables) {
            leave_out(work, table, season, ensembles);
            step(work);
        }
    }
}

// The standard fixes what this generator gives; its shuffle does not, so the shuffle is ours (Fisher & Yates,
// as Durstenfeld 1964, Commun. ACM 7:420, from memory). That a remainder slightly favours low numbers is of
// no account for a few dozen seasons.
std::vector<int> shuffled(std::vector<int> values, int seed) {
    std::minstd_rand random(static_cast<unsigned>(seed) + 1U);
    random.discard(10);  // neighbouring seeds begin alike
    for (std::size_t i = values.size(); i > 1; --i) {
        std::swap(values[i - 1], values[random() % i]);
    }
    return values;
}

void score_draw(SkillWork& work, const detail::FitTable& table, const std::vector<int>& order, int training) {
    std::vector<bool> learned(table.seasons.size());
    std::vector<bool> tested(table.seasons.size());
    for (int i = 0; i < static_cast<int>(order.size()); ++i) {
        learned[order[i]] = i < training;
        tested[order[i]] = i >= training && i < training + tests_a_draw;
    }
    const auto fitted = detail::fit_rows(table, detail::rows_in(table, learned));
    for (const auto& row : table.rows) {
        if (tested[row.season] && has_observations(fitted, row)) {
            work.cases.push_back(detail::known_case(table, fitted, row));
            work.cases.back().training_seasons = training;
        }
    }
}

void draw_training(SkillWork& work, int training) {
    const auto seasons = season_indices(work.tables.front());
    for (int draw = 0; draw < draws; ++draw) {
        const auto order = shuffled(seasons, draw);
        for (const auto& table : work.tables) {
            score_draw(work, table, order, training);
            step(work);
        }
    }
}

// The recent mean has no recent springs where those around the one left out teach.
std::vector<BloomMethod> methods_to_score(std::span<const Observation> observations,
                                          const SkillRequest& request) {
    std::set<Season> springs;
    for (const auto& observation : observations) {
        springs.insert(observation.season);
    }
    if (request.only_to_choose && std::ssize(springs) < least_springs_to_choose) {
        return {BloomMethod::averaged, BloomMethod::mean_day};
    }
    return {BloomMethod::averaged, BloomMethod::mean_day, BloomMethod::degree_days,
            BloomMethod::chill_then_heat};
}

bool counts_for_choice(const SkillScore& score) {
    return !score.lead_days && !score.training_seasons && score.accession.empty();
}

}  // namespace

std::vector<SkillScore> score_methods(std::span<const Observation> observations, const CurvesOf& curves,
                                      std::span<const weather::SeasonWeather> seasons, Latitude latitude,
                                      std::span<const Accession> accessions, const SkillRequest& request,
                                      const std::function<bool(double)>& progress) {
    SkillWork work{{}, CurveStore(curves, seasons, latitude), seasons, request, progress, 0, 1, {}};
    const auto species = detail::species_by_name(accessions);
    for (const auto method : methods_to_score(observations, request)) {
        work.tables.push_back(detail::fit_table(method, observations, curves, species));
    }
    const int known = static_cast<int>(work.tables.front().seasons.size());
    if (known < 2) {
        return {};
    }
    const bool drawn =
        request.training_seasons && *request.training_seasons >= 1 && *request.training_seasons < known;
    work.steps = static_cast<double>(work.tables.size()) * (known + (drawn ? draws : 0));
    leave_each_out(work);
    if (drawn) {
        draw_training(work, *request.training_seasons);
    }
    auto scores = detail::scores_of(work.cases, request.per_accession);
    const auto best = best_method(scores);
    for (auto& score : scores) {
        score.chosen = score.method == best;
    }
    return scores;
}

BloomMethod best_method(std::span<const SkillScore> scores) {
    const auto averaged = std::ranges::find_if(scores, [](const SkillScore& score) {
        return score.method == BloomMethod::averaged && counts_for_choice(score);
    });
    const SkillScore* best = nullptr;
    for (const auto& score : scores) {
        const bool earned = counts_for_choice(score) && averaged != scores.end() &&
                            score.seasons >= least_springs_to_choose &&
                            score.gain > errors_to_exceed * score.gain_error &&
                            score.rmse < (1 - least_gain) * averaged->rmse;
        if (earned && (best == nullptr || score.rmse < best->rmse)) {
            best = &score;
        }
    }
    return best == nullptr ? BloomMethod::averaged : best->method;
}

}  // namespace pipward::bloom
