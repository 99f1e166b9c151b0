// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/season/detail/bloom_skill_tables.h"
#include "pipward/operation/season/result_tables.h"

namespace pipward::operation {
namespace {

using enum CellType;

const std::vector<ColumnOf<Finding>>& finding_columns() {
    static const std::vector<ColumnOf<Finding>> columns{
        {{"level", text, "", "Level", "error, warning or notice."},
         [](const Finding& f) { return text_cell(to_text(f.level)); }},
        {{"table", text, "", "Table", "The table or file it was found in."},
         [](const Finding& f) { return text_cell(f.table); }},
        {{"row", text, "", "Row", "The row, by the name that people know it by."},
         [](const Finding& f) { return text_cell(f.row); }},
        {{"field", text, "", "Field", "The column."}, [](const Finding& f) { return text_cell(f.field); }},
        {{"value", text, "", "Value", "The value there."},
         [](const Finding& f) { return text_cell(f.value); }},
        {{"message", text, "", "What is wrong", "What is wrong, as a sentence."},
         [](const Finding& f) { return text_cell(f.message); }},
        {{"remedy", text, "", "What to do", "What to do about it, as a sentence."},
         [](const Finding& f) { return text_cell(f.remedy); }},
    };
    return columns;
}

template <class Enum>
CodeWord code_word(Enum value, std::string plain) {
    return {std::string(to_text(value)), std::move(plain)};
}

std::vector<CodeWord> sources_as_codes() {
    return {code_word(bloom::NeedSource::own_observations, "own observations"),
            code_word(bloom::NeedSource::mid_parent, "mid-parent"),
            code_word(bloom::NeedSource::one_parent, "one parent"),
            code_word(bloom::NeedSource::orchard_mean, "orchard mean")};
}

std::vector<CodeWord> models_as_codes() {
    auto words = detail::methods_as_codes();
    std::ranges::move(sources_as_codes(), std::back_inserter(words));
    return words;
}

std::size_t weightiest(const bloom::BloomModel& model) {
    return static_cast<std::size_t>(std::ranges::max_element(model.weights) - model.weights.begin());
}

Cell leading_amount(const season::NeedRow& row) {
    const auto structure = weightiest(*row.model);
    return structure < row.need->amount.size() ? significant_cell(row.need->amount[structure], 4) : Cell{};
}

Cell leading_structure(const season::NeedRow& row) {
    return row.model->weights.empty() ? Cell{}
                                      : text_cell(bloom::structure_name(
                                            row.model->method, static_cast<int>(weightiest(*row.model))));
}

const std::vector<ColumnOf<season::NeedRow>>& bloom_model_columns() {
    static const std::vector<ColumnOf<season::NeedRow>> columns{
        {{"accession", text, "", "Accession", "The accession."},
         [](const season::NeedRow& r) { return text_cell(r.need->accession); }},
        {{"method", text, "", "Method", "The forecast method that was fitted.", detail::methods_as_codes()},
         [](const season::NeedRow& r) { return text_cell(bloom::to_text(r.model->method)); }},
        {{"requirement_source", text, "", "Source of the requirement",
          "Whether its requirement comes from its own observations, from its parents or from the orchard's "
          "mean.",
          sources_as_codes()},
         [](const season::NeedRow& r) { return text_cell(bloom::to_text(r.need->source)); }},
        {{"seasons", whole, "", "Seasons", "Seasons with observations of its own."},
         [](const season::NeedRow& r) { return whole_cell(r.need->seasons); }},
        {{"observations", whole, "", "Observations", "Observations of its own."},
         [](const season::NeedRow& r) { return whole_cell(r.need->observations); }},
        {{"usual_full_bloom", text, "", "Usual full bloom",
          "Mean day and month of full bloom at the station, by the model over the past seasons."},
         [](const season::NeedRow& r) {
             return r.usual_full_bloom ? Cell{to_short_text(*r.usual_full_bloom)} : Cell{};
         }},
        {{"usual_day_of_year", whole, "day of year", "Usual full bloom, day",
          "The same as day of year, 1 January being 1."},
         [](const season::NeedRow& r) {
             return r.usual_full_bloom ? whole_cell(day_of_year(*r.usual_full_bloom)) : Cell{};
         }},
        {{"structure", text, "", "Highest-weighted structure",
          "The one-parameter model structure with the highest weight in the method."},
         leading_structure},
        {{"amount", number, "structure's own unit", "Amount",
          "Requirement of this accession in that structure."},
         leading_amount},
        {{"requirement_sd_days", number, "d", "SD of the requirement",
          "Standard deviation of full bloom due to the uncertainty of the requirement."},
         [](const season::NeedRow& r) { return number_cell(r.need->sd_days, 3); }},
        {{"season_sd_days", number, "d", "SD of the season",
          "Standard deviation of full bloom that all accessions of a season share."},
         [](const season::NeedRow& r) { return number_cell(r.model->season_sd_days, 3); }},
        {{"own_sd_days", number, "d", "SD of the rest",
          "Standard deviation of full bloom that is specific to the accession."},
         [](const season::NeedRow& r) { return number_cell(r.model->own_sd_days, 3); }},
    };
    return columns;
}

const std::vector<ColumnOf<bloom::SkillScore>>& bloom_left_out_columns() {
    static const std::vector<ColumnOf<bloom::SkillScore>> columns{
        {{"method", text, "", "Method", "The forecast method.", detail::methods_as_codes()},
         [](const bloom::SkillScore& s) { return text_cell(bloom::to_text(s.method)); }},
        {{"stage", whole, "BBCH", "Stage", "The forecast stage: full bloom."},
         [](const bloom::SkillScore&) { return whole_cell(full_bloom.code); }},
        {{"accession", text, "", "Accession", "The accession; unknown where all are scored together."},
         [](const bloom::SkillScore& s) { return text_cell(s.accession); }},
        {{"lead_days", whole, "d", "Lead",
          "Days before bloom that the forecast was issued; unknown where the weather was known."},
         [](const bloom::SkillScore& s) { return whole_cell(s.lead_days); }},
        {{"training_seasons", whole, "", "Training seasons",
          "Seasons used in the fit; unknown where all but the one forecast."},
         [](const bloom::SkillScore& s) { return whole_cell(s.training_seasons); }},
        {{"seasons", whole, "", "Seasons", "Seasons forecast without having been used in the fit."},
         [](const bloom::SkillScore& s) { return whole_cell(s.seasons); }},
        {{"observations", whole, "", "Scored", "Full-bloom days scored, one an accession and season."},
         [](const bloom::SkillScore& s) { return whole_cell(s.observations); }},
        {{"rmse_days", number, "d", "RMSE", "Root mean square error."},
         [](const bloom::SkillScore& s) { return number_cell(s.rmse, 3); }},
        {{"mae_days", number, "d", "MAE", "Mean absolute error."},
         [](const bloom::SkillScore& s) { return number_cell(s.mae, 3); }},
        {{"bias_days", number, "d", "Bias", "Mean of forecast minus observed: above zero is too late."},
         [](const bloom::SkillScore& s) { return number_cell(s.bias, 3); }},
        {{"within_3_days", number, "0 to 1", "Within 3 days", "Share of days forecast within 3 days."},
         [](const bloom::SkillScore& s) { return number_cell(s.within_3_days, 3); }},
        {{"within_5_days", number, "0 to 1", "Within 5 days", "Share of days forecast within 5 days."},
         [](const bloom::SkillScore& s) { return number_cell(s.within_5_days, 3); }},
        {{"coverage_80", number, "0 to 1", "Coverage of the 80 % interval",
          "Share of observed days inside the 80 % prediction interval, p10 to p90; 0.8 is right."},
         [](const bloom::SkillScore& s) { return number_cell(s.coverage_80, 3); }},
        {{"chosen", yes_no, "", "Chosen", "Whether this is the method that forecasts use."},
         [](const bloom::SkillScore& s) { return Cell{s.chosen}; }},
    };
    return columns;
}

struct WindowRow {
    const bloom::BloomForecast* forecast;
    const bloom::BloomWindow* window;
    const Tree* tree;  ///< null for an accession without a living tree
};

Column day_column(const std::string& name, const std::string& label, const std::string& description) {
    return {name, day, "", label, description};
}

const std::vector<ColumnOf<WindowRow>>& bloom_window_columns() {
    using Window = const WindowRow&;
    static const std::vector<ColumnOf<WindowRow>> columns{
        {{"tree", text, "", "Tree", "The tree's label; unknown for an accession without a living tree."},
         [](Window r) { return r.tree != nullptr ? text_cell(r.tree->label) : Cell{}; }},
        {{"accession", text, "", "Accession", "The accession."},
         [](Window r) { return text_cell(r.window->accession); }},
        {{"season", whole, "year", "Season", "The year of bloom."},
         [](Window r) { return whole_cell(r.forecast->season.year); }},
        {day_column("as_of", "As of", "Reference date of the forecast."),
         [](Window r) { return Cell{r.forecast->as_of}; }},
        {day_column("first_p10", "First bloom, early", "First bloom (BBCH 60): 10th percentile."),
         [](Window r) { return Cell{r.window->first.p10}; }},
        {day_column("first_p50", "First bloom, median", "First bloom (BBCH 60): median."),
         [](Window r) { return Cell{r.window->first.p50}; }},
        {day_column("first_p90", "First bloom, late", "First bloom (BBCH 60): 90th percentile."),
         [](Window r) { return Cell{r.window->first.p90}; }},
        {day_column("full_p10", "Full bloom, early", "Full bloom (BBCH 65): 10th percentile."),
         [](Window r) { return Cell{r.window->full.p10}; }},
        {day_column("full_p50", "Full bloom, median", "Full bloom (BBCH 65): median."),
         [](Window r) { return Cell{r.window->full.p50}; }},
        {day_column("full_p90", "Full bloom, late", "Full bloom (BBCH 65): 90th percentile."),
         [](Window r) { return Cell{r.window->full.p90}; }},
        {day_column("end_p10", "End of bloom, early", "End of bloom (BBCH 69): 10th percentile."),
         [](Window r) { return Cell{r.window->end.p10}; }},
        {day_column("end_p50", "End of bloom, median", "End of bloom (BBCH 69): median."),
         [](Window r) { return Cell{r.window->end.p50}; }},
        {day_column("end_p90", "End of bloom, late", "End of bloom (BBCH 69): 90th percentile."),
         [](Window r) { return Cell{r.window->end.p90}; }},
        {{"model", text, "", "Model", "The forecast method, and the source of the accession's requirement.",
          models_as_codes()},
         [](Window r) {
             return Cell{
                 fmt::format("{}, {}", bloom::to_text(r.forecast->method), bloom::to_text(r.window->source))};
         }},
        {{"observations_used", whole, "", "Observations used",
          "Bloom observations of the accession itself that its requirement rests on."},
         [](Window r) { return whole_cell(r.window->observations_used); }},
        {{"warnings", text, "", "Warnings", "What weakens this forecast."},
         [](Window r) { return text_cell(joined(r.window->warnings, verbatim(" "))); }},
    };
    return columns;
}

constexpr TableOf<WindowRow> bloom_window_rows{
    "bloom_window",
    "Bloom windows",
    "When each living tree will bloom this season, with 80 % prediction intervals.",
    bloom_window_columns,
    [] {
        return TableView{.first = {"tree", "accession", "first_p50", "full_p10", "full_p50", "full_p90",
                                   "end_p50", "first_p10", "end_p90"},
                         .once = {"season", "as_of"},
                         .in_order = true};
    },
    [](const WindowRow& r) { return point_of(r.tree); }};

}  // namespace

const TableOf<season::NeedRow> bloom_model_table{
    "bloom_model", "Chill and heat requirements", "The fitted chill and heat requirement of each accession.",
    bloom_model_columns, [] {
        return TableView{.first = {"accession", "usual_full_bloom", "requirement_source", "seasons",
                                   "observations", "requirement_sd_days", "own_sd_days"},
                         .once = {"method", "season_sd_days"},
                         .behind = true};
    }};

const TableOf<bloom::SkillScore> bloom_left_out_table{
    "bloom_left_out", "Full bloom of seasons left out",
    "Errors of each forecast method for full bloom in seasons left out of the fit, which all others, later "
    "ones too, have entered.",
    bloom_left_out_columns, [] {
        return TableView{.first = {"method", "accession", "lead_days", "training_seasons", "seasons",
                                   "observations", "rmse_days", "bias_days", "coverage_80", "chosen"},
                         .once = {"stage"},
                         .behind = true};
    }};

const TableOf<Finding> finding_table{
    "finding", "Findings", "What was found in the book, and what to do about it.", finding_columns, [] {
        return TableView{.first = {"level", "table", "row", "field", "value"},
                         .below = {"message", "remedy"}};
    }};

ResultShape bloom_window_shape() {
    return bloom_window_rows.shape();
}

Table bloom_window_table(const bloom::BloomForecast& forecast) {
    std::vector<WindowRow> rows;
    std::set<std::string> standing;
    for (const auto& bloom : forecast.trees) {
        const auto& window = forecast.windows.at(bloom.window);
        standing.insert(window.accession);
        rows.push_back({&forecast, &window, bloom.tree});
    }
    for (const auto& [accession, window] : forecast.of_accession) {
        if (!standing.contains(accession)) {
            rows.push_back({&forecast, &forecast.windows.at(window), nullptr});
        }
    }
    return bloom_window_rows.of(rows);
}

}  // namespace pipward::operation
