// SPDX-License-Identifier: MIT
#include "pipward/cross/plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "pipward/cross/detail/agreement.h"
#include "pipward/cross/detail/tasks.h"

namespace pipward::cross {
namespace {

// Runs of digits count as numbers: C2 stands before C10. ASCII only.
std::string sortable(const std::string& code) {
    constexpr std::size_t width = 12;
    std::string text;
    for (std::size_t i = 0; i < code.size();) {
        const std::size_t end = std::min(code.find_first_not_of("0123456789", i), code.size());
        if (end > i) {
            text += std::string(width - std::min(width, end - i), '0') + code.substr(i, end - i);
            i = end;
        } else {
            text += code[i++];
        }
    }
    return text;
}

// The goals to plan for, in an order of their own: season, priority (none last), code.
std::vector<const CrossGoal*> goals_in_order(const Orchard& orchard, Season season) {
    std::vector<const CrossGoal*> goals;
    for (const auto& goal : orchard.goals) {
        if (goal.season == season || goal.season.year == season.year + 1) {
            goals.push_back(&goal);
        }
    }
    std::ranges::sort(goals, {}, [](const CrossGoal* goal) {
        return std::tuple(goal->season, !goal->priority, goal->priority.value_or(0), sortable(goal->code),
                          goal->code, goal->fid);
    });
    return goals;
}

void note_other_seasons(Findings& findings, std::size_t others, Season season) {
    if (others > 0) {
        findings.push_back({Level::notice,
                            "cross_goal",
                            "",
                            "season",
                            "",
                            others == 1 ? say("Not included: 1 goal of seasons other than {} and {}.",
                                              season.year, season.year + 1)
                                        : say("Not included: {} goals of seasons other than {} and {}.",
                                              others, season.year, season.year + 1),
                            {}});
    }
}

void note_no_goals(Findings& findings, bool none, Season season) {
    if (none) {
        findings.push_back({Level::notice, "cross_goal", "", "season", std::to_string(season.year),
                            say("There is no cross goal of this season or the next: the plan is empty."),
                            say("Write goals with the season's year.")});
    }
}

void note_unknown_parent(Findings& findings, const OrchardIndex& book, const CrossGoal& goal,
                         const std::string& field, const std::string& name) {
    const bool is_blend = field == "pollen_parent" && book.is_blend(name);
    if (book.accession(name) == nullptr && !is_blend) {
        findings.push_back({Level::warning, "cross_goal", goal.code, field, name,
                            say("The book has no such parent, so nothing is known of its bloom."),
                            say("Add the accession or the blend, or correct the name.")});
    }
}

std::optional<lineage::Kinship> kinship_of(const Orchard& orchard, Findings& findings) {
    try {
        return lineage::Kinship(orchard.accessions, orchard.blend_members);
    } catch (const Error& error) {
        for (auto finding : error.findings()) {
            finding.level = Level::warning;
            finding.message += verbatim(" ") + say("The plan is made without kinship.");
            findings.push_back(std::move(finding));
        }
        return std::nullopt;
    }
}

void collect_ways(SeasonPlan& plan, const std::vector<detail::GoalPlan>& goals) {
    for (const auto& goal : goals) {
        for (const auto& donor : goal.donors) {
            for (const auto& way : donor.ways) {
                plan.ways.push_back(way.row);
            }
        }
    }
}

void note_about_goals(SeasonPlan& plan, const detail::Bench& bench,
                      const std::vector<const CrossGoal*>& goals) {
    note_other_seasons(plan.findings, bench.orchard->goals.size() - goals.size(), plan.season);
    note_no_goals(plan.findings, goals.empty(), plan.season);
    for (const auto* goal : goals) {
        note_unknown_parent(plan.findings, bench.book, *goal, "seed_parent", goal->seed_parent);
        note_unknown_parent(plan.findings, bench.book, *goal, "pollen_parent", goal->pollen_parent);
    }
}

}  // namespace

SeasonPlan plan_season(const bloom::BloomForecast& forecast, const Orchard& orchard,
                       const CrossingAssumptions& assumptions) {
    SeasonPlan plan{forecast.season, forecast.as_of, {}, {}, {}, {}};
    detail::Bench bench{&forecast,
                        &orchard,
                        assumptions,
                        OrchardIndex(orchard),
                        detail::stock_of(orchard, forecast),
                        kinship_of(orchard, plan.findings),
                        detail::CourseShelf(forecast)};
    const auto goals = goals_in_order(orchard, forecast.season);
    note_about_goals(plan, bench, goals);
    std::vector<detail::GoalPlan> planned;
    planned.reserve(goals.size());
    detail::LotLedger ledger;
    for (const auto* goal : goals) {
        planned.push_back(detail::plan_goal(bench, *goal, ledger));
    }
    const auto collections = detail::agree(bench, planned);
    collect_ways(plan, planned);
    plan.pollen = detail::pollen_tasks(bench, planned, collections);
    plan.field = detail::field_tasks(bench, planned);
    return plan;
}

}  // namespace pipward::cross
