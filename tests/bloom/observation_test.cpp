// SPDX-License-Identifier: MIT
#include "pipward/bloom/observation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "springs.h"

namespace pipward::bloom {
namespace {

using testing::curves_of_springs;
using testing::orchard_latitude;
using testing::springs;

const Day last_day = make_day({2030, 1, 1}).value();
const Station home{1, "Larkfold", {100}, {}, orchard_latitude};

Day spring_day(int season_day) {
    return anchor_of({2020}, Hemisphere::north) + season_day;
}

BloomObservation remark(std::int64_t fid, const std::string& accession, int season_day, int bbch) {
    BloomObservation written;
    written.fid = fid;
    written.accession = accession;
    written.observed_on = spring_day(season_day);
    written.bbch = {bbch};
    return written;
}

Tree tree_at(const std::string& label, const std::string& accession, double height) {
    Tree planted;
    planted.label = label;
    planted.accession = accession;
    planted.elevation = Metres{height};
    return planted;
}

ObservationsReport observed(const Orchard& orchard, std::vector<double> offsets = {0.0}) {
    return observe(orchard, home, Hemisphere::north, last_day,
                   curves_of_springs(springs(2020, 1), orchard_latitude, std::move(offsets)));
}

bool has_finding(const Findings& findings, const std::string& row, Level level) {
    return std::ranges::any_of(
        findings, [&](const Finding& f) { return f.row == row && f.level == level && !f.message.empty(); });
}

TEST(TreeOffset, ATreeHigherUpIsColderInWholeSteps) {
    EXPECT_NEAR(tree_offset(tree_at("T1", "A", 200), home).degrees, -0.65, 1e-12);
    EXPECT_NEAR(tree_offset(tree_at("T1", "A", 103), home).degrees, 0, 1e-12);
    EXPECT_NEAR(tree_offset(tree_at("T1", "A", 84), home).degrees, 0.10, 1e-12);
    EXPECT_FALSE(std::signbit(tree_offset(tree_at("T1", "A", 100), home).degrees));
}

TEST(TreeOffset, HeightComesFromTheTreeThenItsPointThenTheStation) {
    Tree planted;
    EXPECT_EQ(tree_offset(planted, home).degrees, 0);
    planted.at = MapPoint{0, 0, Metres{200}};
    EXPECT_NEAR(tree_offset(planted, home).degrees, -0.65, 1e-12);
    planted.elevation = Metres{300};
    EXPECT_NEAR(tree_offset(planted, home).degrees, -1.3, 1e-12);
}

TEST(Observe, FullBloomNotedIsFullBloom) {
    Orchard orchard;
    orchard.bloom_observations = {remark(7, "Apple A", 112, 65)};
    const auto report = observed(orchard);
    ASSERT_EQ(report.observations.size(), 1U);
    EXPECT_EQ(report.observations[0].full_bloom, 112);
    EXPECT_EQ(report.observations[0].observations, std::vector<std::int64_t>{7});
    EXPECT_EQ(report.observations[0].observed_on, std::vector<Day>{spring_day(112)});
    EXPECT_TRUE(report.findings.empty());
}

TEST(Observe, ObservationsOfOtherStagesAreCarriedAlongTheLadder) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Balloon", 112, 59), remark(2, "Fading", 112, 67),
                                  remark(3, "Full", 112, 65)};
    const auto report = observed(orchard);
    ASSERT_EQ(report.observations.size(), 3U);
    EXPECT_GT(report.observations[0].full_bloom, 113);
    EXPECT_LT(report.observations[1].full_bloom, 111);
    EXPECT_GT(report.observations[0].sd_days, report.observations[2].sd_days);
}

TEST(Observe, OpenPercentGivesThePlaceOnTheLadder) {
    Orchard orchard;
    auto little = remark(1, "Little", 112, 65);
    little.open_percent = 10;
    auto half = remark(2, "Half", 112, 61);
    half.open_percent = 50;
    auto not_open = remark(3, "Not open", 112, 57);
    not_open.open_percent = 90;
    orchard.bloom_observations = {little, half, not_open, remark(4, "Pink", 112, 57),
                                  remark(5, "Ten", 112, 61)};
    const auto report = observed(orchard);
    const auto& seen = report.observations;  // by name: Half, Little, Not open, Pink, Ten
    ASSERT_EQ(seen.size(), 5U);
    EXPECT_NEAR(seen[0].full_bloom, 112, 1e-9);
    EXPECT_NEAR(seen[1].full_bloom, seen[4].full_bloom, 1e-9);
    EXPECT_EQ(seen[2].full_bloom, seen[3].full_bloom);
}

