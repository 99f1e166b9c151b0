// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "days.h"
#include "pipward/bloom/forecast.h"
#include "pipward/cross/detail/bloom_course.h"
#include "pipward/cross/plan.h"

/// Small invented orchards with a forecast made by hand: every day of a member is as warm as the next.
namespace pipward::testing {

/// A season at one temperature; chill collects at half a portion a day.
inline bloom::SeasonCurves even_curves(double mean_c) {
    bloom::SeasonCurves curves;
    for (int i = 0; i < season_length; ++i) {
        curves.ladder.push_back(i * (mean_c - bloom::ladder_base.degrees));
        curves.degree_days.push_back(i * (mean_c - bloom::degree_day_base.degrees));
        curves.chill.push_back(0.5 * i);
        curves.mean_temperature.push_back(mean_c);
        curves.asymcur.push_back(i);
        for (auto& heat : curves.heat) {
            heat.push_back(i);
        }
    }
    curves.known_days = season_length;
    return curves;
}

inline cross::CrossingAssumptions every_cross_alike() {
    cross::CrossingAssumptions assumptions;
    assumptions.fruit_set_sd = 0;
    return assumptions;
}

struct MadeAccession {
    std::string name;
    double full_bloom = 120;  ///< season day: 120 is 1 May 2026
    std::string s_alleles{};
    std::optional<int> ploidy{};
    int trees = 1;
};

/// The orchard of the spring of 2026, in the north.
class MadeOrchard {
  public:
    explicit MadeOrchard(const std::string& as_of, std::vector<double> mean_c = {11, 12, 13}) {
        forecast.season = {2026};
        forecast.as_of = day(as_of);
        for (std::size_t i = 0; i < mean_c.size(); ++i) {
            forecast.members.push_back({2025 - static_cast<int>(i)});
            forecast.curves[0.0].push_back(even_curves(mean_c[i]));
        }
    }

    MadeOrchard& accession(const MadeAccession& made) {
        Accession added;
        added.name = made.name;
        added.ploidy = made.ploidy;
        if (!made.s_alleles.empty()) {
            added.s_alleles = made.s_alleles;
        }
        orchard.accessions.push_back(added);
        window(made.name, made.full_bloom, 0);
        forecast.of_accession.emplace(made.name, forecast.windows.size() - 1);
        for (int i = 1; i <= made.trees; ++i) {
            tree(made.name, made.name + " " + std::to_string(i), forecast.windows.size() - 1);
        }
        return *this;
    }

    /// Another tree of an accession, so much earlier (negative) or later than the others.
    MadeOrchard& other_tree(const std::string& name, const std::string& label, double days) {
        const auto& standing = forecast.windows[forecast.of_accession.at(name)];
        window(name, standing.full_bloom.front() + days, days);
        tree(name, label, forecast.windows.size() - 1);
        return *this;
    }

    MadeOrchard& goal(const std::string& code, const std::string& seed_parent,
                      const std::string& pollen_parent, int season = 2026, std::optional<int> priority = {}) {
        orchard.goals.push_back({0, code, {season}, seed_parent, pollen_parent, 100, priority, {}});
        return *this;
    }

    MadeOrchard& blend(const std::string& name, const std::string& member, double share) {
        orchard.blend_members.push_back({0, name, member, Share{share}});
        return *this;
    }

    MadeOrchard& lot(const std::string& code, const std::string& donor, const std::string& collected_on,
                     Store store, std::optional<int> flowers = 1000) {
        PollenLot lot;
        lot.code = code;
        lot.donor = donor;
        lot.collected_on = day(collected_on);
        lot.store = store;
        lot.flowers = flowers;
        orchard.pollen_lots.push_back(lot);
        return *this;
    }

    MadeOrchard& test(const std::string& lot, const std::string& on, int grains, int germinated) {
        orchard.pollen_tests.push_back({0, lot, day(on), grains, germinated});
        return *this;
    }

    MadeOrchard& pollinated(const std::string& cross, const std::string& on, int flowers,
                            std::optional<std::string> lot = {}, std::optional<int> pass = {}) {
        orchard.pollinations.push_back({0, "T", cross, "", day(on), flowers, lot, pass, {}});
        return *this;
    }

    Accession& record(const std::string& name) {
        for (auto& accession : orchard.accessions) {
            if (accession.name == name) {
                return accession;
            }
        }
        throw std::runtime_error("no accession " + name);
    }

    /// Unless told otherwise every cross sets alike, so that flowers can be reckoned by hand.
    cross::SeasonPlan plan(const cross::CrossingAssumptions& assumptions = every_cross_alike()) {
        forecast.trees.clear();
        for (std::size_t i = 0; i < orchard.trees.size(); ++i) {
            forecast.trees.push_back({&orchard.trees[i], window_of_tree_[i]});
        }
        return cross::plan_season(forecast, orchard, assumptions);
    }

    Orchard orchard;
    bloom::BloomForecast forecast;
    double season_sd = 2;
    double own_sd = 1.5;

  private:
    void window(const std::string& name, double full_bloom, double offset) {
        bloom::BloomWindow window;
        window.accession = name;
        window.offset = {offset};
        window.full_bloom.assign(forecast.members.size(), full_bloom);
        window.season_sd_days = season_sd;
        window.own_sd_days = own_sd;
        window.full = quantiles(full_bloom, 3);
        window.first = quantiles(full_bloom - 6, 3);
        window.end = quantiles(full_bloom + 10, 3);
        if (!forecast.curves.contains(offset)) {
            forecast.curves[offset] = forecast.curves.at(0.0);
        }
        forecast.windows.push_back(window);
    }

    bloom::DayQuantiles quantiles(double middle, double spread) const {
        return {forecast.day_of(middle - spread), forecast.day_of(middle), forecast.day_of(middle + spread)};
    }

    void tree(const std::string& accession, const std::string& label, std::size_t window) {
        Tree tree;
        tree.label = label;
        tree.accession = accession;
        tree.purpose = TreePurpose::parent;
        tree.at = MapPoint{static_cast<double>(orchard.trees.size()), 0, {}};
        orchard.trees.push_back(tree);
        window_of_tree_.push_back(window);
    }

    std::vector<std::size_t> window_of_tree_;
};

/// Courses of one tree whose forecast is kept alive beside them.
inline cross::detail::BloomCourses courses_at(double full_bloom, std::vector<double> mean_c = {11, 12, 13}) {
    static std::vector<std::unique_ptr<MadeOrchard>> kept;  // the courses point into the forecast
    kept.push_back(std::make_unique<MadeOrchard>("2026-03-01", std::move(mean_c)));
    kept.back()->accession({"Tree", full_bloom});
    return cross::detail::bloom_courses(kept.back()->forecast, kept.back()->forecast.windows.front());
}

/// The ways of one goal and donor, as the plan orders them.
inline std::vector<cross::CrossWay> ways_of(const cross::SeasonPlan& plan, const std::string& cross,
                                            const std::string& donor = {}) {
    std::vector<cross::CrossWay> found;
    for (const auto& way : plan.ways) {
        if (way.cross == cross && (donor.empty() || way.donor == donor)) {
            found.push_back(way);
        }
    }
    return found;
}

inline cross::CrossWay way_of(const cross::SeasonPlan& plan, const std::string& cross, cross::PollenWay way,
                              const std::string& donor = {}) {
    for (const auto& row : ways_of(plan, cross, donor)) {
        if (row.way == way) {
            return row;
        }
    }
    throw std::runtime_error("no such way of " + cross);
}

inline bool says(const std::string& why, const std::string& words) {
    return why.find(words) != std::string::npos;
}

}  // namespace pipward::testing
