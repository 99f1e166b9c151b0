// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/odd_observations.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

#include "klein_altendorf.h"
#include "pipward/bloom/model.h"
#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::curves_of_springs;
using testing::orchard_latitude;
using testing::springs;

constexpr Day no_day_is_later{1000000};

// Of one accession in the spring of 2020: stages and their days of the season, fid 1, 2, 3 ...
Orchard one_spring(const std::vector<std::pair<int, int>>& stages_and_days) {
    Orchard orchard;
    for (const auto& [stage, season_day] : stages_and_days) {
        BloomObservation seen;
        seen.fid = static_cast<std::int64_t>(orchard.bloom_observations.size()) + 1;
        seen.accession = "Apple A";
        seen.observed_on = anchor_of({2020}, Hemisphere::north) + season_day;
        seen.bbch = {stage};
        orchard.bloom_observations.push_back(seen);
    }
    return orchard;
}

std::set<std::string> named_in(const Orchard& orchard) {
    const Station station{1, "Larkfold", {100}, {}, orchard_latitude};
    const auto report = observe(orchard, station, Hemisphere::north, no_day_is_later,
                                curves_of_springs(springs(2020, 1), orchard_latitude, {0.0}));
    std::set<std::string> rows;
    for (const auto& finding : report.findings) {
        rows.insert(finding.row.text());
    }
    return rows;
}

using Rows = std::set<std::string>;

TEST(OddObservations, ASpringThatRunsItsCourseIsNotQuestioned) {
    EXPECT_EQ(named_in(one_spring({{60, 105}, {65, 111}, {69, 121}})), Rows{});
}

TEST(OddObservations, OfThreeTheOneThatContradictsIsNamedAloneWhicheverItIs) {
    EXPECT_EQ(named_in(one_spring({{60, 85}, {65, 111}, {69, 121}})), Rows{"fid 1"});
    EXPECT_EQ(named_in(one_spring({{60, 105}, {65, 111}, {69, 145}})), Rows{"fid 3"});
}

TEST(OddObservations, OfStagesThatRunBackwardsTheOneFarFromTheOthersIsNamed) {
    EXPECT_EQ(named_in(one_spring({{60, 105}, {65, 91}, {69, 121}})), Rows{"fid 2"});
    EXPECT_EQ(named_in(one_spring({{60, 119}, {65, 111}, {69, 121}})), Rows{"fid 1"});
}

TEST(OddObservations, OfTwoThatContradictBothAreNamed) {
    EXPECT_EQ(named_in(one_spring({{65, 111}, {69, 150}})), (Rows{"fid 1", "fid 2"}));
}

TEST(OddObservations, WhereOnlyTwoRunBackwardsTheLaterNamesTheEarlier) {
    EXPECT_TRUE(named_in(one_spring({{65, 111}, {60, 114}})).contains("fid 2"));
}

bool asks_for_the_date(const Finding& finding) {
    return finding.table == "bloom_observation" && finding.field == "observed_on" &&
           finding.level == Level::warning;
}

Rows questioned(const testing::KleinAltendorf& read) {
    const auto stages = stages_seen(read.orchard, read.station, Hemisphere::north, no_day_is_later).stages;
    const auto curves = curves_for_observations(stages, read.seasons, testing::klein_altendorf_latitude);
    const auto seen = observe(read.orchard, read.station, Hemisphere::north, no_day_is_later, curves);
    const auto model = fit(BloomMethod::averaged, seen.observations, curves, read.orchard.accessions);
    Rows rows;
    for (const auto* findings : {&seen.findings, &model.findings}) {
        for (const auto& finding : *findings) {
            if (asks_for_the_date(finding)) {
                rows.insert(finding.row.text());
            }
        }
    }
    return rows;
}

// Observations as published (doi 10.60507/FK2/MZIELI), typing errors and all: 799 of sixty springs.
TEST(OddObservations, OfSixtyRealSpringsAtMostTenAreQuestionedAndSlipsOfAFortnightAreFound) {
    auto read = testing::read_klein_altendorf();
    if (!read) {
        GTEST_SKIP() << "The shared files bloom/klein-altendorf-*.csv are not here.";
    }
    const auto right = questioned(*read);
    EXPECT_LE(right.size(), 10U);
    for (const std::size_t offset : {3, 7, 11, 20}) {
        auto spoilt = *read;
        Rows slips;
        for (std::size_t i = offset; i < spoilt.orchard.bloom_observations.size(); i += 29) {
            auto& seen = spoilt.orchard.bloom_observations[i];
            seen.observed_on = seen.observed_on + (slips.size() % 2 == 0 ? -14 : 14);
            slips.insert("fid " + std::to_string(seen.fid));
        }
        const auto named = questioned(spoilt);
        const auto found =
            std::ranges::count_if(slips, [&](const std::string& row) { return named.contains(row); });
        EXPECT_GE(found, std::ssize(slips) * 85 / 100) << offset;
        EXPECT_LE(std::ssize(named) - found, 12) << offset;
    }
}

}  // namespace
}  // namespace pipward::bloom
