// SPDX-License-Identifier: MIT
#pragma once

#include <fmt/format.h>

#include <string>
#include <vector>

#include "days.h"
#include "pipward/paper/season_sheet.h"

/// An invented season of the invented Larkfold Orchard, filled by hand.
namespace pipward::testing {

inline Day april(int of_month) {
    return day(2026, 4, 1) + (of_month - 1);
}

inline bloom::BloomWindow window_about(const std::string& accession, Day median, int half_width = 4) {
    bloom::BloomWindow window;
    window.accession = accession;
    window.first = {median - 6, median - 5, median - 3};
    window.full = {median - half_width, median, median + half_width};
    window.end = {median + 6, median + 9, median + 12};
    window.observations_used = 6;
    return window;
}

inline void add_window(bloom::BloomForecast& forecast, bloom::BloomWindow window) {
    forecast.of_accession[window.accession] = forecast.windows.size();
    forecast.windows.push_back(std::move(window));
}

inline bloom::BloomForecast empty_forecast() {
    bloom::BloomForecast forecast;
    forecast.season = {2026};
    forecast.as_of = april(9);
    for (int year = 2012; year < 2026; ++year) {
        forecast.members.push_back({year});
    }
    return forecast;
}

inline bloom::BloomForecast larkfold_forecast() {
    auto forecast = empty_forecast();
    add_window(forecast, window_about("Larkfold Red", april(24)));
    add_window(forecast, window_about("Ember", april(19), 3));
    add_window(forecast, window_about("Wold Russet", april(31)));
    add_window(forecast, window_about("Tansy Gold", april(14), 5));
    add_window(forecast, window_about("Quarry Pear 7", april(12)));
    auto lent = window_about("LF 12-047", april(22), 7);
    lent.source = bloom::NeedSource::mid_parent;
    lent.observations_used = 0;
    lent.warnings = {say("No bloom observations of its own: one note this spring would narrow its window.")};
    add_window(forecast, lent);
    auto wild = window_about("Mill Crab", april(10), 8);
    wild.source = bloom::NeedSource::orchard_mean;
    wild.observations_used = 0;
    add_window(forecast, wild);
    return forecast;
}

inline cross::CrossWay way(const std::string& cross, const std::string& seed, const std::string& donor,
                           cross::PollenWay kind, double chance) {
    cross::CrossWay way;
    way.cross = cross;
    way.seed_parent = seed;
    way.pollen_parent = donor;
    way.donor = donor;
    way.way = kind;
    way.chance = {chance};
    way.use_from = april(22);
    way.use_to = april(25);
    way.flowers = 115;
    way.verdict = chance > 0.7   ? cross::Verdict::good
                  : chance > 0.4 ? cross::Verdict::fair
                                 : cross::Verdict::unlikely;
    return way;
}

inline cross::CrossWay best(cross::CrossWay chosen) {
    chosen.best = true;
    chosen.collect_from = april(16);
    chosen.collect_to = april(18);
    chosen.store = Store::refrigerator;
    chosen.donor_flowers = 24;
    chosen.pollen = {24};
    chosen.s_match = lineage::SMatch::half;
    chosen.kinship = 0.125;
    chosen.why =
        say("The donor is at balloon stage about five days before the seed parent opens, so its pollen is "
            "dried and kept until then.");
    return chosen;
}

inline std::vector<cross::CrossWay> larkfold_ways() {
    auto blend = best(way("LF26-03", "Wold Russet", "Tansy Gold", cross::PollenWay::kept_this_spring, 0.64));
    blend.pollen_parent = "Early blend";
    auto from_store =
        best(way("LF26-04", "Ember", "Wold Russet", cross::PollenWay::kept_from_last_year, 0.47));
    from_store.collect_from.reset();
    from_store.collect_to.reset();
    from_store.lot = "P-2025-03";
    from_store.store = Store::freezer;
    from_store.why = say("The donor blooms twelve days too late; lot P-2025-03 was tested at 41 % in March.");
    return {best(way("LF26-01", "Larkfold Red", "Ember", cross::PollenWay::kept_this_spring, 0.83)),
            way("LF26-01", "Larkfold Red", "Ember", cross::PollenWay::same_day, 0.31),
            way("LF26-01", "Larkfold Red", "Ember", cross::PollenWay::forced_branch, 0.12),
            blend,
            way("LF26-03", "Wold Russet", "Tansy Gold", cross::PollenWay::same_day, 0.02),
            from_store,
            way("LF26-04", "Ember", "Wold Russet", cross::PollenWay::same_day, 0)};
}

inline cross::PollenTask pollen_task(cross::PollenWork work, const std::string& donor, Day from, Day to,
                                     cross::Urgency urgency) {
    cross::PollenTask task;
    task.work = work;
    task.donor = donor;
    task.tree = "A-03";
    task.do_from = from;
    task.do_to = to;
    task.flowers = work == cross::PollenWork::collect ? 24 : 0;
    task.mass = {24};
    task.keep_until = april(27);
    task.season_of_use = {2026};
    task.for_crosses = {"LF26-01"};
    task.urgency = urgency;
    task.why =
        say("Balloon stage is expected from that day; after the last safe day one spring in ten has no "
            "closed anthers left.");
    return task;
}

inline cross::FieldTask field_task(cross::FieldWork work, const std::string& cross, const std::string& seed,
                                   const std::string& donor, Day from, Day to, cross::Urgency urgency) {
    cross::FieldTask task;
    task.work = work;
    task.cross = cross;
    task.seed_parent = seed;
    task.donor = donor;
    task.tree = "B-11";
    task.do_from = from;
    task.do_to = to;
    task.flowers = 115;
    task.pollen =
        work == cross::FieldWork::pollinate ? say("collected this spring, refrigerator") : Sentence{};
    task.urgency = urgency;
    task.why = work == cross::FieldWork::bag ? say("Before the first flower opens, so that no bee is faster.")
                                             : Sentence{};
    return task;
}

inline cross::SeasonPlan larkfold_plan() {
    cross::SeasonPlan plan;
    plan.season = {2026};
    plan.as_of = april(9);
    plan.ways = larkfold_ways();
    auto next_spring =
        pollen_task(cross::PollenWork::collect, "Wold Russet", april(26), april(29), cross::Urgency::later);
    next_spring.season_of_use = {2027};
    next_spring.store = Store::freezer;
    next_spring.keep_until = day(2027, 5, 2);
    next_spring.for_crosses = {"LF27-02"};
    plan.pollen = {
        pollen_task(cross::PollenWork::test_lot, "Wold Russet", april(1), april(7), cross::Urgency::too_late),
        pollen_task(cross::PollenWork::collect, "Tansy Gold", april(8), april(9), cross::Urgency::today),
        pollen_task(cross::PollenWork::collect, "Ember", april(13), april(15), cross::Urgency::this_week),
        next_spring};
    plan.field = {field_task(cross::FieldWork::bag, "LF26-04", "Ember", "Wold Russet", april(11), april(13),
                             cross::Urgency::this_week),
                  field_task(cross::FieldWork::bag, "LF26-01", "Larkfold Red", "Ember", april(16), april(19),
                             cross::Urgency::later),
                  field_task(cross::FieldWork::pollinate, "LF26-01", "Larkfold Red", "Ember", april(22),
                             april(25), cross::Urgency::later),
                  field_task(cross::FieldWork::unbag, "LF26-01", "Larkfold Red", "Ember", april(36),
                             april(40), cross::Urgency::later)};
    plan.findings = {{Level::warning, "accession", "Mill Crab", "s_alleles", "",
                      say("Its S-alleles are not known."), say("Enter them, or keep the cross doubtful.")}};
    return plan;
}

inline bloom::SkillScore score(bloom::BloomMethod method, std::optional<int> lead, double mae,
                               double within_3, bool chosen) {
    bloom::SkillScore score;
    score.method = method;
    score.lead_days = lead;
    score.seasons = 14;
    score.observations = 84;
    score.mae = mae;
    score.within_3_days = within_3;
    score.within_5_days = within_3 + 0.17;
    score.coverage_80 = 0.79;
    score.chosen = chosen;
    return score;
}

/// Everything a sheet needs, kept alive together.
struct MadeUpSeason {
    bloom::BloomForecast forecast = larkfold_forecast();
    cross::SeasonPlan plan = larkfold_plan();

    paper::SeasonSheet sheet() const {
        paper::SeasonSheet sheet;
        sheet.orchard_name = "Larkfold Orchard";
        sheet.plan = &plan;
        sheet.forecast = &forecast;
        sheet.skill = {score(bloom::BloomMethod::averaged, std::nullopt, 2.1, 0.76, true),
                       score(bloom::BloomMethod::averaged, 14, 2.9, 0.62, true),
                       score(bloom::BloomMethod::mean_day, std::nullopt, 6.4, 0.31, false)};
        sheet.findings = {{Level::notice, "bloom_observation", "fid 12", "bbch", "66",
                           say("The pome-fruit scale has no such stage, so the note was passed over."),
                           say("Write 65 or 67.")}};
        sheet.subtitle = "Made-up data: Larkfold Orchard does not exist.";
        return sheet;
    }
};

/// `count` more accessions, a day apart.
inline void add_accessions(bloom::BloomForecast& forecast, int count) {
    for (int i = 0; i < count; ++i) {
        add_window(forecast, window_about(fmt::format("Seedling {:02}", i + 1), april(8 + i / 2)));
    }
}

}  // namespace pipward::testing
