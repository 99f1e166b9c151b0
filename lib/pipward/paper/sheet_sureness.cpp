// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/sheet_sections.h"

namespace pipward {
namespace {

bool is_overall(const SkillScore& score) {
    return score.accession.empty() && !score.training_seasons;
}

std::string lead_text(const std::optional<int>& lead) {
    return lead ? fmt::format("Foretold {} before bloom", counted(*lead, "day", "days"))
                : "With the season's weather known";
}

const SkillScore* long_run_mean(const SeasonSheet& sheet, const SkillScore& beside) {
    const auto at = std::ranges::find_if(sheet.skill, [&](const SkillScore& score) {
        return is_overall(score) && score.method == BloomMethod::mean_day &&
               score.lead_days == beside.lead_days;
    });
    return at == sheet.skill.end() || beside.method == BloomMethod::mean_day ? nullptr : &*at;
}

std::string score_html(const SeasonSheet& sheet, const SkillScore& score) {
    auto text = fmt::format(
        "{}, it foretold past seasons within 3 days in {} and within 5 days in {}; it missed by {:.1f} days "
        "on "
        "average. Its 8-in-10 box held the day in {} (80 would be exact).",
        lead_text(score.lead_days), of_hundred(score.within_3_days), of_hundred(score.within_5_days),
        score.mae, of_hundred(score.coverage_80));
    if (const auto* mean = long_run_mean(sheet, score)) {
        text += fmt::format(" The long-run mean day alone: within 3 days in {}, missed by {:.1f}.",
                            of_hundred(mean->within_3_days), mean->mae);
    }
    return "<li>" + text + "</li>\n";
}

std::string skill_html(const SeasonSheet& sheet) {
    std::string items;
    const SkillScore* first = nullptr;
    for (const auto& score : sheet.skill) {
        if (score.chosen && is_overall(score)) {
            items += score_html(sheet, score);
            first = first ? first : &score;
        }
    }
    if (!first) {
        return "<p>How well the forecast did in past seasons was not measured for this sheet.</p>\n";
    }
    return fmt::format(
        "<p>Method: {}. Each of {} was left out in turn and foretold from the others "
        "({}):</p>\n<ul>\n{}</ul>\n",
        method_words(first->method), counted(first->seasons, "past season", "past seasons"),
        counted(first->notes, "case", "cases"), items);
}

std::string weather_html(const BloomForecast& forecast) {
    const auto stand_in = forecast.members.size() == 1
                              ? "one past season stands"
                              : fmt::format("{} past seasons stand", forecast.members.size());
    return fmt::format(
        "<p>Weather after {} is not known: {} in for it, so bloom is given as spans of days. Plan again "
        "after "
        "new weather or a bloom note.</p>\n",
        long_day(forecast.as_of), stand_in);
}

std::string assumptions_html(const CrossingAssumptions& a) {
    return fmt::format(
        "<p>A chance of 8 in 10 means: of ten springs such as this may become, in eight there is live, "
        "compatible pollen on hand while the flowers can take it. Fruit set and seed come on top: the flower "
        "counts reckon with {} worked flowers setting fruit, {} seeds a fruit and {} seeds becoming "
        "seedlings, "
        "and reach the wanted number in {} springs. A last safe day leaves {:.0f} chances in 100 of being "
        "too "
        "late.</p>\n",
        of_hundred(a.fruit_set.value), a.seeds_per_fruit, of_hundred(a.seed_to_seedling.value),
        of_hundred(a.confidence), a.risk * 100);
}

}  // namespace

std::string sureness_section(const SeasonSheet& sheet) {
    return section_html("sure", "How sure is this",
                        skill_html(sheet) + (sheet.forecast ? weather_html(*sheet.forecast) : "") +
                            assumptions_html(sheet.assumptions));
}

}  // namespace pipward
