// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/s_match_codes.h"
#include "pipward/operation/place/detail/row_tables.h"
#include "pipward/operation/season/detail/bloom_skill_tables.h"
#include "pipward/operation/season/result_tables.h"
#include "pipward/operation/seed/detail/fruit_tables.h"
#include "pipward/record/words.h"
#include "pipward/season/words.h"

namespace pipward::operation {
namespace {

using enum CellType;

/// One result with the plan it stands in: every row tells the day it was calculated for.
template <class Result>
struct Planned {
    const cross::SeasonPlan* plan;
    const Result* of;

    const Result* operator->() const { return of; }
};

std::vector<CodeWord> stores_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& entry : words(Store{})) {
        codes.push_back({std::string(entry.word), std::string(season::store_words(entry.value))});
    }
    return codes;
}

Column as_of_column() {
    return {"as_of", day, "", "As of", "Reference date of the plan."};
}

const std::vector<ColumnOf<Planned<cross::CrossWay>>>& cross_outlook_columns() {
    using Way = const Planned<cross::CrossWay>&;
    static const std::vector<ColumnOf<Planned<cross::CrossWay>>> columns{
        {{"cross", text, "", "Cross", "Code of the cross goal."}, [](Way w) { return text_cell(w->cross); }},
        {{"season", whole, "year", "Season", "The bloom season of the goal."},
         [](Way w) { return whole_cell(w->season.year); }},
        {{"seed_parent", text, "", "Seed parent", "The accession whose flowers are pollinated."},
         [](Way w) { return text_cell(w->seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "As in the goal: an accession or a blend."},
         [](Way w) { return text_cell(w->pollen_parent); }},
        {{"donor", text, "", "Donor",
          "The accession whose pollen it is: the pollen parent, or a member of the blend."},
         [](Way w) { return text_cell(w->donor); }},
        {{"way", text, "", "Way", "How the pollen is obtained."},
         [](Way w) { return text_cell(cross::to_text(w->way)); }},
        {{"best", yes_no, "", "Best way", "Whether this is the best way, the one that the plan follows."},
         [](Way w) { return Cell{w->best}; }},
        {{"second", yes_no, "", "Second way",
          "Whether this is followed besides the best way, in case that fails."},
         [](Way w) { return Cell{w->insurance}; }},
        {{"probability", number, "0 to 1", "Probability",
          "Probability that viable, compatible pollen is available while the stigmas are receptive."},
         [](Way w) { return number_cell(w->chance.value, 3); }},
        {{"collect_from", day, "", "Collect from",
          "First day to collect flowers at balloon stage, or to cut the branch."},
         [](Way w) { return cell(w->collect_from); }},
        {{"collect_to", day, "", "Collect to",
          "Last safe day to collect at the accepted risk, or a median where the next column says so."},
         [](Way w) { return cell(w->collect_to); }},
        {{"collect_to_is_median", yes_no, "", "Collect to: a median",
          "Whether the last day to collect is a median, because it is too early in the year for a safe day."},
         [](Way w) { return Cell{w->collect_by_median}; }},
        {{"balloon_from", day, "", "Balloon from",
          "Median first day on which the donor stands at balloon stage."},
         [](Way w) { return cell(w->balloon_from); }},
        {{"balloon_to", day, "", "Balloon to", "Median last day on which the donor stands at balloon stage."},
         [](Way w) { return cell(w->balloon_to); }},
        {{"store", text, "", "Store", "Where the pollen is stored until then.", stores_as_codes()},
         [](Way w) { return w->store ? text_cell(to_word(*w->store)) : Cell{}; }},
        {{"use_from", day, "", "Use from", "First day on which the seed parent can be pollinated."},
         [](Way w) { return cell(w->use_from); }},
        {{"use_to", day, "", "Use to",
          "Last safe day on which the seed parent can be pollinated, or a median where the next column says "
          "so."},
         [](Way w) { return cell(w->use_to); }},
        {{"use_to_is_median", yes_no, "", "Use to: a median",
          "Whether the last day to pollinate is a median, because it is too early in the year for a safe "
          "day."},
         [](Way w) { return Cell{w->use_by_median}; }},
        {{"flowers", whole, "", "Flowers to pollinate",
          "Flowers of the seed parent to be pollinated for the wanted seedlings."},
         [](Way w) { return whole_cell(w->flowers); }},
        {{"donor_flowers", whole, "", "Flowers to collect", "Flowers of the donor to be collected."},
         [](Way w) { return whole_cell(w->donor_flowers); }},
        {{"pollen_mg", number, "mg", "Pollen", "Raw pollen needed, anther dust included."},
         [](Way w) { return number_cell(w->pollen.value, 1); }},
        {{"lot", text, "", "Lot", "Pollen lot in stock that this way uses."},
         [](Way w) { return cell(w->lot); }},
        {{"s_match", text, "", "S-alleles",
          "Compatibility of the donor's pollen with the style, by the S-alleles.", detail::s_match_codes()},
         [](Way w) { return text_cell(lineage::to_text(w->s_match)); }},
        {{"kinship", number, "0 to 1", "Kinship",
          "Coefficient of kinship of the parents: the inbreeding of a seedling; unknown where no parent of "
          "either is recorded."},
         [](Way w) { return number_cell(w->kinship, 5); }},
        {{"verdict", text, "", "Verdict", "The outlook in one word."},
         [](Way w) { return text_cell(cross::to_text(w->verdict)); }},
        {{"why", text, "", "Why", "The reasons, in sentences."}, [](Way w) { return text_cell(w->why); }},
        {as_of_column(), [](Way w) { return Cell{w.plan->as_of}; }},
    };
    return columns;
}

constexpr TableOf<Planned<cross::CrossWay>> cross_outlook_rows{
    "cross_outlook", "Cross outlook",
    "Each cross goal by each way to obtain the pollen, with probabilities and reasons.",
    cross_outlook_columns, [] {
        return TableView{
            .first = {"cross", "seed_parent", "donor", "verdict", "probability", "way", "lot", "collect_to",
                      "use_from", "use_to", "flowers", "donor_flowers", "s_match", "kinship"},
            .below = {"why"},
            .once = {"as_of", "season"}};
    }};

const std::vector<ColumnOf<Planned<cross::PollenTask>>>& pollen_task_columns() {
    using Task = const Planned<cross::PollenTask>&;
    static const std::vector<ColumnOf<Planned<cross::PollenTask>>> columns{
        {{"work", text, "", "Work", "What is to be done."},
         [](Task t) { return text_cell(cross::to_text(t->work)); }},
        {{"donor", text, "", "Donor", "The accession whose pollen it is."},
         [](Task t) { return text_cell(t->donor); }},
        {{"tree", text, "", "Tree", "The donor tree; unknown where the donor has no living tree."},
         [](Task t) { return text_cell(t->tree); }},
        {{"do_from", day, "", "From", "First day to do it."}, [](Task t) { return Cell{t->do_from}; }},
        {{"do_to", day, "", "To",
          "Last safe day at the accepted risk, or a median where the next column says so."},
         [](Task t) { return Cell{t->do_to}; }},
        {{"do_to_is_median", yes_no, "", "To: a median",
          "Whether the last day is a median, because it is too early in the year for a safe day."},
         [](Task t) { return Cell{t->by_median}; }},
        {{"balloon_from", day, "", "Balloon from",
          "Median first day on which the tree stands at balloon stage; unknown for a test."},
         [](Task t) { return cell(t->balloon_from); }},
        {{"balloon_to", day, "", "Balloon to",
          "Median last day on which the tree stands at balloon stage; unknown for a test."},
         [](Task t) { return cell(t->balloon_to); }},
        {{"lot", text, "", "Lot", "The pollen lot to test."}, [](Task t) { return cell(t->lot); }},
        {{"flowers", whole, "", "Flowers", "Flowers to collect."},
         [](Task t) { return whole_cell(t->flowers); }},
        {{"mass_mg", number, "mg", "Pollen", "Expected yield of raw pollen."},
         [](Task t) { return number_cell(t->mass.value, 1); }},
        {{"store", text, "", "Store", "Where the pollen is stored until then.", stores_as_codes()},
         [](Task t) { return text_cell(to_word(t->store)); }},
        {{"keep_until", day, "", "Keep until", "Day until which the pollen is needed."},
         [](Task t) { return cell(t->keep_until); }},
        {{"season_of_use", whole, "year", "Season of use", "The bloom season that the pollen is for."},
         [](Task t) { return whole_cell(t->season_of_use.year); }},
        {{"for_crosses", text, "", "For crosses", "Codes of the cross goals it serves."},
         [](Task t) { return text_cell(fmt::format("{}", fmt::join(t->for_crosses, ", "))); }},
        {{"second", yes_no, "", "Second way",
          "Whether it is for a second way only, in case the first fails."},
         [](Task t) { return Cell{t->insurance}; }},
        {{"urgency", text, "", "Urgency", "How soon it must be done."},
         [](Task t) { return text_cell(cross::to_text(t->urgency)); }},
        {{"why", text, "", "Why", "The reasons, in sentences."}, [](Task t) { return text_cell(t->why); }},
        {as_of_column(), [](Task t) { return Cell{t.plan->as_of}; }},
    };
    return columns;
}

constexpr TableOf<Planned<cross::PollenTask>> pollen_task_rows{
    "pollen_task",
    "Pollen work",
    "Pollen to collect, branches to cut, lots to test: by last safe day.",
    pollen_task_columns,
    [] {
        return TableView{
            .first = {"do_from", "do_to", "work", "donor", "lot", "tree", "flowers", "for_crosses", "store",
                      "keep_until", "mass_mg", "urgency", "season_of_use"},
            .below = {"why"},
            .once = {"as_of"}};
    },
    [](const Planned<cross::PollenTask>& t) { return t->at; }};

const std::vector<ColumnOf<Planned<cross::FieldTask>>>& field_task_columns() {
    using Task = const Planned<cross::FieldTask>&;
    static const std::vector<ColumnOf<Planned<cross::FieldTask>>> columns{
        {{"work", text, "", "Work", "What is to be done."},
         [](Task t) { return text_cell(cross::to_text(t->work)); }},
        {{"cross", text, "", "Cross", "Code of the cross goal."}, [](Task t) { return text_cell(t->cross); }},
        {{"seed_parent", text, "", "Seed parent", "The accession whose flowers are pollinated."},
         [](Task t) { return text_cell(t->seed_parent); }},
        {{"donor", text, "", "Pollen parent", "As in the goal: an accession or a blend."},
         [](Task t) { return text_cell(t->donor); }},
        {{"tree", text, "", "Tree", "The seed parent's tree."}, [](Task t) { return text_cell(t->tree); }},
        {{"do_from", day, "", "From", "First day to do it."}, [](Task t) { return Cell{t->do_from}; }},
        {{"do_to", day, "", "To", "Last day to do it."}, [](Task t) { return Cell{t->do_to}; }},
        {{"do_to_is_median", yes_no, "", "To: a median",
          "Whether the last day is a median, because it is too early in the year for a safe day."},
         [](Task t) { return Cell{t->by_median}; }},
        {{"flowers", whole, "", "Flowers", "Flowers at this tree."},
         [](Task t) { return whole_cell(t->flowers); }},
        {{"pollen", text, "", "Pollen", "Which pollen to bring."},
         [](Task t) { return text_cell(t->pollen); }},
        {{"urgency", text, "", "Urgency", "How soon it must be done."},
         [](Task t) { return text_cell(cross::to_text(t->urgency)); }},
        {{"why", text, "", "Why", "The reasons, in sentences."}, [](Task t) { return text_cell(t->why); }},
        {as_of_column(), [](Task t) { return Cell{t.plan->as_of}; }},
    };
    return columns;
}

constexpr TableOf<Planned<cross::FieldTask>> field_task_rows{
    "field_task",
    "Field work",
    "Work at the seed parents: bagging, pollinating, unbagging, by first day.",
    field_task_columns,
    [] {
        return TableView{.first = {"do_from", "do_to", "work", "tree", "cross", "flowers", "pollen", "donor",
                                   "seed_parent", "urgency"},
                         .below = {"why"},
                         .once = {"as_of"}};
    },
    [](const Planned<cross::FieldTask>& t) { return t->at; }};

template <class Result>
Table planned(const TableOf<Planned<Result>>& table, const cross::SeasonPlan& plan,
              const std::vector<Result>& results) {
    std::vector<Planned<Result>> rows;
    for (const auto& result : results) {
        rows.push_back({&plan, &result});
    }
    return table.of(rows);
}

}  // namespace

ResultShape cross_outlook_shape() {
    return cross_outlook_rows.shape();
}

Table cross_outlook_table(const cross::SeasonPlan& plan) {
    return planned(cross_outlook_rows, plan, plan.ways);
}

ResultShape pollen_task_shape() {
    return pollen_task_rows.shape();
}

Table pollen_task_table(const cross::SeasonPlan& plan) {
    return planned(pollen_task_rows, plan, plan.pollen);
}

ResultShape field_task_shape() {
    return field_task_rows.shape();
}

Table field_task_table(const cross::SeasonPlan& plan) {
    return planned(field_task_rows, plan, plan.field);
}

std::vector<TableShape> book_result_shapes() {
    return {bloom_window_shape(),
            bloom_model_table.shape(),
            detail::bloom_skill_shape(),
            bloom_left_out_table.shape(),
            detail::meeting_skill_table.shape(),
            cross_outlook_shape(),
            pollen_task_shape(),
            field_task_shape(),
            detail::row_position_shape(),
            detail::tree_number_shape(),
            detail::first_fruit_shape()};
}

}  // namespace pipward::operation
