// SPDX-License-Identifier: MIT
#include "pipward/operation/season/detail/bloom_skill_tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace pipward::operation {
namespace {

using enum CellType;

struct SkillRow {
    const bloom::ForwardScore* score;
    bool chosen;
};

/// Methods stand side by side; all accessions together come first, then the species, then each.
auto compared_with(const SkillRow& row) {
    const auto& score = *row.score;
    const int circle = score.accession.empty() ? 0 : score.of_species ? 1 : 2;
    return std::tuple{circle, score.accession, score.stage, score.issued};
}

std::string issued_text(bloom::DayOfYear day) {
    return fmt::format("{:02}-{:02}", day.month, day.day);
}

CodeWord method_code(bloom::BloomMethod method, std::string plain) {
    return {std::string(to_text(method)), std::move(plain)};
}

const std::vector<ColumnOf<SkillRow>>& skill_columns() {
    using R = const SkillRow&;
    static const std::vector<ColumnOf<SkillRow>> columns{
        {{"method", text, "", "Method", "The forecast method.", detail::methods_as_codes()},
         [](R r) { return text_cell(bloom::to_text(r.score->method)); }},
        {{"stage", whole, "BBCH", "Stage",
          "The forecast stage: 60 first bloom, 65 full bloom, 69 end of bloom."},
         [](R r) { return whole_cell(r.score->stage.code); }},
        {{"accession", text, "", "Accession", "The accession, the species, or all together."},
         [](R r) { return text_cell(r.score->accession.empty() ? "all" : r.score->accession); }},
        {{"issued", text, "", "Issued", "Month and day on which the forecast was made."},
         [](R r) { return text_cell(issued_text(r.score->issued)); }},
        {{"springs", whole, "", "Springs", "Springs forecast by what earlier springs taught."},
         [](R r) { return whole_cell(r.score->springs); }},
        {{"n", whole, "", "Scored", "Observed days scored, one an accession and spring."},
         [](R r) { return whole_cell(r.score->n); }},
        {{"rmse_days", number, "d", "RMSE", "Root mean square error of the median."},
         [](R r) { return number_cell(r.score->rmse, 3); }},
        {{"mae_days", number, "d", "MAE", "Mean absolute error of the median."},
         [](R r) { return number_cell(r.score->mae, 3); }},
        {{"bias_days", number, "d", "Bias", "Mean of forecast minus observed: above zero is too late."},
         [](R r) { return number_cell(r.score->bias, 3); }},
        {{"crps_days", number, "d", "CRPS",
          "Continuous ranked probability score: how far the whole forecast is from the observed day."},
         [](R r) { return number_cell(r.score->crps, 3); }},
        {{"inside_80", number, "0 to 1", "Coverage of the 80 % interval",
          "Share of observed days inside the 80 % prediction interval, p10 to p90; 0.8 is right."},
         [](R r) { return number_cell(r.score->inside_80, 3); }},
        {{"length_bias_days", number, "d", "Bias of the length",
          "Days from first bloom to end of bloom, forecast minus observed, where both were observed."},
         [](R r) { return number_cell(r.score->length_bias, 3); }},
        {{"chosen", yes_no, "", "Chosen", "Whether this is the method that forecasts use."},
         [](R r) { return Cell{r.chosen}; }},
    };
    return columns;
}

constexpr TableOf<SkillRow> bloom_skill_rows{
    "bloom_skill", "Bloom forecast skill",
    "Errors of each forecast method forward in time: each spring by what earlier springs taught, on a day of "
    "the calendar.",
    skill_columns, [] {
        return TableView{.first = {"method", "stage", "accession", "issued", "springs", "n", "rmse_days",
                                   "bias_days", "crps_days", "inside_80", "chosen"}};
    }};

struct PlaceRow {
    const bloom::ForwardScore* score;
    int bin;
};

double edge(int bin) {
    return static_cast<double>(bin) / bloom::histogram_bins;
}

const std::vector<ColumnOf<PlaceRow>>& place_columns() {
    using R = const PlaceRow&;
    static const std::vector<ColumnOf<PlaceRow>> columns{
        {{"stage", whole, "BBCH", "Stage",
          "The forecast stage: 60 first bloom, 65 full bloom, 69 end of bloom."},
         [](R r) { return whole_cell(r.score->stage.code); }},
        {{"accession", text, "", "Species", "The species, or all together."},
         [](R r) { return text_cell(r.score->accession.empty() ? "all" : r.score->accession); }},
        {{"issued", text, "", "Issued", "Month and day on which the forecast was made."},
         [](R r) { return text_cell(issued_text(r.score->issued)); }},
        {{"place_from", number, "0 to 1", "Place, from", "Share of the forecast's scenarios before the day."},
         [](R r) { return number_cell(edge(r.bin), 1); }},
        {{"place_to", number, "0 to 1", "Place, to", "The upper edge of the tenth."},
         [](R r) { return number_cell(edge(r.bin + 1), 1); }},
        {{"n", whole, "", "Observed days", "Observed days that fell in this tenth of their forecasts."},
         [](R r) { return whole_cell(r.score->places[r.bin]); }},
        {{"share", number, "0 to 1", "Observed share", "Their share of all; 0.1 is right."},
         [](R r) { return number_cell(static_cast<double>(r.score->places[r.bin]) / r.score->n, 3); }},
    };
    return columns;
}

constexpr TableOf<PlaceRow> forecast_place_rows{
    "forecast_place", "Place of the observed days in their forecasts",
    "In which tenth of the forecast the observed day fell, forward in time: even where the forecast is "
    "right.",
    place_columns, [] {
        return TableView{.first = {"stage", "accession", "issued", "place_from", "place_to", "n", "share"},
                         .behind = true};
    }};

const std::vector<ColumnOf<cross::MeetingScore>>& meeting_columns() {
    using R = const cross::MeetingScore&;
    static const std::vector<ColumnOf<cross::MeetingScore>> columns{
        {{"way",
          text,
          "",
          "Way",
          "How the pollen is obtained.",
          {{"same_day", "fresh pollen: in bloom together on two days or more"},
           {"kept", "stored pollen: that of the first flowers dry before the other's bloom ends"}}},
         [](R r) { return text_cell(cross::to_text(r.way)); }},
        {{"issued", text, "", "Issued", "Month and day on which the forecast was made."},
         [](R r) { return text_cell(issued_text(r.issued)); }},
        {{"chance_from", number, "0 to 1", "Probability, from", "Least probability in the row."},
         [](R r) { return number_cell(r.probability_from, 1); }},
        {{"chance_to", number, "0 to 1", "Probability, to", "Greatest probability in the row."},
         [](R r) { return number_cell(r.probability_to, 1); }},
        {{"n", whole, "", "Scored", "Pairs of accessions in springs in which both were observed."},
         [](R r) { return whole_cell(r.n); }},
        {{"mean_chance", number, "0 to 1", "Mean probability", "Mean of the forecast probabilities."},
         [](R r) { return number_cell(r.mean_probability, 3); }},
        {{"observed_share", number, "0 to 1", "Observed share", "Share in which it came about."},
         [](R r) { return number_cell(r.observed_share, 3); }},
        {{"brier", number, "probability²", "Brier score",
          "Mean square of the probability minus what came (1 or 0): 0 is perfect."},
         [](R r) { return number_cell(r.brier, 4); }},
        {{"brier_climatology", number, "probability²", "Brier score of the mean share",
          "The same, had the share over all pairs and springs been forecast every time."},
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

std::vector<CodeWord> detail::methods_as_codes() {
    return {method_code(bloom::BloomMethod::averaged, "averaged"),
            method_code(bloom::BloomMethod::mean_day, "mean date"),
            method_code(bloom::BloomMethod::recent_mean, "mean date of the last 15 springs"),
            method_code(bloom::BloomMethod::degree_days, "degree-days"),
            method_code(bloom::BloomMethod::chill_then_heat, "chill then heat")};
}

ResultShape detail::bloom_skill_shape() {
    return bloom_skill_rows.shape();
}

Table detail::bloom_skill_table(std::span<const bloom::ForwardScore> scores, bloom::BloomMethod chosen) {
    std::vector<SkillRow> rows;
    for (const auto& score : scores) {
        rows.push_back({&score, score.method == chosen});
    }
    std::ranges::stable_sort(rows, {}, compared_with);
    return bloom_skill_rows.of(rows);
}

ResultShape detail::forecast_place_shape() {
    return forecast_place_rows.shape();
}

Table detail::forecast_place_table(std::span<const bloom::ForwardScore> scores, bloom::BloomMethod chosen) {
    std::vector<PlaceRow> rows;
    for (const auto& score : scores) {
        if (score.method == chosen && (score.accession.empty() || score.of_species)) {
            for (int bin = 0; bin < bloom::histogram_bins; ++bin) {
                rows.push_back({&score, bin});
            }
        }
    }
    return forecast_place_rows.of(rows);
}

const TableOf<cross::MeetingScore> detail::meeting_skill_table{
    "meeting_skill", "Skill of the meeting probabilities",
    "The probability that two accessions meet against the share in which they did, forward in time.",
    meeting_columns, [] {
        return TableView{.first = {"way", "issued", "chance_from", "chance_to", "n", "mean_chance",
                                   "observed_share", "brier", "brier_climatology"}};
    }};

std::optional<std::vector<bloom::DayOfYear>> detail::read_issue_days(const std::string& text) {
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

std::vector<bloom::DayOfYear> detail::usual_issue_days(Hemisphere hemisphere) {
    return hemisphere == Hemisphere::north
               ? std::vector<bloom::DayOfYear>{{2, 15}, {3, 1}, {3, 15}, {4, 1}, {4, 15}}
               : std::vector<bloom::DayOfYear>{{8, 15}, {9, 1}, {9, 15}, {10, 1}, {10, 15}};
}

}  // namespace pipward::operation
