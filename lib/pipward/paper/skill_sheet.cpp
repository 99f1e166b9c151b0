// SPDX-License-Identifier: MIT
#include "pipward/paper/skill_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/place_histogram.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/season/words.h"

namespace pipward::paper {
namespace {

using bloom::ForwardScore;

// All accessions together, then each species; within them by stage, then by the day of issue.
struct SkillKey {
    bool of_species = false;
    std::string name;
    Bbch stage;

    auto operator<=>(const SkillKey&) const = default;
};

using SkillGroups = std::map<SkillKey, std::vector<ForwardScore>>;

bool of_single_accession(const ForwardScore& score) {
    return !score.accession.empty() && !score.of_species;
}

SkillGroups groups_of(const SkillSheet& sheet) {
    SkillGroups groups;
    for (const auto& score : sheet.scores) {
        if (score.method == sheet.method && !of_single_accession(score)) {
            groups[{score.of_species, score.accession, score.stage}].push_back(score);
        }
    }
    for (auto& [key, scores] : groups) {
        std::ranges::sort(scores, {}, &ForwardScore::issued);
    }
    return groups;
}

const ForwardScore* beside(const SkillSheet& sheet, const ForwardScore& score, bloom::BloomMethod method) {
    const auto found = std::ranges::find_if(sheet.scores, [&](const ForwardScore& other) {
        return other.method == method && other.stage == score.stage && other.issued == score.issued &&
               other.accession == score.accession && other.of_species == score.of_species;
    });
    return found == sheet.scores.end() ? nullptr : &*found;
}

Sentence stage_words(Bbch stage) {
    return stage == first_bloom  ? say("First bloom")
           : stage == full_bloom ? say("Full bloom")
                                 : say("End of bloom");
}

Sentence group_words(const SkillKey& key) {
    return key.name.empty() ? say("{}, all accessions", stage_words(key.stage))
                            : say("{}, {}", stage_words(key.stage), key.name);
}

std::string days_cell(const ForwardScore* score, double ForwardScore::*figure) {
    return score == nullptr ? "" : fmt::format("{:.1f}", score->*figure);
}

detail::SheetRow row_of(const SkillSheet& sheet, const ForwardScore& score) {
    return {{fmt::format("{:02}-{:02}", score.issued.month, score.issued.day),
             fmt::format("{}", score.springs), days_cell(&score, &ForwardScore::rmse),
             days_cell(beside(sheet, score, bloom::BloomMethod::recent_mean), &ForwardScore::rmse),
             days_cell(&score, &ForwardScore::bias), days_cell(&score, &ForwardScore::crps),
             fmt::format("{:.0f} %", 100 * score.inside_80)},
            {}};
}

std::vector<detail::SheetColumn> columns() {
    return {{say("Issued"), 13, true},
            {say("Springs"), 12},
            {say("RMSE, days"), 14},
            {say("RMSE of the mean date of the last 15 springs"), 20},
            {say("Bias, days"), 13},
            {say("CRPS, days"), 13},
            {say("Inside the 80 % interval"), 15}};
}

std::string errors_section(const SkillSheet& sheet, const SkillGroups& groups, const Speech& speech) {
    auto html =
        detail::paragraph_html(say("Method: {}. Each past spring was forecast from earlier springs alone, on "
                                   "days of the calendar, the "
                                   "weather after that day hidden. Bias above zero: forecast too late.",
                                   season::method_words(sheet.method)),
                               speech);
    for (const auto& [key, scores] : groups) {
        std::vector<detail::SheetRow> rows;
        for (const auto& score : scores) {
            rows.push_back(row_of(sheet, score));
        }
        html += detail::sheet_table(group_words(key), columns(), rows, speech);
    }
    return detail::section_html("errors", say("Forward in time"), html, speech);
}

std::string appendix_section(const SkillGroups& groups, const Speech& speech) {
    auto html = detail::paragraph_html(
        say("Each bar counts the observed days that fell in one tenth of the forecast, the earliest tenth on "
            "the "
            "left. Where the forecast is right the bars are even (dashed line); the grey band is the room "
            "that "
            "chance leaves with so many springs. High at both ends: the intervals are too narrow. High in "
            "the "
            "middle: too wide. High on the left: forecast too late; on the right: too early."),
        speech);
    for (const auto& [key, scores] : groups) {
        html += "<figure>" + detail::element("figcaption", "", speech.plain(group_words(key))) +
                detail::place_histograms_svg(scores, speech) + "</figure>\n";
    }
    return detail::section_html("places", say("Appendix: where the observed days fell in the forecasts"),
                                html, speech);
}

std::string head_html(const SkillSheet& sheet, const Sentence& title, const Speech& speech) {
    auto head = "<header>\n" + detail::element("h1", "", speech.plain(title)) + "\n";
    if (!sheet.orchard_name.empty()) {
        head += detail::element("p", "orchard", detail::name_html(sheet.orchard_name)) + "\n";
    }
    return head + detail::paragraph_html(verbatim(speech.plain(long_day(sheet.as_of))), speech) +
           "</header>\n";
}

}  // namespace

std::string skill_sheet_html(const SkillSheet& sheet, const Wording& wording) {
    const Speech speech(wording, parts_of(sheet.as_of).year);
    const auto title = say("Bloom forecast skill");
    const auto groups = groups_of(sheet);
    const auto body =
        groups.empty()
            ? detail::paragraph_html(say("No past spring could be forecast from earlier ones."), speech)
            : errors_section(sheet, groups, speech) + appendix_section(groups, speech);
    return detail::sheet_page(speech.text(title),
                              head_html(sheet, title, speech) + "<main>\n" + body + "</main>\n", speech);
}

}  // namespace pipward::paper