TEST(Observe, ObservationsOfOneSpringAreAveragedByTheirCertainty) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 110, 65), remark(2, "Apple A", 112, 65)};
    const auto report = observed(orchard);
    ASSERT_EQ(report.observations.size(), 1U);
    EXPECT_NEAR(report.observations[0].full_bloom, 111, 1e-9);
    EXPECT_EQ(report.observations[0].observations.size(), 2U);
}

TEST(Observe, OneNoteApartFromItsFellowsHardlyMovesThem) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 110, 65), remark(2, "Apple A", 111, 65),
                                  remark(3, "Apple A", 112, 65), remark(4, "Apple A", 141, 65)};
    const auto report = observed(orchard);
    EXPECT_NEAR(report.observations[0].full_bloom, 111, 0.5);
    EXPECT_TRUE(has_finding(report.findings, "fid 4", Level::warning));
    EXPECT_FALSE(has_finding(report.findings, "fid 2", Level::warning));
}

TEST(Observe, TwoObservationsThatDisagreeAreBothNamedAndTrustedLess) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 105, 65), remark(2, "Apple A", 117, 65)};
    const auto report = observed(orchard);
    EXPECT_TRUE(has_finding(report.findings, "fid 1", Level::warning));
    EXPECT_TRUE(has_finding(report.findings, "fid 2", Level::warning));
    EXPECT_GT(report.observations[0].sd_days, 3);
}

TEST(Observe, ANoteOnATreeStandsAtTheTreesHeight) {
    Orchard orchard;
    orchard.trees = {tree_at("T1", "Apple A", 200)};
    BloomObservation written = remark(1, "", 112, 65);
    written.accession.reset();
    written.tree = "T1";
    orchard.bloom_observations = {written};
    const auto offset = tree_offset(orchard.trees[0], home);
    const auto report = observed(orchard, {offset.degrees});
    ASSERT_EQ(report.observations.size(), 1U);
    EXPECT_EQ(report.observations[0].accession, "Apple A");
    EXPECT_EQ(report.observations[0].offset, offset);
}

TEST(Observe, ANoteOnAnAccessionStandsAtTheMeanOfItsLivingTrees) {
    Orchard orchard;
    orchard.trees = {tree_at("T1", "Apple A", 200), tree_at("T2", "Apple A", 300),
                     tree_at("T3", "Apple A", 900)};
    orchard.trees[2].removed_on = spring_day(-400);
    orchard.bloom_observations = {remark(1, "Apple A", 112, 65), remark(2, "Stranger", 112, 65)};
    const auto seen = stages_seen(orchard, home, Hemisphere::north, last_day).stages;
    ASSERT_EQ(seen.size(), 2U);
    EXPECT_NEAR(seen[0].offset.degrees, -1.0, 0.051);
    EXPECT_EQ(seen[1].offset.degrees, 0);
}

TEST(Observe, ObservationsWithoutWeatherAreLeftOutAndSaid) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 112, 65), remark(2, "Apple A", 112 + 366, 65)};
    const auto report = observed(orchard);
    EXPECT_EQ(report.observations.size(), 1U);
    ASSERT_EQ(report.findings.size(), 1U);
    EXPECT_EQ(report.findings[0].level, Level::notice);
    EXPECT_EQ(report.findings[0].value, "2021");
}

TEST(Observe, ObservationsThatCannotBePlacedAreNamedEachWithItsReason) {
    Orchard orchard;
    BloomObservation lost = remark(3, "", 112, 65);
    lost.accession.reset();
    lost.tree = "gone";
    orchard.bloom_observations = {remark(1, "Apple A", 112, 71), remark(2, "Apple A", -80, 65), lost};
    const auto report = observed(orchard);
    EXPECT_TRUE(has_finding(report.findings, "fid 1", Level::notice));
    EXPECT_TRUE(has_finding(report.findings, "fid 3", Level::warning));
    EXPECT_EQ(report.observations.size(), 1U);  // an odd day, but a day: the fit will flag it
}

