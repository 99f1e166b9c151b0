// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/suggestion_tables.h"

#include "pipward/operation/declare/column_of.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

const std::vector<ColumnOf<season::Suggestion>>& suggestion_columns() {
    static const std::vector<ColumnOf<season::Suggestion>> columns{
        {{"rank", whole, "", "Rank", "1 promises most."},
         [](const season::Suggestion& s) { return whole_cell(s.weighed->rank); }},
        {{"seed_parent", text, "", "Seed parent", "The better way round by bloom and pollen."},
         [](const season::Suggestion& s) { return text_cell(s.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its accession."},
         [](const season::Suggestion& s) { return text_cell(s.pollen_parent); }},
        {{"mean", number, "spreads", "Seedlings' mean",
          "By the wish, above the founders, in spreads of the scores."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.mean, 2); }},
        {{"doubt", number, "spreads", "Doubt", "Standard error of that mean."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.doubt, 2); }},
        {{"spread", number, "spreads", "Seedlings' spread",
          "Standard deviation between them in what they hand on."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.spread, 2); }},
        {{"share_percent", number, "%", "Wanted ones", "Seedlings above the bar."},
         [](const season::Suggestion& s) {
             return s.weighed->cross.share ? significant_cell(100 * *s.weighed->cross.share, 2) : Cell{};
         }},
        {{"seedlings", whole, "", "Seedlings to grow",
          "To see the wanted number of them with the stated confidence."},
         [](const season::Suggestion& s) { return whole_cell(s.weighed->cross.plants); }},
        {{"kinship", number, "of 1", "Kinship", "Of the parents; their seedlings' inbreeding."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.kinship, 3); }},
        {{"s_match", text, "", "S-alleles", "Whether the pollen can pass, by the alleles."},
         [](const season::Suggestion& s) { return Cell{season::s_match_words(s.alleles.match)}; }},
        {{"way", text, "", "Way", "How the pollen would be had this spring."},
         [](const season::Suggestion& s) {
             return s.way() ? text_cell(season::way_words(s.way()->way)) : Cell{};
         }},
        {{"chance_percent", number, "%", "Chance", "That it works this spring."},
         [](const season::Suggestion& s) {
             return s.way() ? number_cell(100 * s.way()->chance.value, 0) : Cell{};
         }},
        {{"flowers", whole, "", "Flowers to work", "For that many seedlings."},
         [](const season::Suggestion& s) { return s.way() ? whole_cell(s.way()->flowers) : Cell{}; }},
        {{"gather_to", day, "", "Pollen by", "Last safe day to gather it."},
         [](const season::Suggestion& s) { return s.way() ? cell(s.way()->gather_to) : Cell{}; }},
        {{"use_from", day, "", "Work from", "First day at the flowers."},
         [](const season::Suggestion& s) { return s.way() ? cell(s.way()->use_from) : Cell{}; }},
        {{"why", text, "", "Why", "What the numbers rest on."},
         [](const season::Suggestion& s) { return Cell{s.why}; }},
        {{"doubts", text, "", "Doubts", "Ties, and what is not known."},
         [](const season::Suggestion& s) { return text_cell(s.doubts); }},
    };
    return columns;
}

constexpr TableOf<season::Suggestion> suggestion_rows{"cross_suggestion", "Suggested crosses",
                                                      "Crosses to make, the most promising first.",
                                                      suggestion_columns};

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

constexpr TableOf<LeftOutRow> left_out_rows{"cross_left_out", "Crosses left out",
                                            "Every other pair of the parents, and why.", left_out_columns};

}  // namespace

TableShape suggestion_shape() {
    return suggestion_rows.shape();
}

Table suggestion_table(const std::vector<season::WeighedCross>& crosses,
                       const season::SuggestionParents& parents, const cross::SuggestionRules& rules) {
    return suggestion_rows.of(season::suggested_crosses(crosses, parents, rules));
}

TableShape left_out_shape() {
    return left_out_rows.shape();
}

Table left_out_table(const std::vector<season::WeighedCross>& crosses,
                     const season::SuggestionParents& parents) {
    std::vector<LeftOutRow> rows;
    for (const auto& cross : crosses) {
        if (!cross.rank) {
            rows.push_back({&cross, &parents});
        }
    }
    return left_out_rows.of(rows);
}

}  // namespace pipward::operation::detail
