// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "pipward/paper/html.h"
#include "pipward/paper/season_words.h"
#include "pipward/paper/sheet_sections.h"
#include "pipward/paper/text.h"

namespace pipward {
namespace {

// What is done about one cross (and, of a blend, one donor), and what else could be.
struct Choice {
    const CrossWay* chosen = nullptr;
    std::vector<const CrossWay*> others;
};

bool same_question(const CrossWay& a, const CrossWay& b) {
    return a.cross == b.cross && a.season == b.season && a.seed_parent == b.seed_parent && a.donor == b.donor;
}

void add_way(Choice& choice, const CrossWay& way) {
    if (way.best && !choice.chosen->best) {
        choice.others.insert(choice.others.begin(), choice.chosen);
        choice.chosen = &way;
        return;
    }
    choice.others.push_back(&way);
}

std::vector<Choice> choices_of(const SeasonPlan& plan) {
    std::vector<Choice> choices;
    for (const auto& way : plan.ways) {
        const auto at = std::ranges::find_if(
            choices, [&](const Choice& choice) { return same_question(*choice.chosen, way); });
        if (at == choices.end()) {
            choices.push_back({&way, {}});
        } else {
            add_way(*at, way);
        }
    }
    return choices;
}

std::string parents_html(const CrossWay& way) {
    auto html = element("strong", "code", name_html(way.cross)) +
                element("span", "pair", name_html(way.seed_parent) + " × " + name_html(way.pollen_parent));
    if (way.donor != way.pollen_parent) {
        html += element("span", "pair", "donor " + name_html(way.donor));
    }
    return html;
}

std::string pips_html(Share chance) {
    std::string pips;
    for (int i = 0; i < 10; ++i) {
        pips += i < chance_tenths(chance) ? "●" : "○";
    }
    return "<span class=\"pips\" aria-hidden=\"true\">" + pips + "</span>";
}

std::string chance_html(const CrossWay& way) {
    return pips_html(way.chance) + " " + element("strong", "", chance_words(way.chance)) + ", " +
           std::string(verdict_words(way.verdict));
}

std::string best_html(const CrossWay& way) {
    return element("span", "way", way_words(way.way)) + chance_html(way);
}

std::string last_day_html(Day from, Day to) {
    const auto last = element("strong", "", iso_day_html(to));
    return from == to ? last : span_html(iso_day_html(from), last);
}

std::string gather_html(const CrossWay& way) {
    std::string html;
    if (way.gather_from && way.gather_to) {
        html += last_day_html(*way.gather_from, *way.gather_to);
    }
    if (way.lot) {
        html += element("span", "pair", "lot " + name_html(*way.lot));
    }
    if (way.store) {
        html += element("span", "pair", "in " + std::string(store_words(*way.store)));
    }
    return html;
}

std::string use_html(const CrossWay& way) {
    return way.use_from && way.use_to ? last_day_html(*way.use_from, *way.use_to) : "";
}

std::string amounts_html(const CrossWay& way) {
    std::string html;
    if (way.flowers > 0) {
        html += element("span", "pair", counted(way.flowers, "flower", "flowers"));
    }
    if (way.donor_flowers > 0) {
        html += element("span", "pair", counted(way.donor_flowers, "donor flower", "donor flowers"));
    }
    if (const auto mass = milligram_words(way.pollen); !mass.empty()) {
        html += element("span", "pair", mass + " pollen");
    }
    return html;
}

std::string match_html(const CrossWay& way) {
    auto html = std::string(s_match_words(way.s_match));
    return html + element("span", "pair", kinship_words(way.kinship));
}

std::string other_ways_html(const Choice& choice) {
    std::string items;
    for (const auto* way : choice.others) {
        items += fmt::format("<li>{}: {}, {}</li>", way_words(way->way), chance_words(way->chance),
                             verdict_words(way->verdict));
    }
    return items.empty() ? "" : "<div class=\"others\">Other ways:<ul>" + items + "</ul></div>";
}

SheetRow row_of(const Choice& choice) {
    const auto& way = *choice.chosen;
    const auto why = way.why.empty() ? "" : element("p", "", escape_markup(way.why));
    return {{parents_html(way), best_html(way), gather_html(way), use_html(way), amounts_html(way),
             match_html(way)},
            why + other_ways_html(choice)};
}

std::string crosses_table(const std::vector<Choice>& choices, std::string_view caption) {
    static const std::vector<SheetColumn> columns{{"Seed × pollen parent", 21, true},
                                                  {"Best way and chance", 22},
                                                  {"Gather pollen", 15},
                                                  {"Work the flowers", 15},
                                                  {"How much", 14},
                                                  {"S-alleles", 13}};
    std::vector<SheetRow> rows;
    for (const auto& choice : choices) {
        rows.push_back(row_of(choice));
    }
    return sheet_table(caption, columns, rows);
}

std::string none_wanted_html(Season season) {
    return fmt::format(
        "<p>No cross is wanted in {}. Enter what you want as rows of cross_goal, then plan again.</p>\n",
        season.year);
}

std::string next_season_html(const std::vector<Choice>& choices, Season season) {
    if (choices.empty()) {
        return {};
    }
    return fmt::format(
               "<h3>Wanted in {}</h3>\n<p>Shown for the pollen that must be gathered this spring. Days of {} "
               "are a guide "
               "only, by this spring's order of bloom.</p>\n",
               season.year, season.year) +
           crosses_table(choices, fmt::format("Crosses wanted in {}", season.year));
}

}  // namespace

std::string crosses_section(const SeasonPlan& plan) {
    auto now = choices_of(plan);
    const auto later = std::stable_partition(
        now.begin(), now.end(), [&](const Choice& choice) { return choice.chosen->season <= plan.season; });
    const std::vector<Choice> next(later, now.end());
    now.erase(later, now.end());
    const auto this_season =
        now.empty() ? none_wanted_html(plan.season)
                    : "<p>Seed parent first, then the pollen parent. The last safe day is in bold.</p>\n" +
                          crosses_table(now, "Wanted crosses and the best way to each");
    return section_html("crosses", "Crosses",
                        this_season + next_season_html(next, Season{plan.season.year + 1}));
}

}  // namespace pipward