TEST(Observe, ALadderThatRunsBackwardsIsFlagged) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 108, 61), remark(2, "Apple A", 112, 65),
                                  remark(3, "Apple A", 115, 57), remark(4, "Apple B", 112, 57),
                                  remark(5, "Apple A", 118, 67)};
    const auto findings = observed(orchard).findings;
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_TRUE(has_finding(findings, "fid 3", Level::warning));
    EXPECT_EQ(findings[0].table, "bloom_observation");
    EXPECT_EQ(findings[0].value, to_iso(spring_day(115)));
}

TEST(Observe, TheOrderOfTheObservationsIsOfNoEffect) {
    Orchard orchard;
    for (int i = 0; i < 12; ++i) {
        orchard.bloom_observations.push_back(
            remark(i, i % 3 == 0 ? "Apple A" : "Apple B", 104 + i, i % 2 == 0 ? 61 : 65));
    }
    const auto forwards = observed(orchard);
    std::ranges::reverse(orchard.bloom_observations);
    const auto backwards = observed(orchard);
    ASSERT_EQ(forwards.observations.size(), backwards.observations.size());
    for (std::size_t i = 0; i < forwards.observations.size(); ++i) {
        EXPECT_EQ(forwards.observations[i].full_bloom, backwards.observations[i].full_bloom);
        EXPECT_EQ(forwards.observations[i].observations, backwards.observations[i].observations);
    }
    EXPECT_EQ(forwards.findings, backwards.findings);
}

TEST(Observe, ObservationsOfAfterAsOfAreNotKnownYet) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 112, 65), remark(2, "Apple A", 114, 61),
                                  remark(3, "Apple B", 9999, 65)};
    const auto curves = curves_of_springs(springs(2020, 1), orchard_latitude, {0.0});
    const auto report = observe(orchard, home, Hemisphere::north, spring_day(112), curves);
    ASSERT_EQ(report.observations.size(), 1U);
    EXPECT_EQ(report.observations[0].observations, std::vector<std::int64_t>{1});
    EXPECT_TRUE(report.findings.empty());
}

TEST(Observe, OnlyTheSeasonUnderWayIsSaidToMoveItsOwnForecast) {
    Orchard orchard;
    orchard.bloom_observations = {remark(1, "Apple A", 112, 65)};
    const auto told = [&](Day as_of) {
        const auto findings = observe(orchard, home, Hemisphere::north, as_of, {}).findings;
        return findings.size() == 1 ? (findings[0].message + findings[0].remedy).text() : "";
    };
    EXPECT_NE(told(spring_day(112)).find("not complete yet"), std::string::npos);
    EXPECT_NE(told(spring_day(112)).find("update its own forecast"), std::string::npos);
    EXPECT_EQ(told(spring_day(112) + 365).find(" yet"), std::string::npos);
    EXPECT_NE(told(spring_day(112) + 365).find("Add the station's days"), std::string::npos);
}

TEST(Observe, ObservationsOfManySeasonsWithoutWeatherAreToldTogether) {
    Orchard orchard;
    for (int i = 0; i < 6; ++i) {
        orchard.bloom_observations.push_back(remark(i, "Apple A", 112 - 365 * i, 65));
    }
    const auto findings = observe(orchard, home, Hemisphere::north, spring_day(112), {}).findings;
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_NE(findings[0].message.text().find("not complete yet"), std::string::npos);
    EXPECT_EQ(findings[1].value, "2015 to 2019");
    EXPECT_NE(findings[1].message.text().find("5 observations of 5 seasons"), std::string::npos);
}

TEST(CurvesForObservations, CoverEverySeasonAtEveryNotedOffset) {
    Orchard orchard;
    orchard.trees = {tree_at("T1", "Apple A", 200)};
    orchard.bloom_observations = {remark(1, "Apple A", 112, 65), remark(2, "Apple B", 112, 65)};
    const auto seen = stages_seen(orchard, home, Hemisphere::north, last_day).stages;
    const auto curves = curves_for_observations(seen, springs(2018, 3), orchard_latitude);
    EXPECT_EQ(curves.size(), 6U);
    EXPECT_TRUE(curves.contains({{2019}, seen[0].offset.degrees}));
    EXPECT_EQ(observe(orchard, home, Hemisphere::north, last_day, curves).observations.size(), 2U);
}

}  // namespace
}  // namespace pipward::bloom
