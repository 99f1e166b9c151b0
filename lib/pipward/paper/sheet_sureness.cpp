// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/season/words.h"

namespace pipward::paper::detail {
namespace {

bool is_overall(const bloom::SkillScore& score) {
    return score.accession.empty() && !score.training_seasons;
}

const bloom::SkillScore* long_run_mean(const SeasonSheet& sheet, const bloom::SkillScore& beside) {
    const auto at = std::ranges::find_if(sheet.skill, [&](const bloom::SkillScore& score) {
        return is_overall(score) && score.method == bloom::BloomMethod::mean_day &&
               score.lead_days == beside.lead_days;
    });
    return at == sheet.skill.end() || beside.method == bloom::BloomMethod::mean_day ? nullptr : &*at;
}

/// How good the forecast was, told so many days before bloom, or with the season's weather known.
Sentence score_text(const bloom::SkillScore& score) {
    const auto in_3 = season::of_hundred(score.within_3_days);
    const auto in_5 = season::of_hundred(score.within_5_days);
    if (!score.lead_days) {
        return say(
            "With the season's weather known, forecasts of past seasons were within 3 days in {} and within "
            "5 days in {}; the mean error was {:.1f} days.",
            in_3, in_5, score.mae);
    }
    return *score.lead_days == 1 ? say("Issued 1 day before bloom, forecasts of past seasons were within 3 "
                                       "days in {} and within 5 days in {}; the mean error was {:.1f} days.",
                                       in_3, in_5, score.mae)
                                 : say("Issued {} days before bloom, forecasts of past seasons were within 3 "
                                       "days in {} and within 5 days in {}; the mean error was {:.1f} days.",
                                       *score.lead_days, in_3, in_5, score.mae);
}

std::string score_html(const SeasonSheet& sheet, const bloom::SkillScore& score, const Speech& speech) {
    std::vector<Sentence> sentences{score_text(score),
                                    say("Its 80 % interval contained the day in {} (80 would be exact).",
                                        season::of_hundred(score.coverage_80))};
    if (const auto* mean = long_run_mean(sheet, score)) {
        sentences.push_back(say("The long-term mean date alone: within 3 days in {}, mean error {:.1f} days.",
                                season::of_hundred(mean->within_3_days), mean->mae));
    }
    return element("li", "", speech.around(joined(sentences, verbatim(" ")))) + "\n";
}

Sentence method_text(const bloom::SkillScore& score) {
    const auto seasons = score.seasons == 1 ? say("1 past season") : say("{} past seasons", score.seasons);
    const auto cases = score.observations == 1 ? say("1 case") : say("{} cases", score.observations);
    return say("Method: {}. Each of {} was left out in turn and forecast from the others ({}):",
               season::method_words(score.method), seasons, cases);
}

std::string skill_html(const SeasonSheet& sheet, const Speech& speech) {
    std::string items;
    const bloom::SkillScore* first = nullptr;
    for (const auto& score : sheet.skill) {
        if (score.chosen && is_overall(score)) {
            items += score_html(sheet, score, speech);
            first = first ? first : &score;
        }
    }
    if (!first) {
        return paragraph_html(say("Forecast skill in past seasons was not measured for this sheet."), speech);
    }
    return paragraph_html(method_text(*first), speech) + "<ul>\n" + items + "</ul>\n";
}

Sentence weather_text(const bloom::BloomForecast& forecast) {
    const auto after = long_day(forecast.as_of);
    const std::set<Season> lent(forecast.members.begin(), forecast.members.end());
    return lent.size() == 1
               ? say("Weather after {} is not known: one past season replaces it, so bloom is given as "
                     "prediction intervals. Plan again after new weather or a bloom observation.",
                     after)
               : say("Weather after {} is not known: {} past seasons replace it, so bloom is given as "
                     "prediction intervals. Plan again after new weather or a bloom observation.",
                     after, lent.size());
}

// By genus where the orchard's own counts tell them apart.
Sentence set_words(const cross::CrossingAssumptions& a) {
    std::vector<Sentence> sets;
    for (const auto& [genus, set] : a.fruit_set_of_genus) {
        const auto share = season::of_hundred(set.value);
        sets.push_back(genus.empty() ? share : say("{} ({})", share, genus));
    }
    return sets.empty() ? season::of_hundred(a.fruit_set.value) : joined(sets, verbatim(", "));
}

Sentence assumptions_text(const cross::CrossingAssumptions& a) {
    return say(
        "A probability of 80 % means: in 8 of 10 springs like this one, viable, compatible pollen is "
        "available while the stigmas are receptive. Fruit set and seed are counted in addition: the flower "
        "numbers assume that {} pollinated flowers set fruit, more or fewer by {:.0f} from cross to cross, "
        "{} seeds per fruit and that {} seeds become seedlings, and reach the wanted number in {} springs. A "
        "last safe day has a risk of {:.0f} % of being too late.",
        set_words(a), a.fruit_set_sd * 100, a.seeds_per_fruit, season::of_hundred(a.seed_to_seedling.value),
        season::of_hundred(a.confidence), a.risk * 100);
}

}  // namespace

std::string sureness_section(const SeasonSheet& sheet, const Speech& speech) {
    const auto weather = sheet.forecast ? paragraph_html(weather_text(*sheet.forecast), speech) : "";
    return section_html(
        "sure", say("Certainty of the forecast"),
        skill_html(sheet, speech) + weather + paragraph_html(assumptions_text(sheet.assumptions), speech),
        speech);
}

}  // namespace pipward::paper::detail
