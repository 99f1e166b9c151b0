// SPDX-License-Identifier: MIT
#include "pipward/operation/seed/detail/seed_status_tables.h"

#include "pipward/operation/declare/column_of.h"
#include "pipward/seed/status_words.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

const std::vector<ColumnOf<CrossRow>>& cross_columns() {
    static const std::vector<ColumnOf<CrossRow>> columns{
        {{"cross", text, "", "Cross", "Its code."},
         [](const CrossRow& r) { return text_cell(r.tally->goal->code); }},
        {{"season", whole, "", "Season", "Of the crossing."},
         [](const CrossRow& r) { return whole_cell(r.tally->goal->season.year); }},
        {{"seed_parent", text, "", "Seed parent", "Its accession."},
         [](const CrossRow& r) { return text_cell(r.tally->goal->seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its accession or blend."},
         [](const CrossRow& r) { return text_cell(r.tally->goal->pollen_parent); }},
        {{"flowers", text, "", "Flowers worked", "Once or twice; unknown where none are in the book."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->flowers)); }},
        {{"fruits", text, "", "Fruits", "Picked."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->fruits)); }},
        {{"set", text, "", "Set", "Fruits of flowers, with the 95 % interval."},
         [](const CrossRow& r) { return text_cell(seed::share_words(r.tally->flowers, r.tally->fruits)); }},
        {{"seeds", text, "", "Sound seeds", "Found in the fruit, else in the cross's lots."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->sound_seed)); }},
        {{"seeds_per_fruit", number, "seeds", "Seeds a fruit", "Sound ones."},
         [](const CrossRow& r) { return number_cell(seed::seeds_per_fruit(*r.tally), 1); }},
        {{"in_cold", text, "", "In the cold", "Seeds that lie or lay there."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->in_cold)); }},
        {{"sprouted", text, "", "Sprouted", "By the last counts."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->sprouted)); }},
        {{"sprouting", text, "", "Sprouting", "Sprouted of the seeds in the cold, with the 95 % interval."},
         [](const CrossRow& r) { return text_cell(seed::share_words(r.tally->in_cold, r.tally->sprouted)); }},
        {{"planted", text, "", "Planted", "Seedlings with a numbered place."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->planted)); }},
        {{"alive", text, "", "Standing", "Of them not removed."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->alive)); }},
        {{"survival", text, "", "Survival", "Standing of planted, with the 95 % interval."},
         [](const CrossRow& r) { return text_cell(seed::share_words(r.tally->planted, r.tally->alive)); }},
        {{"failed", text, "", "Came to nothing", "The step at which it is known to have failed."},
         [](const CrossRow& r) {
             const auto step = seed::failed_at(*r.tally);
             return step ? Cell{seed::failed_words(*step)} : Cell{};
         }},
        {{"next", text, "", "Next", "What is to be done next."},
         [](const CrossRow& r) { return text_cell(seed::work_words(r.next.work)); }},
        {{"next_from", day, "", "From", "First day for it."},
         [](const CrossRow& r) { return cell(r.next.from); }},
        {{"next_to", day, "", "To", "After that it is late."},
         [](const CrossRow& r) { return cell(r.next.to); }},
        {{"late", yes_no, "", "Late", "Whether that day is past."},
         [](const CrossRow& r) {
             return r.next.work == seed::SeedWork::nothing ? Cell{} : Cell{r.next.late};
         }},
        {{"why", text, "", "Why", "What that is reckoned from."},
         [](const CrossRow& r) { return r.next.why.empty() ? Cell{} : Cell{r.next.why}; }},
    };
    return columns;
}

const std::vector<ColumnOf<LotRow>>& lot_columns() {
    static const std::vector<ColumnOf<LotRow>> columns{
        {{"lot", text, "", "Seed lot", "Its code."},
         [](const LotRow& r) { return text_cell(r.course->lot->code); }},
        {{"cross", text, "", "Cross", "Code of the cross."},
         [](const LotRow& r) { return text_cell(r.course->lot->cross); }},
        {{"seeds", whole, "", "Seeds", "When it was made."},
         [](const LotRow& r) { return whole_cell(r.course->lot->seeds); }},
        {{"left", whole, "", "Left", "Seeds that have not left it."},
         [](const LotRow& r) { return whole_cell(seed::on_hand(*r.course)); }},
        {{"to_give", whole, "", "To give or sow", "Of them not sprouted yet."},
         [](const LotRow& r) { return whole_cell(seed::not_sprouted(*r.course)); }},
        {{"sprouted", whole, "", "Sprouted", "By the last count; unknown before the first."},
         [](const LotRow& r) { return whole_cell(r.course->sprouted); }},
        {{"washed_on", day, "", "Washed on", "Day of washing."},
         [](const LotRow& r) { return cell(r.course->lot->washed_on); }},
        {{"cold_from", day, "", "Cold from", "First day in the cold."},
         [](const LotRow& r) { return cell(r.course->lot->cold_from); }},
        {{"age_days", whole, "d", "Age", "Since washing, else since it was put in the cold."},
         [](const LotRow& r) {
             const auto day = seed::there_since(*r.course);
             return day ? whole_cell(r.as_of - *day) : Cell{};
         }},
        {{"expected_percent", number, "%", "Should sprout",
          "Of the seed left, by the handbook and this orchard's own counts; dry seed keeps about two years "
          "cold and sealed."},
         [](const LotRow& r) { return number_cell(100 * r.expected_share, 0); }},
    };
    return columns;
}

const std::vector<ColumnOf<FigureRow>>& figure_columns() {
    static const std::vector<ColumnOf<FigureRow>> columns{
        {{"figure", text, "", "Figure", "What it is of."}, [](const FigureRow& r) { return Cell{r.name}; }},
        {{"unit", text, "", "Unit", "That the figures are told in."},
         [](const FigureRow& r) { return text_cell(r.unit); }},
        {{"handbook", number, "as told", "Handbook", "Where one begins."},
         [](const FigureRow& r) { return number_cell(r.scale * r.figure->handbook, 1); }},
        {{"yours", number, "as told", "Yours", "What this orchard counted; unknown for nothing counted."},
         [](const FigureRow& r) {
             return r.figure->counted > 0 ? number_cell(r.scale * r.figure->yours, 1) : Cell{};
         }},
        {{"counted", whole, "", "Counted", "Flowers, fruits or seeds that it counted."},
         [](const FigureRow& r) { return whole_cell(r.figure->counted); }},
        {{"used", number, "as told", "Used", "Both together: what the season plan reckons with."},
         [](const FigureRow& r) { return number_cell(r.scale * r.figure->used, 1); }},
    };
    return columns;
}

}  // namespace

const TableOf<CrossRow> seed_status_table{
    "seed_status", "Crosses at a glance",
    "What became of every cross, step by step; a count that nobody made is unknown.", cross_columns};

const TableOf<LotRow> seed_on_hand_table{"seed_on_hand", "Seed on hand",
                                         "Every seed lot that has seed left, the oldest first.", lot_columns};

const TableOf<FigureRow> seed_figures_table{"seed_figures", "Figures learned",
                                            "The handbook's figures, this orchard's own and those used.",
                                            figure_columns};

}  // namespace pipward::operation::detail
