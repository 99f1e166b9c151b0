// SPDX-License-Identifier: MIT
#include "pipward/operation/season/bloom_skill_tables.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/declare/column_of.h"

namespace pipward::operation {
namespace {

using enum CellType;

struct SkillRow {
    const bloom::ForwardScore* score;
    bool chosen;
};

std::string issued_text(bloom::DayOfYear day) {
    return fmt::format("{:02}-{:02}", day.month, day.day);
}

template <class Enum>
CodeWord code_word(Enum value, std::string plain) {
    return {std::string(to_text(value)), std::move(plain)};
}

std::vector<CodeWord> methods_as_codes() {
    return {code_word(bloom::BloomMethod::averaged, "averaged"),
            code_word(bloom::BloomMethod::mean_day, "mean day"),
            code_word(bloom::BloomMethod::recent_mean, "recent mean"),
            code_word(bloom::BloomMethod::degree_days, "degree-days"),
            code_word(bloom::BloomMethod::chill_then_heat, "chill then heat")};
}

const std::vector<ColumnOf<SkillRow>>& skill_columns() {
    using R = const SkillRow&;
    static const std::vector<ColumnOf<SkillRow>> columns{
        {{"method", text, "", "Method", "The way of foretelling.", methods_as_codes()},
         [](R r) { return text_cell(bloom::to_text(r.score->method)); }},
        {{"stage", whole, "BBCH", "Stage", "The stage foretold: 60 first bloom, 65 full bloom, 69 the end."},
         [](R r) { return whole_cell(r.score->stage.code); }},
        {{"accession", text, "", "Accession", "The accession, the species, or all together."},
         [](R r) { return text_cell(r.score->accession.empty() ? "all" : r.score->accession); }},
        {{"issued", text, "", "Issued", "Month and day on which the forecast was made."},
         [](R r) { return text_cell(issued_text(r.score->issued)); }},
        {{"springs", whole, "", "Springs", "Springs foretold by what earlier springs taught."},
         [](R r) { return whole_cell(r.score->springs); }},
        {{"n", whole, "", "Scored", "Noted days scored, one an accession and spring."},
         [](R r) { return whole_cell(r.score->n); }},
        {{"rmse_days", number, "days", "RMSE", "Root mean square error of the median."},
         [](R r) { return number_cell(r.score->rmse, 3); }},
        {{"mae_days", number, "days", "MAE", "Mean absolute error of the median."},
         [](R r) { return number_cell(r.score->mae, 3); }},
        {{"bias_days", number, "days", "Bias", "Mean of foretold less noted: above zero is too late."},
         [](R r) { return number_cell(r.score->bias, 3); }},
        {{"crps_days", number, "days", "CRPS",
          "Continuous ranked probability score: how far the whole forecast is from the day noted."},
         [](R r) { return number_cell(r.score->crps, 3); }},
        {{"inside_80", number, "share", "Inside 80 % window",
          "Share of noted days from p10 to p90; 0.8 is right."},
         [](R r) { return number_cell(r.score->inside_80, 3); }},
        {{"length_bias_days", number, "days", "Length, bias",
          "Days from first bloom to the end, foretold less noted, where both were noted."},
         [](R r) { return number_cell(r.score->length_bias, 3); }},
        {{"chosen", yes_no, "", "Chosen", "Whether this is the method that forecasts use."},
         [](R r) { return Cell{r.chosen}; }},
    };
    return columns;
}

const std::vector<ColumnOf<season::MeetingScore>>& meeting_columns() {
    using R = const season::MeetingScore&;
    static const std::vector<ColumnOf<season::MeetingScore>> columns{
        {{"way",
          text,
          "",
          "Way",
          "The way of crossing.",
          {{"same_day", "fresh pollen: in bloom together on two days or more"},
           {"kept", "kept pollen: that of the first flowers dry before the other's bloom ends"}}},
         [](R r) { return text_cell(season::to_text(r.way)); }},
        {{"issued", text, "", "Issued", "Month and day on which the forecast was made."},
         [](R r) { return text_cell(issued_text(r.issued)); }},
        {{"chance_from", number, "share", "Chance, from", "Least chance in the row, 0 to 1."},
         [](R r) { return number_cell(r.chance_from, 1); }},
        {{"chance_to", number, "share", "Chance, to", "Greatest chance in the row, 0 to 1."},
         [](R r) { return number_cell(r.chance_to, 1); }},
        {{"n", whole, "", "Scored", "Pairs of accessions in springs in which both were noted."},
         [](R r) { return whole_cell(r.n); }},
        {{"mean_chance", number, "share", "Mean chance", "Mean of the chances foretold."},
         [](R r) { return number_cell(r.mean_chance, 3); }},
        {{"observed_share", number, "share", "Came about", "Share in which it came about."},
         [](R r) { return number_cell(r.observed_share, 3); }},
        {{"brier", number, "", "Brier", "Mean square of the chance less what came (1 or 0): 0 is perfect."},
         [](R r) { return number_cell(r.brier, 4); }},
        {{"brier_climatology", number, "", "Brier of the mean share",
          "The same, had the share over all pairs and springs been foretold every time."},
         [](R r) { return number_cell(r.brier_climatology, 4); }},
    };
    return columns;
}

// A year that has every day.
constexpr int leap_year = 2000;

std::optional<bloom::DayOfYear> read_issue_day(const std::string& text) {
    const auto day = parse_iso_day(fmt::format("{}-{}", leap_year, text));
    if (!day) {
        return std::nullopt;
    }
    const auto parts = parts_of(*day);
    return bloom::DayOfYear{parts.month, parts.day};
}

}  // namespace

TableShape bloom_skill_shape() {
    return shape_of(
        {"bloom_skill",
         "How well bloom is foretold",
         "Errors of each way of foretelling, forward in time: each spring by what earlier springs "
         "taught, on a day of the calendar.",
         false,
         {}},
        skill_columns());
}

Table bloom_skill_table(std::span<const bloom::ForwardScore> scores, bloom::BloomMethod chosen) {
    std::vector<SkillRow> rows;
    for (const auto& score : scores) {
        rows.push_back({&score, score.method == chosen});
    }
    return table_of<SkillRow>(bloom_skill_shape(), rows, skill_columns());
}

TableShape meeting_skill_shape() {
    return shape_of(
        {"meeting_skill",
         "How well meetings are foretold",
         "The chance that two accessions meet against the share in which they did, forward in time.",
         false,
         {}},
        meeting_columns());
}

Table meeting_skill_table(std::span<const season::MeetingScore> scores) {
    return table_of(meeting_skill_shape(), scores, meeting_columns());
}

std::optional<std::vector<bloom::DayOfYear>> read_issue_days(const std::string& text) {
    std::vector<bloom::DayOfYear> days;
    std::string part;
    for (const char letter : text + ",") {
        if (letter == ' ') {
            continue;
        }
        if (letter != ',') {
            part += letter;
            continue;
        }
        const auto day = read_issue_day(part);
        if (!day) {
            return std::nullopt;
        }
        days.push_back(*day);
        part.clear();
    }
    return days;
}

std::vector<bloom::DayOfYear> usual_issue_days(Hemisphere hemisphere) {
    return hemisphere == Hemisphere::north
               ? std::vector<bloom::DayOfYear>{{2, 15}, {3, 1}, {3, 15}, {4, 1}, {4, 15}}
               : std::vector<bloom::DayOfYear>{{8, 15}, {9, 1}, {9, 15}, {10, 1}, {10, 15}};
}

}  // namespace pipward::operation
