// SPDX-License-Identifier: MIT
#include "pipward/paper/skill_sheet.h"

#include <gtest/gtest.h>

#include "bracketed.h"
#include "paper/markup_check.h"

namespace pipward::paper {
namespace {

bloom::ForwardScore score_of(bloom::BloomMethod method, int month, double rmse) {
    bloom::ForwardScore score;
    score.method = method;
    score.stage = full_bloom;
    score.issued = {month, 1};
    score.springs = 20;
    score.n = 40;
    score.rmse = rmse;
    score.places = {4, 4, 4, 4, 4, 4, 4, 4, 4, 4};
    return score;
}

SkillSheet two_days_of_issue() {
    return {"Larkfold <Orchard>",
            *parse_iso_day("2026-03-20"),
            bloom::BloomMethod::averaged,
            {score_of(bloom::BloomMethod::averaged, 4, 4.25), score_of(bloom::BloomMethod::averaged, 3, 6.5),
             score_of(bloom::BloomMethod::recent_mean, 3, 8.75)}};
}

std::size_t count_of(const std::string& html, std::string_view part) {
    std::size_t count = 0;
    for (auto at = html.find(part); at != html.npos; at = html.find(part, at + part.size())) {
        ++count;
    }
    return count;
}

TEST(SkillSheet, TellsTheMethodUsedBesideTheRecentMeanInTheOrderOfTheCalendar) {
    const auto html = skill_sheet_html(two_days_of_issue());
    const auto march = html.find("6.5");
    ASSERT_NE(march, html.npos);
    EXPECT_NE(html.find("8.8", march), html.npos);
    EXPECT_LT(march, html.find("4.2"));
    EXPECT_NE(html.find("Larkfold &lt;Orchard&gt;"), html.npos);
}

TEST(SkillSheet, TheAppendixHasAHistogramOfTenBarsForEachDayOfIssue) {
    const auto html = skill_sheet_html(two_days_of_issue());
    const auto appendix = html.substr(html.find("Appendix"));
    EXPECT_EQ(count_of(appendix, "stroke-dasharray"), 2U);
    EXPECT_EQ(count_of(appendix, " stroke=\"#") - count_of(appendix, "stroke-dasharray"), 20U);
}

TEST(SkillSheet, IsWellFormedWithAndWithoutScores) {
    for (auto sheet : {two_days_of_issue(), SkillSheet{"", *parse_iso_day("2026-03-20"), {}, {}}}) {
        const auto html = skill_sheet_html(sheet);
        testing::MarkupCheck check(html);
        EXPECT_EQ(check.trouble, "");
    }
    EXPECT_NE(skill_sheet_html({"", *parse_iso_day("2026-03-20"), {}, {}}).find("No past spring"),
              std::string::npos);
}

}  // namespace
}  // namespace pipward::paper
