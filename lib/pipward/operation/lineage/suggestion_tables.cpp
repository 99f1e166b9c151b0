// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/suggestion_tables.h"

#include <algorithm>
#include <cmath>

#include "pipward/operation/declare/column_of.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Suggested {
    const season::WeighedCross* weighed = nullptr;
    std::string seed_parent;
    std::string pollen_parent;
    lineage::SCompatibility alleles{};
    Sentence why{};
    Sentence doubts{};
};

const std::optional<cross::CrossWay>& way_of(const Suggested& s) {
    static const std::optional<cross::CrossWay> none;
    return s.weighed->meeting ? s.weighed->meeting->way : none;
}

const std::vector<ColumnOf<Suggested>>& suggestion_columns() {
    static const std::vector<ColumnOf<Suggested>> columns{
        {{"rank", whole, "", "Rank", "1 promises most."},
         [](const Suggested& s) { return whole_cell(s.weighed->rank); }},
        {{"seed_parent", text, "", "Seed parent", "The better way round by bloom and pollen."},
         [](const Suggested& s) { return text_cell(s.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its accession."},
         [](const Suggested& s) { return text_cell(s.pollen_parent); }},
        {{"mean", number, "spreads", "Seedlings' mean",
          "By the wish, above the founders, in spreads of the scores."},
         [](const Suggested& s) { return number_cell(s.weighed->cross.mean, 2); }},
        {{"doubt", number, "spreads", "Doubt", "Standard error of that mean."},
         [](const Suggested& s) { return number_cell(s.weighed->cross.doubt, 2); }},
        {{"spread", number, "spreads", "Seedlings' spread",
          "Standard deviation between them in what they hand on."},
         [](const Suggested& s) { return number_cell(s.weighed->cross.spread, 2); }},
        {{"share_percent", number, "%", "Wanted ones", "Seedlings above the bar."},
         [](const Suggested& s) {
             return s.weighed->cross.share ? significant_cell(100 * *s.weighed->cross.share, 2) : Cell{};
         }},
        {{"seedlings", whole, "", "Seedlings to grow",
          "To see the wanted number of them with the stated confidence."},
         [](const Suggested& s) { return whole_cell(s.weighed->cross.plants); }},
        {{"kinship", number, "of 1", "Kinship", "Of the parents; their seedlings' inbreeding."},
         [](const Suggested& s) { return number_cell(s.weighed->cross.kinship, 3); }},
        {{"s_match", text, "", "S-alleles", "Whether the pollen can pass, by the alleles."},
         [](const Suggested& s) { return Cell{season::s_match_words(s.alleles.match)}; }},
        {{"way", text, "", "Way", "How the pollen would be had this spring."},
         [](const Suggested& s) {
             return way_of(s) ? text_cell(season::way_words(way_of(s)->way)) : Cell{};
         }},
        {{"chance_percent", number, "%", "Chance", "That it works this spring."},
         [](const Suggested& s) {
             return way_of(s) ? number_cell(100 * way_of(s)->chance.value, 0) : Cell{};
         }},
        {{"flowers", whole, "", "Flowers to work", "For that many seedlings."},
         [](const Suggested& s) { return way_of(s) ? whole_cell(way_of(s)->flowers) : Cell{}; }},
        {{"gather_to", day, "", "Pollen by", "Last safe day to gather it."},
         [](const Suggested& s) { return way_of(s) ? cell(way_of(s)->gather_to) : Cell{}; }},
        {{"use_from", day, "", "Work from", "First day at the flowers."},
         [](const Suggested& s) { return way_of(s) ? cell(way_of(s)->use_from) : Cell{}; }},
        {{"why", text, "", "Why", "What the numbers rest on."},
         [](const Suggested& s) { return Cell{s.why}; }},
        {{"doubts", text, "", "Doubts", "Ties, and what is not known."},
         [](const Suggested& s) { return text_cell(s.doubts); }},
    };
    return columns;
}

Sentence seedlings_words(const cross::SuggestedCross& cross, const season::SuggestionParents& parents,
                         const cross::SuggestionRules& rules) {
    if (!cross.mean) {
        return say("No trait was wished for, so the parents' blood, alleles and bloom alone decide.");
    }
    if (!cross.plants) {
        return say("Hardly a seedling surpasses {}: more than {} would have to be grown.", parents.bar_name,
                   cross::most_plants);
    }
    return say(
        "Of {} seedlings at least {} should surpass {} with {:.0f} % confidence: the mean of the parents is "
        "{:.2f}, {} has {:.2f}.",
        *cross.plants, rules.wanted, parents.bar_name, 100 * rules.confidence, *cross.mean, parents.bar_name,
        rules.bar.value_or(0));
}

Sentence shown_words(const season::WeighedCross& weighed) {
    return weighed.shown_by_one && weighed.shown_by_other
               ? say("Shown on both sides: by {} and by {}.", *weighed.shown_by_one, *weighed.shown_by_other)
               : Sentence{};
}

Sentence sentences(std::vector<Sentence> parts) {
    std::erase_if(parts, [](const Sentence& part) { return part.empty(); });
    return joined(parts, verbatim(" "));
}

Sentence why_of(const Suggested& s, const season::SuggestionParents& parents,
                const cross::SuggestionRules& rules) {
    const auto& way = way_of(s);
    return sentences({seedlings_words(s.weighed->cross, parents, rules), shown_words(*s.weighed),
                      way ? way->why : Sentence{}});
}

Sentence doubts_of(const Suggested& s, const season::WeighedCross* next) {
    std::vector<Sentence> doubts;
    const auto& cross = s.weighed->cross;
    if (!cross.kinship) {
        doubts.push_back(say("How related the parents are is not known."));
    }
    if (s.alleles.match == lineage::SMatch::unknown) {
        doubts.push_back(say("Their S-alleles are not both known."));
    }
    if (!way_of(s)) {
        doubts.push_back(say("Whether their blooms meet was not asked."));
    }
    if (next != nullptr && cross.mean && next->cross.mean &&
        *cross.mean - *next->cross.mean < std::hypot(*cross.doubt, *next->cross.doubt)) {
        doubts.push_back(
            say("Not for certain better than the next: the means differ by less than their doubt."));
    }
    return joined(doubts, verbatim(" "));
}

Suggested suggested(const season::WeighedCross& weighed, const season::SuggestionParents& parents) {
    const auto& one = parents.candidates[weighed.cross.one].name;
    const auto& other = parents.candidates[weighed.cross.other].name;
    Suggested s;
    s.weighed = &weighed;
    s.seed_parent = weighed.meeting ? weighed.meeting->seed_parent : one;
    s.pollen_parent = weighed.meeting ? weighed.meeting->pollen_parent : other;
    s.alleles = s.seed_parent == one ? weighed.cross.by_one : weighed.cross.by_other;
    return s;
}

struct LeftOutRow {
    const season::WeighedCross* weighed = nullptr;
    const season::SuggestionParents* parents = nullptr;
};

const std::vector<ColumnOf<LeftOutRow>>& left_out_columns() {
    static const std::vector<ColumnOf<LeftOutRow>> columns{
        {{"one", text, "", "One parent", "Its accession."},
         [](const LeftOutRow& r) { return text_cell(r.parents->candidates[r.weighed->cross.one].name); }},
        {{"other", text, "", "Other parent", "Its accession."},
         [](const LeftOutRow& r) { return text_cell(r.parents->candidates[r.weighed->cross.other].name); }},
        {{"mean", number, "spreads", "Seedlings' mean",
          "By the wish, above the founders, in spreads of the scores."},
         [](const LeftOutRow& r) { return number_cell(r.weighed->cross.mean, 2); }},
        {{"seedlings", whole, "", "Seedlings to grow",
          "To see the wanted number of them with the stated confidence."},
         [](const LeftOutRow& r) { return whole_cell(r.weighed->cross.plants); }},
        {{"kinship", number, "of 1", "Kinship", "Of the parents; their seedlings' inbreeding."},
         [](const LeftOutRow& r) { return number_cell(r.weighed->cross.kinship, 3); }},
        {{"reason", text, "", "Reason", "Why it is not suggested."},
         [](const LeftOutRow& r) { return Cell{r.weighed->reason}; }},
    };
    return columns;
}

}  // namespace

TableShape suggestion_shape() {
    return shape_of<Suggested>(
        {"cross_suggestion", "Suggested crosses", "Crosses to make, the most promising first.", false, {}},
        suggestion_columns());
}

Table suggestion_table(const std::vector<season::WeighedCross>& crosses,
                       const season::SuggestionParents& parents, const cross::SuggestionRules& rules) {
    std::vector<const season::WeighedCross*> chosen;
    for (const auto& cross : crosses) {
        if (cross.rank) {
            chosen.push_back(&cross);
        }
    }
    Table table{suggestion_shape(), {}};
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        auto s = suggested(*chosen[i], parents);
        s.why = why_of(s, parents, rules);
        s.doubts = doubts_of(s, i + 1 < chosen.size() ? chosen[i + 1] : nullptr);
        table.rows.push_back(row_of(s, suggestion_columns()));
    }
    return table;
}

