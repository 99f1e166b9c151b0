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
        {{"flowers", text, "", "Flowers pollinated", "Once or twice; unknown where none are in the book."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->flowers)); }},
        {{"fruits", text, "", "Fruits", "Harvested."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->fruits)); }},
        {{"fruit_set", text, "", "Fruit set", "Fruits per flowers, with the 95 % confidence interval."},
         [](const CrossRow& r) { return text_cell(seed::share_words(r.tally->flowers, r.tally->fruits)); }},
        {{"seeds", text, "", "Sound seeds", "Found in the fruit, else in the cross's lots."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->sound_seed)); }},
        {{"seeds_per_fruit", number, "seeds", "Seeds per fruit", "Sound ones."},
         [](const CrossRow& r) { return number_cell(seed::seeds_per_fruit(*r.tally), 1); }},
        {{"stratified", text, "", "In stratification", "Number of seeds stratified."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->in_stratification)); }},
        {{"germinated", text, "", "Germinated", "By the last counts."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->germinated)); }},
        {{"germination", text, "", "Germination",
          "Germination of the stratified seeds, with its 95 % confidence interval."},
         [](const CrossRow& r) {
             return text_cell(seed::share_words(r.tally->in_stratification, r.tally->germinated));
         }},
        {{"planted", text, "", "Planted", "Seedlings with a numbered position."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->planted)); }},
        {{"standing", text, "", "Standing", "Number of them not removed."},
         [](const CrossRow& r) { return text_cell(seed::count_words(r.tally->alive)); }},
        {{"survival", text, "", "Survival", "Standing of planted, with the 95 % confidence interval."},
         [](const CrossRow& r) { return text_cell(seed::share_words(r.tally->planted, r.tally->alive)); }},
        {{"failed", text, "", "Failed at", "The step at which it is known to have failed."},
         [](const CrossRow& r) {
             const auto step = seed::failed_at(*r.tally);
             return step ? Cell{seed::failed_words(*step)} : Cell{};
         }},
        {{"next", text, "", "Next", "What is to be done next."},
         [](const CrossRow& r) { return text_cell(seed::work_words(r.next.work)); }},
        {{"next_from", day, "", "From", "First day."}, [](const CrossRow& r) { return cell(r.next.from); }},
        {{"next_to", day, "", "To", "After that it is late."},
         [](const CrossRow& r) { return cell(r.next.to); }},
        {{"late", yes_no, "", "Late", "Whether that day is past."},
         [](const CrossRow& r) {
             return r.next.work == seed::SeedWork::nothing ? Cell{} : Cell{r.next.late};
         }},
        {{"why", text, "", "Why", "Basis of the calculation."},
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
        {{"seeds", whole, "", "Seeds", "Seeds of the lot when it was made."},
         [](const LotRow& r) { return whole_cell(r.course->lot->seeds); }},
        {{"left", whole, "", "Left", "Seeds that are still in the lot."},
         [](const LotRow& r) { return whole_cell(seed::on_hand(*r.course)); }},
        {{"to_sow", whole, "", "To sow or give away", "Number of them not germinated yet."},
         [](const LotRow& r) { return whole_cell(seed::not_germinated(*r.course)); }},
        {{"germinated", whole, "", "Germinated", "By the last count; unknown before the first."},
         [](const LotRow& r) { return whole_cell(r.course->germinated); }},
        {{"washed_on", day, "", "Washed on", "Date of washing."},
         [](const LotRow& r) { return cell(r.course->lot->washed_on); }},
        {{"stratified_from", day, "", "Stratified from", "First day of stratification."},
         [](const LotRow& r) { return cell(r.course->lot->stratified_from); }},
        {{"age_days", whole, "d", "Age", "Since washing, else since stratification began."},
         [](const LotRow& r) {
             const auto day = seed::there_since(*r.course);
             return day ? whole_cell(r.as_of - *day) : Cell{};
         }},
        {{"expected_germination", number, "0 to 1", "Expected germination",
          "Expected germination of the seed left, by handbook figures and the orchard's own counts; dry seed "
          "keeps about two years cold and sealed. Unknown once germination was counted: what is left then "
          "has not germinated so far."},
         [](const LotRow& r) { return r.course->germinated ? Cell{} : number_cell(r.expected_share, 2); }},
    };
    return columns;
}

const std::vector<ColumnOf<FigureRow>>& figure_columns() {
    static const std::vector<ColumnOf<FigureRow>> columns{
        {{"figure", text, "", "Figure", "The figure."}, [](const FigureRow& r) { return Cell{r.name}; }},
        {{"unit", text, "", "Unit", "Unit of the figures."},
         [](const FigureRow& r) { return text_cell(r.unit); }},
        {{"handbook", number, "as stated", "Handbook",
          "Handbook figure, used as long as nothing was counted."},
         [](const FigureRow& r) { return number_cell(r.scale * r.figure->handbook, 1); }},
        {{"own", number, "as stated", "Own", "The orchard's own figure; unknown where nothing was counted."},
         [](const FigureRow& r) {
             return r.figure->counted > 0 ? number_cell(r.scale * r.figure->yours, 1) : Cell{};
         }},
        {{"counted", whole, "", "Counted", "Flowers, crosses, fruits or seeds that it counted."},
         [](const FigureRow& r) { return whole_cell(r.figure->counted); }},
        {{"used", number, "as stated", "Used", "Both together: used in the season plan."},
         [](const FigureRow& r) { return number_cell(r.scale * r.figure->used, 1); }},
    };
    return columns;
}

}  // namespace

const TableOf<CrossRow> seed_status_table{
    "seed_status", "Status of crosses",
    "Status of every cross, step by step; what was not counted is unknown.", cross_columns, [] {
        return TableView{
            .first = {"cross", "seed_parent", "pollen_parent", "next", "next_to", "seeds", "germinated",
                      "planted", "flowers", "fruits", "standing", "failed", "next_from", "late"},
            .below = {"why"}};
    }};

const TableOf<LotRow> seed_on_hand_table{
    "seed_stock", "Seed in stock", "Every seed lot that has seed left, the oldest first.", lot_columns, [] {
        return TableView{.first = {"lot", "cross", "left", "to_sow", "expected_germination",
                                   "stratified_from", "age_days", "seeds"}};
    }};

const TableOf<FigureRow> seed_figures_table{
    "seed_figures", "Own and handbook figures", "The handbook's figures, this orchard's own and those used.",
    figure_columns, [] {
        return TableView{.first = {"figure", "handbook", "own", "used", "unit", "counted"}, .behind = true};
    }};

}  // namespace pipward::operation::detail
