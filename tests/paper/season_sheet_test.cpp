// SPDX-License-Identifier: MIT
#include "pipward/paper/season_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>

#include "bracketed.h"
#include "paper/made_up_season.h"
#include "paper/markup_check.h"

using namespace pipward;
using namespace pipward::paper;
using namespace pipward::testing;

namespace {

const std::string nasty = "<b>\"O'Brien\" & 🍎</b>\xFF\x01";
const std::string nasty_escaped = "&lt;b&gt;&quot;O&#39;Brien&quot; &amp; 🍎&lt;/b&gt;\uFFFD\uFFFD";

bool has(const std::string& html, std::string_view part) {
    return html.find(part) != html.npos;
}

// The page from one section's start to its end.
std::string section_of(const std::string& html, const std::string& id) {
    const auto begin = html.find("<section id=\"" + id + "\"");
    return begin == html.npos ? "" : html.substr(begin, html.find("</section>", begin) - begin);
}

std::string larkfold_html() {
    return season_sheet_html(MadeUpSeason().sheet());
}

TEST(SeasonSheet, IsOneWellFormedPage) {
    const auto html = larkfold_html();
    EXPECT_TRUE(html.starts_with("<!DOCTYPE html>\n<html lang=\"en\">"));
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_EQ(count_of(html, "<h1>"), 1);
}

TEST(SeasonSheet, NeedsNothingFromOutsideAndRunsNothing) {
    const auto html = larkfold_html();
    EXPECT_FALSE(has(html, "<script"));
    EXPECT_FALSE(has(html, "<link"));
    EXPECT_FALSE(has(html, "url("));
    EXPECT_FALSE(has(html, "src="));
    EXPECT_EQ(count_of(html, "http"), count_of(html, "http://www.w3.org/2000/svg"));
}

TEST(SeasonSheet, LinksEveryPartOfThePage) {
    const auto html = larkfold_html();
    const MarkupCheck check(html);
    const std::regex link("href=\"#([a-z]+)\"");
    int links = 0;
    for (std::sregex_iterator at(html.begin(), html.end(), link), end; at != end; ++at) {
        EXPECT_TRUE(check.ids.count((*at)[1])) << (*at)[1];
        ++links;
    }
    EXPECT_EQ(links, 8);
    EXPECT_EQ(count_of(html, "<section "), 8);
}

TEST(SeasonSheet, SaysSeasonDayBookAndThatASampleIsMadeUp) {
    const auto html = larkfold_html();
    EXPECT_TRUE(has(html, "<h1>Season plan 2026</h1>"));
    EXPECT_TRUE(has(html, "<title>Season plan 2026 · Larkfold Orchard</title>"));
    EXPECT_TRUE(has(html, "9 April 2026"));
    EXPECT_TRUE(has(html, "Made-up data: Larkfold Orchard does not exist."));
}

TEST(SeasonSheet, SaysNothingOfMadeUpDataWithoutANote) {
    MadeUpSeason season;
    auto sheet = season.sheet();
    sheet.subtitle.clear();
    EXPECT_FALSE(has(season_sheet_html(sheet), "class=\"note\""));
}

TEST(DoNow, ListsWhatIsMissedDueTodayAndDueThisWeekAndNothingLater) {
    const auto now = section_of(larkfold_html(), "now");
    const auto missed = now.find("Test the stored pollen of <strong><bdi>Wold Russet");
    const auto today = now.find("Collect balloon-stage flowers of <strong><bdi>Tansy Gold");
    const auto soon = now.find("Bag the blossom of <strong><bdi class=\"short\">Ember");
    ASSERT_NE(missed, now.npos);
    ASSERT_NE(today, now.npos);
    ASSERT_NE(soon, now.npos);
    EXPECT_LT(missed, today);
    EXPECT_LT(today, soon);
    EXPECT_FALSE(has(now, "Remove the bags from"));
}

TEST(DoNow, ShowsTheNextTaskWhenNothingIsDue) {
    MadeUpSeason season;
    season.plan.pollen.clear();
    season.plan.field.erase(season.plan.field.begin());
    const auto now = section_of(season_sheet_html(season.sheet()), "now");
    EXPECT_TRUE(has(now, "Nothing is due this week. Next:"));
    EXPECT_TRUE(has(now, "Thu 16 Apr"));
    EXPECT_EQ(count_of(now, "<li>"), 1);
}

TEST(DoNow, StaysShort) {
    MadeUpSeason season;
    for (int i = 0; i < 40; ++i) {
        season.plan.pollen.push_back(pollen_task(cross::PollenWork::collect, "Ember", april(10), april(12),
                                                 cross::Urgency::this_week));
    }
    const auto now = section_of(season_sheet_html(season.sheet()), "now");
    EXPECT_TRUE(has(now, "and 34 more in the tables below"));
    EXPECT_EQ(count_of(now, "<li>"), 11);
}

TEST(BloomPart, ShowsEveryAccessionAsPictureAndAsNumbers) {
    const auto bloom = section_of(larkfold_html(), "bloom");
    EXPECT_EQ(count_of(bloom, "<figure>"), 2);
    EXPECT_EQ(count_of(bloom, "<svg xmlns"), 4) << "wide and stacked";
    EXPECT_EQ(count_of(bloom, "scope=\"row\""), 7);
    EXPECT_TRUE(has(bloom, "one note this spring would narrow its window."));
    EXPECT_TRUE(has(bloom, "○ from both parents"));
    EXPECT_TRUE(has(bloom, "● own observations (6)"));
}

TEST(BloomPart, DividesManyAccessionsIntoPicturesThatFitASheetOfPaper) {
    MadeUpSeason season;
    add_accessions(season.forecast, 53);
    const auto html = season_sheet_html(season.sheet());
    const auto bloom = section_of(html, "bloom");
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_EQ(count_of(bloom, "scope=\"row\""), 60);
    EXPECT_EQ(count_of(bloom, "<figure>"), 5) << "4 parents; 56 others by 16";
    EXPECT_EQ(count_of(bloom, "Other accessions, continued</figcaption>"), 3);
    EXPECT_EQ(count_of(bloom, ">Seedling 53</text>"), 2);
}

TEST(BloomPart, LeavesOutAThrongOfSeedlingsThatOnlyBorrowAndSaysHowMany) {
    MadeUpSeason season;
    for (int number = 1; number <= 40; ++number) {
        auto seedling = window_about("Row 9 no. " + std::to_string(number), april(20));
        seedling.source = bloom::NeedSource::mid_parent;
        seedling.observations_used = 0;
        add_window(season.forecast, seedling);
    }
    const auto bloom = section_of(season_sheet_html(season.sheet()), "bloom");
    EXPECT_FALSE(has(bloom, "Row 9"));
    EXPECT_TRUE(has(bloom, "Not shown: 42 accessions without bloom observations of their own"));
    EXPECT_TRUE(has(bloom, "Quarry Pear 7"));
}

TEST(BloomPart, SaysWhatIsMissingWithoutWindows) {
    MadeUpSeason season;
    season.forecast = empty_forecast();
    EXPECT_TRUE(
        has(section_of(season_sheet_html(season.sheet()), "bloom"), "No bloom window could be forecast."));
    auto sheet = season.sheet();
    sheet.forecast = nullptr;
    const auto html = season_sheet_html(sheet);
    EXPECT_TRUE(has(section_of(html, "bloom"), "No bloom window could be forecast."));
    EXPECT_EQ(MarkupCheck(html).trouble, "");
}

TEST(CrossesPart, GivesTheBestWayARowAndTheOthersTheirChances) {
    const auto crosses = section_of(larkfold_html(), "crosses");
    EXPECT_EQ(count_of(crosses, "scope=\"row\""), 3);
    EXPECT_TRUE(has(crosses, "<bdi>Larkfold Red</bdi> × <bdi class=\"short\">Ember</bdi>"));
    EXPECT_TRUE(has(crosses, "●●●●●●●●○○"));
    EXPECT_TRUE(has(crosses, "<strong>8 in 10</strong>, good"));
    EXPECT_TRUE(has(crosses,
                    "Other ways:<ul><li>collect and use fresh, the same day: 3 in 10, unlikely</li><li>force "
                    "a cut branch: 1 in 10, unlikely</li></ul>"));
    EXPECT_TRUE(has(crosses, "kinship 0.125"));
    EXPECT_TRUE(has(crosses, "115 flowers"));
    EXPECT_TRUE(has(crosses, "2026-04-16"));
}

TEST(CrossesPart, NamesTheDonorOfABlendAndTheLotInStore) {
    const auto crosses = section_of(larkfold_html(), "crosses");
    EXPECT_TRUE(has(crosses, "donor <bdi>Tansy Gold</bdi>"));
    EXPECT_FALSE(has(crosses, "donor <bdi class=\"short\">Ember"));
    EXPECT_TRUE(has(crosses, "lot <bdi>P-2025-03</bdi>") ||
                has(crosses, "lot <bdi class=\"short\">P-2025-03</bdi>"));
}

TEST(CrossesPart, FollowsTheMarkedWayWhereverItStands) {
    MadeUpSeason season;
    std::ranges::reverse(season.plan.ways);
    const auto crosses = section_of(season_sheet_html(season.sheet()), "crosses");
    EXPECT_EQ(count_of(crosses, "scope=\"row\""), 3);
    EXPECT_TRUE(has(crosses, "<strong>8 in 10</strong>, good"));
    EXPECT_FALSE(has(crosses, "<strong>3 in 10</strong>"));
}

TEST(CrossesPart, ShowsACrossThatHasNoGoodWay) {
    MadeUpSeason season;
    auto hopeless = way("LF26-09", "Ember", "Mill Crab", cross::PollenWay::same_day, 0);
    hopeless.verdict = cross::Verdict::impossible;
    season.plan.ways = {hopeless};
    const auto crosses = section_of(season_sheet_html(season.sheet()), "crosses");
    EXPECT_TRUE(has(crosses, "<strong>impossible</strong>"));
}

TEST(PollenPart, FlagsPollenForNextSpringAndTellsTheLastSafeDayInBold) {
    const auto pollen = section_of(larkfold_html(), "pollen");
    EXPECT_EQ(count_of(pollen, "for spring 2027"), 1);
    EXPECT_FALSE(has(pollen, "for spring 2026"));
    EXPECT_TRUE(has(pollen, "<strong><time datetime=\"2026-04-29\">Wed 29 Apr</time></strong>"));
    EXPECT_TRUE(has(pollen, "until <time datetime=\"2027-05-02\">Sun 2 May 2027</time>"));
    EXPECT_EQ(count_of(pollen, "type=\"checkbox\""), 4);
}

TEST(PollenPart, GoesByLastSafeDayWhateverTheOrderOfThePlan) {
    MadeUpSeason season;
    const auto html = season_sheet_html(season.sheet());
    std::ranges::reverse(season.plan.pollen);
    std::ranges::reverse(season.plan.field);
    const auto reversed = season_sheet_html(season.sheet());
    EXPECT_EQ(section_of(html, "pollen"), section_of(reversed, "pollen"));
    EXPECT_EQ(section_of(html, "field"), section_of(reversed, "field"));
}

TEST(PollenPart, SaysWhenADonorHasNoTree) {
    MadeUpSeason season;
    season.plan.pollen[1].tree.clear();
    EXPECT_TRUE(has(section_of(season_sheet_html(season.sheet()), "pollen"), "no living tree on record"));
}

TEST(FieldPart, ListsBaggingPollinatingAndUnbagging) {
    const auto field = section_of(larkfold_html(), "field");
    EXPECT_TRUE(has(field, "Bag the blossom of"));
    EXPECT_TRUE(
        has(field,
            "Pollinate <strong><bdi>Larkfold Red</bdi></strong>, tree <bdi class=\"short\">B-11</bdi>, "
            "with <strong><bdi class=\"short\">Ember"));
    EXPECT_TRUE(has(field, "Remove the bags from"));
    EXPECT_TRUE(has(field, "collected this spring, refrigerator"));
}

TEST(FindingsPart, ShowsTheGravestFirstAndEachOnce) {
    MadeUpSeason season;
    auto sheet = season.sheet();
    sheet.findings.push_back(season.plan.findings.front());
    sheet.findings.push_back(
        {Level::error, "tree", "A-1", "block", "Z", say("There is no such block."), say("Add it.")});
    const auto part = section_of(season_sheet_html(sheet), "findings");
    EXPECT_EQ(count_of(part, "<li>"), 3);
    EXPECT_LT(part.find("no such block"), part.find("S-alleles are not known"));
    EXPECT_LT(part.find("S-alleles are not known"), part.find("fid 12"));
    EXPECT_TRUE(has(part, "tree, A-1, block = Z:"));
}

TEST(FindingsPart, NamesTablesAndColumnsInPlainWords) {
    MadeUpSeason season;
    auto sheet = season.sheet();
    sheet.findings = {{Level::notice, "bloom_observation", "A_12", "observed_on", "a_b", say("Odd."), {}}};
    EXPECT_TRUE(
        has(section_of(season_sheet_html(sheet), "findings"), "bloom observation, A_12, observed on = a_b"));
}

TEST(FindingsPart, CutsAnEndlessListAndSaysHowMuchIsMissing) {
    MadeUpSeason season;
    auto sheet = season.sheet();
    for (int i = 0; i < 100; ++i) {
        sheet.findings.push_back(
            {Level::notice, "bloom_observation", fmt::format("fid {}", i), "", "", say("Odd {}.", i), {}});
    }
    EXPECT_TRUE(has(section_of(season_sheet_html(sheet), "findings"), "and 62 more"));
}

TEST(FindingsPart, TellsTogetherWhatManyRowsHaveInCommon) {
    MadeUpSeason season;
    auto sheet = season.sheet();
    sheet.findings.clear();
    for (int i = 0; i < 100; ++i) {
        sheet.findings.push_back(
            {Level::notice, "bloom_observation", fmt::format("fid {}", i), "", "", say("Odd."), {}});
    }
    EXPECT_TRUE(has(section_of(season_sheet_html(sheet), "findings"),
                    "bloom observation, fid 0, fid 1, fid 2 and 97 more"));
}

TEST(HowSure, QuotesTheChosenMethodAndTheLongRunMeanBesideIt) {
    const auto sure = section_of(larkfold_html(), "sure");
    EXPECT_TRUE(has(sure,
                    "forecasts of past seasons were within 3 days in 76 of 100 and within 5 days in 93 of "
                    "100; the mean error was 2.1 days"));
    EXPECT_TRUE(has(sure, "The long-term mean date alone: within 3 days in 31 of 100, mean error 6.4 days."));
    EXPECT_TRUE(has(sure, "Issued 14 days before bloom"));
    EXPECT_TRUE(has(sure, "14 past seasons"));
    EXPECT_TRUE(has(sure, "has a risk of 10 %"));
}

TEST(HowSure, ClaimsNothingThatWasNotMeasured) {
    MadeUpSeason season;
    auto sheet = season.sheet();
    sheet.skill.clear();
    const auto sure = section_of(season_sheet_html(sheet), "sure");
    EXPECT_TRUE(has(sure, "was not measured"));
    EXPECT_FALSE(has(sure, "within 3 days"));
}

TEST(Cautions, SpeakOfEveryHazardAndDeferToTheLabel) {
    const auto care = section_of(larkfold_html(), "care");
    for (const auto* hazard :
         {"Seeds are poisonous.", "Ladders.", "Allergy.", "Sprays and bees.", "Fire blight.", "Tools.",
          "Protected parents.", "Moving material.", "label", "licensed"}) {
        EXPECT_TRUE(has(care, hazard)) << hazard;
    }
}

TEST(SeasonSheet, StandsWithAnEmptyPlan) {
    cross::SeasonPlan plan;
    plan.season = {2026};
    plan.as_of = april(9);
    SeasonSheet sheet;
    sheet.plan = &plan;
    const auto html = season_sheet_html(sheet);
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_TRUE(has(html, "Nothing is due."));
    EXPECT_TRUE(has(html, "No cross is wanted in 2026."));
    EXPECT_FALSE(has(html, "<table"));
}

TEST(SeasonSheet, RefusesToBeMadeWithoutAPlan) {
    try {
        season_sheet_html(SeasonSheet{});
        FAIL() << "no error";
    } catch (const Error& error) {
        EXPECT_EQ(error.trouble(), Trouble::usage);
    }
}

TEST(SeasonSheet, LetsNoTextOfTheBookBecomeMarkup) {
    MadeUpSeason season;
    add_window(season.forecast, window_about(nasty, april(16)));
    season.forecast.windows.back().warnings = {verbatim(nasty)};
    auto chosen = best(way(nasty, nasty, nasty, cross::PollenWay::kept_this_spring, 0.5));
    chosen.pollen_parent = nasty + " blend";
    chosen.why = verbatim(nasty);
    chosen.lot = nasty;
    season.plan.ways.push_back(chosen);
    auto pollen = pollen_task(cross::PollenWork::collect, nasty, april(9), april(9), cross::Urgency::today);
    pollen.tree = nasty;
    pollen.why = verbatim(nasty);
    pollen.for_crosses = {nasty, nasty};
    season.plan.pollen.push_back(pollen);
    auto field = field_task(cross::FieldWork::pollinate, nasty, nasty, nasty, april(9), april(9),
                            cross::Urgency::today);
    field.tree = nasty;
    field.why = field.pollen = verbatim(nasty);
    season.plan.field.push_back(field);
    auto sheet = season.sheet();
    sheet.orchard_name = sheet.subtitle = nasty;
    sheet.findings = {{Level::error, nasty, nasty, nasty, nasty, verbatim(nasty), verbatim(nasty)}};

    const auto html = season_sheet_html(sheet);
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_FALSE(has(html, "<b>"));
    EXPECT_FALSE(has(html, "O'Brien"));
    EXPECT_GE(count_of(html, nasty_escaped), 30);
}

TEST(SeasonSheet, CarriesNamesOfThreeHundredCharactersWhole) {
    MadeUpSeason season;
    const std::string endless(300, 'W');
    add_window(season.forecast, window_about(endless, april(16)));
    season.plan.ways.push_back(best(way("LF26-08", endless, endless, cross::PollenWay::same_day, 0.5)));
    const auto html = season_sheet_html(season.sheet());
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_TRUE(has(section_of(html, "crosses"), endless));
    EXPECT_TRUE(has(html, "overflow-wrap:anywhere"));
}

TEST(SeasonSheet, IsTheSameEveryTime) {
    EXPECT_EQ(larkfold_html(), larkfold_html());
}

// What a reader sees, and what a listener hears instead.
std::string read_aloud(std::string html) {
    html = std::regex_replace(html, std::regex("<style>[^]*?</style>"), "");
    html = std::regex_replace(html, std::regex("<bdi[^>]*>[^<]*</bdi>"), "");
    html = std::regex_replace(html, std::regex("(aria-label|data-label)=\"([^\"]*)\""), ">$2<");
    return std::regex_replace(html, std::regex("<[^>]*>"), "\n");
}

TEST(SeasonSheet, SaysEveryWordInTheWordingOfItsHost) {
    const MadeUpSeason season;
    auto sheet = season.sheet();
    sheet.subtitle.clear();
    auto rest = outside_brackets(read_aloud(season_sheet_html(sheet, bracketed)));
    // What stands in the book is the same in every language.
    rest = std::regex_replace(
        rest,
        std::regex("Larkfold (Red|Orchard)|Ember|Wold Russet|Tansy Gold|Quarry Pear 7|Mill Crab|fid 12"), "");
    std::smatch word;
    EXPECT_FALSE(std::regex_search(rest, word, std::regex("[a-z]{3,}"))) << word.str();
}

TEST(SeasonSheet, CarriesTheTagOfItsLanguage) {
    const auto german = [](std::string_view form) { return std::string(form == "en" ? "de" : form); };
    EXPECT_TRUE(has(season_sheet_html(MadeUpSeason().sheet(), german), "<html lang=\"de\">"));
}

TEST(SeasonSheet, LetsNoTranslationBecomeMarkup) {
    const auto hostile = [](std::string_view form) { return "<b> & " + std::string(form); };
    const auto html = season_sheet_html(MadeUpSeason().sheet(), hostile);
    EXPECT_EQ(MarkupCheck(html).trouble, "");
    EXPECT_FALSE(has(html, "<b>"));
}

}  // namespace