TableShape left_out_shape() {
    return shape_of<LeftOutRow>(
        {"cross_left_out", "Crosses left out", "Every other pair of the parents, and why.", false, {}},
        left_out_columns());
}

Table left_out_table(const std::vector<season::WeighedCross>& crosses,
                     const season::SuggestionParents& parents) {
    Table table{left_out_shape(), {}};
    for (const auto& cross : crosses) {
        if (!cross.rank) {
            table.rows.push_back(row_of(LeftOutRow{&cross, &parents}, left_out_columns()));
        }
    }
    return table;
}

Sentence suggestion_summary(const std::vector<season::WeighedCross>& crosses,
                            const season::SuggestionParents& parents, const cross::SuggestionRules& rules) {
    const auto chosen =
        std::ranges::count_if(crosses, [](const auto& cross) { return cross.rank.has_value(); });
    auto summary =
        say("Of {} pairs of {} parents {} are suggested.", crosses.size(), parents.candidates.size(), chosen);
    if (rules.additive_variance > 0) {
        summary += verbatim(" ");
        summary +=
            say("Wanted seedlings surpass {}. Traits are taken as handed on independently of each other, "
                "and the heritability is a judgement.",
                parents.bar_name);
    }
    return summary;
}

}  // namespace pipward::operation::detail
