// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/suggestion_tables.h"

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/s_match_codes.h"
#include "pipward/season/words.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

const std::vector<ColumnOf<season::Suggestion>>& suggestion_columns() {
    static const std::vector<ColumnOf<season::Suggestion>> columns{
        {{"rank", whole, "", "Rank", "1 for the most promising."},
         [](const season::Suggestion& s) { return whole_cell(s.weighed->rank); }},
        {{"seed_parent", text, "", "Seed parent", "The better way round by bloom and pollen."},
         [](const season::Suggestion& s) { return text_cell(s.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its accession."},
         [](const season::Suggestion& s) { return text_cell(s.pollen_parent); }},
        {{"mean", number, "SD", "Seedlings' mean",
          "By the selection index, above the founders, in SD of the scores."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.mean, 2); }},
        {{"standard_error", number, "SD", "Standard error", "Standard error of that mean."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.doubt, 2); }},
        {{"sd", number, "SD", "SD of the seedlings",
          "Standard deviation of breeding values among the seedlings."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.spread, 2); }},
        {{"share_above", number, "0 to 1", "Wanted ones", "Share of seedlings above the threshold."},
         [](const season::Suggestion& s) {
             return s.weighed->cross.share ? number_cell(*s.weighed->cross.share, 4) : Cell{};
         }},
        {{"seedlings", whole, "", "Seedlings to grow",
          "To see the wanted number of them with the stated confidence."},
         [](const season::Suggestion& s) { return whole_cell(s.weighed->cross.plants); }},
        {{"kinship", number, "0 to 1", "Kinship", "Of the parents; their seedlings' inbreeding."},
         [](const season::Suggestion& s) { return number_cell(s.weighed->cross.kinship, 3); }},
        {{"s_match", text, "", "S-alleles", "Compatibility by the alleles.", s_match_codes()},
         [](const season::Suggestion& s) { return text_cell(lineage::to_text(s.alleles.match)); }},
        {{"way", text, "", "Way", "How the pollen can be obtained this spring."},
         [](const season::Suggestion& s) {
             return s.way() ? text_cell(season::way_words(s.way()->way)) : Cell{};
         }},
        {{"probability", number, "0 to 1", "Probability", "Probability that it succeeds this spring."},
         [](const season::Suggestion& s) {
             return s.way() ? number_cell(s.way()->chance.value, 2) : Cell{};
         }},
        {{"flowers", whole, "", "Flowers to pollinate", "For that many seedlings."},
         [](const season::Suggestion& s) { return s.way() ? whole_cell(s.way()->flowers) : Cell{}; }},
        {{"collect_to", day, "", "Pollen by", "Last safe day to collect it."},
         [](const season::Suggestion& s) { return s.way() ? cell(s.way()->collect_to) : Cell{}; }},
        {{"use_from", day, "", "Pollinate from", "First day at the flowers."},
         [](const season::Suggestion& s) { return s.way() ? cell(s.way()->use_from) : Cell{}; }},
        {{"why", text, "", "Why", "What the numbers rest on."},
         [](const season::Suggestion& s) { return Cell{s.why}; }},
        {{"concerns", text, "", "Concerns", "Ties, and unknowns."},
         [](const season::Suggestion& s) { return text_cell(s.doubts); }},
    };
    return columns;
}

constexpr TableOf<season::Suggestion> suggestion_rows{
    "cross_suggestion", "Suggested crosses", "Crosses to make, the most promising first.", suggestion_columns,
    [] {
        return TableView{
            .first = {"rank", "seed_parent", "pollen_parent", "share_above", "seedlings", "probability",
                      "kinship", "s_match", "way", "collect_to", "use_from", "flowers", "mean", "sd"},
            .below = {"why", "concerns"}};
    }};

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
        {{"mean", number, "SD", "Seedlings' mean",
          "By the selection index, above the founders, in SD of the scores."},
         [](const LeftOutRow& r) { return number_cell(r.weighed->cross.mean, 2); }},
        {{"seedlings", whole, "", "Seedlings to grow",
          "To see the wanted number of them with the stated confidence."},
         [](const LeftOutRow& r) { return whole_cell(r.weighed->cross.plants); }},
        {{"kinship", number, "0 to 1", "Kinship", "Of the parents; their seedlings' inbreeding."},
         [](const LeftOutRow& r) { return number_cell(r.weighed->cross.kinship, 3); }},
        {{"reason", text, "", "Reason", "Why it is not suggested."},
         [](const LeftOutRow& r) { return Cell{r.weighed->reason}; }},
    };
    return columns;
}

constexpr TableOf<LeftOutRow> left_out_rows{
    "cross_left_out", "Pairs not suggested", "Every other pair of the parents, and why.", left_out_columns,
    [] {
        return TableView{.first = {"one", "other", "mean", "kinship", "seedlings"}, .below = {"reason"}};
    }};

}  // namespace

ResultShape suggestion_shape() {
    return suggestion_rows.shape();
}

Table suggestion_table(const std::vector<season::WeighedCross>& crosses,
                       const season::SuggestionParents& parents, const cross::SuggestionRules& rules) {
    return suggestion_rows.of(season::suggested_crosses(crosses, parents, rules));
}

ResultShape left_out_shape() {
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
