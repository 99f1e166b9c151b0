// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/detail/task_html.h"
#include "pipward/paper/text.h"
#include "pipward/season/words.h"

namespace pipward::paper::detail {
namespace {

// What is done about one cross (and, of a blend, one donor), and what else could be.
struct Choice {
    std::vector<const cross::CrossWay*> chosen;  // never empty: lots, and what makes up for them
    std::vector<const cross::CrossWay*> others;
};

bool same_question(const cross::CrossWay& a, const cross::CrossWay& b) {
    return a.cross == b.cross && a.season == b.season && a.seed_parent == b.seed_parent && a.donor == b.donor;
}

void add_way(Choice& choice, const cross::CrossWay& way) {
    if (!way.best && !way.insurance) {
        choice.others.push_back(&way);
    } else if (choice.chosen.front()->best || way.insurance) {
        choice.chosen.push_back(&way);
    } else {
        choice.others.insert(choice.others.begin(), choice.chosen.front());
        choice.chosen = {&way};
    }
}

std::vector<Choice> choices_of(const cross::SeasonPlan& plan) {
    std::vector<Choice> choices;
    for (const auto& way : plan.ways) {
        const auto at = std::ranges::find_if(
            choices, [&](const Choice& choice) { return same_question(*choice.chosen.front(), way); });
        if (at == choices.end()) {
            choices.push_back({{&way}, {}});
        } else {
            add_way(*at, way);
        }
    }
    return choices;
}

std::string parents_html(const cross::CrossWay& way, const Speech& speech) {
    auto html = element("strong", "code", name_html(way.cross)) +
                element("span", "pair", name_html(way.seed_parent) + " × " + name_html(way.pollen_parent));
    if (way.donor != way.pollen_parent) {
        html += element("span", "pair", speech.around(say("donor {}", name_html(way.donor))));
    }
    return html;
}

std::string pips_html(Share chance) {
    std::string pips;
    for (int i = 0; i < 10; ++i) {
        pips += i < season::chance_tenths(chance) ? "●" : "○";
    }
    return "<span class=\"pips\" aria-hidden=\"true\">" + pips + "</span>";
}

// What is impossible is said once.
std::string verdict_html(const cross::CrossWay& way, const Speech& speech) {
    const auto verdict = season::verdict_words(way.verdict);
    return verdict == season::chance_words(way.chance) ? std::string{} : ", " + speech.around(verdict);
}

std::string chance_html(const cross::CrossWay& way, const Speech& speech) {
    return pips_html(way.chance) + " " +
           element("strong", "", speech.around(season::chance_words(way.chance))) + verdict_html(way, speech);
}

std::string best_html(const cross::CrossWay& way, const Speech& speech) {
    const auto second =
        way.insurance ? element("span", "tag soon", speech.plain(say("second way"))) : std::string{};
    return element("span", "way", speech.around(season::way_words(way.way))) + chance_html(way, speech) +
           second;
}

std::string span_to_last(Day from, Day to, bool by_median, const Speech& speech) {
    const auto last = last_day_html(day_html(to, speech), by_median, speech);
    return from == to ? last : span_html(day_html(from, speech), last);
}

std::string collect_html(const cross::CrossWay& way, const Speech& speech) {
    std::string html;
    if (way.collect_from && way.collect_to) {
        html += span_to_last(*way.collect_from, *way.collect_to, way.collect_by_median, speech);
    }
    if (way.lot) {
        html += element("span", "pair", speech.around(say("lot {}", name_html(*way.lot))));
    }
    if (way.store) {
        html += element("span", "pair", speech.around(season::in_store_words(*way.store)));
    }
    return html;
}

std::string use_html(const cross::CrossWay& way, const Speech& speech) {
    return way.use_from && way.use_to ? span_to_last(*way.use_from, *way.use_to, way.use_by_median, speech)
                                      : "";
}

Sentence donor_flowers_words(int number) {
    return number == 1 ? say("1 donor flower") : say("{} donor flowers", number);
}

std::string amounts_html(const cross::CrossWay& way, const Speech& speech) {
    std::string html;
    if (way.flowers > 0) {
        html += element("span", "pair", speech.around(season::flowers_words(way.flowers)));
    }
    if (way.donor_flowers > 0) {
        html += element("span", "pair", speech.around(donor_flowers_words(way.donor_flowers)));
    }
    if (const auto mass = season::milligram_words(way.pollen); !mass.empty()) {
        html += element("span", "pair", speech.around(say("{} pollen", mass)));
    }
    return html;
}

std::string match_html(const cross::CrossWay& way, const Speech& speech) {
    return speech.around(season::s_match_words(way.s_match)) +
           element("span", "pair", speech.around(season::kinship_words(way.kinship)));
}

std::string other_ways_html(const Choice& choice, const Speech& speech) {
    std::string items;
    for (const auto* way : choice.others) {
        items += fmt::format("<li>{}: {}{}</li>", speech.around(season::way_words(way->way)),
                             speech.around(season::chance_words(way->chance)), verdict_html(*way, speech));
    }
    return items.empty() ? ""
                         : "<div class=\"others\">" + speech.around(say("Other ways:")) + "<ul>" + items +
                               "</ul></div>";
}

SheetRow row_of(const cross::CrossWay& way, const std::string& below, const Speech& speech) {
    const auto why = way.why.empty() ? "" : element("p", "", speech.plain(way.why));
    return {{parents_html(way, speech), best_html(way, speech), collect_html(way, speech),
             use_html(way, speech), amounts_html(way, speech), match_html(way, speech)},
            why + below};
}

// One row a way that is followed; the other ways stand below the last.
void add_rows(std::vector<SheetRow>& rows, const Choice& choice, const Speech& speech) {
    for (const auto* way : choice.chosen) {
        const bool last = way == choice.chosen.back();
        rows.push_back(row_of(*way, last ? other_ways_html(choice, speech) : std::string{}, speech));
    }
}

std::string crosses_table(const std::vector<Choice>& choices, const Sentence& caption, const Speech& speech) {
    static const std::vector<SheetColumn> columns{{say("Seed × pollen parent"), 21, true},
                                                  {say("Best way and probability"), 22},
                                                  {say("Collect pollen"), 15},
                                                  {say("Pollinate"), 15},
                                                  {say("How much"), 14},
                                                  {say("S-alleles"), 13}};
    std::vector<SheetRow> rows;
    for (const auto& choice : choices) {
        add_rows(rows, choice, speech);
    }
    return sheet_table(caption, columns, rows, speech);
}

std::string none_wanted_html(Season season, const Speech& speech) {
    return paragraph_html(
        say("No cross is wanted in {}. Enter what you want as rows of cross_goal, then plan again.",
            season.year),
        speech);
}

std::string next_season_html(const std::vector<Choice>& choices, Season season, const Speech& speech) {
    if (choices.empty()) {
        return {};
    }
    return element("h3", "", speech.plain(say("Wanted in {}", season.year))) + "\n" +
           paragraph_html(say("Shown for the pollen that must be collected this spring. Dates of {} are "
                              "approximate, from this spring's bloom order.",
                              season.year),
                          speech) +
           crosses_table(choices, say("Crosses wanted in {}", season.year), speech);
}

}  // namespace

std::string crosses_section(const cross::SeasonPlan& plan, const Speech& speech) {
    auto now = choices_of(plan);
    const auto later = std::stable_partition(now.begin(), now.end(), [&](const Choice& choice) {
        return choice.chosen.front()->season <= plan.season;
    });
    const std::vector<Choice> next(later, now.end());
    now.erase(later, now.end());
    const auto this_season =
        now.empty()
            ? none_wanted_html(plan.season, speech)
            : paragraph_html(say("Seed parent first, then the pollen parent. The last safe day is in bold."),
                             speech) +
                  crosses_table(now, say("Wanted crosses and the best way to each"), speech);
    return section_html("crosses", say("Crosses"),
                        this_season + next_season_html(next, Season{plan.season.year + 1}, speech), speech);
}

}  // namespace pipward::paper::detail
