// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "pipward/lineage/value_list.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/lineage/detail/heritability_parameter.h"
#include "pipward/record/words.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string trait;
    double heritability = lineage::usual_heritability;
    std::optional<double> repeatability;
};

std::vector<CodeWord> kinds_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& entry : words(AccessionKind{})) {
        codes.push_back({std::string(entry.word), std::string(entry.word)});
    }
    return codes;
}

const std::vector<ColumnOf<lineage::ListedValue>>& columns() {
    static const std::vector<ColumnOf<lineage::ListedValue>> all{
        {{"accession", text, "", "Accession", "Its name."},
         [](const lineage::ListedValue& r) { return text_cell(r.accession); }},
        {{"kind", text, "", "Kind", "What it is; unknown for a parent without a record.", kinds_as_codes()},
         [](const lineage::ListedValue& r) { return r.kind ? text_cell(to_word(*r.kind)) : Cell{}; }},
        {{"scores", whole, "", "Scores", "Scores of its own trees."},
         [](const lineage::ListedValue& r) { return whole_cell(r.scores); }},
        {{"mean", number, "score", "Mean", "Arithmetic mean."},
         [](const lineage::ListedValue& r) { return number_cell(r.mean, 2); }},
        {{"value", number, "score", "Breeding value",
          "Deviation from the founders' mean; the offspring of two parents is expected at the mean of their "
          "values."},
         [](const lineage::ListedValue& r) { return r.value ? number_cell(r.value->value, 3) : Cell{}; }},
        {{"reliability", number, "0 to 1", "Reliability",
          "Squared accuracy of the breeding value, 0 for none to 1 for perfect."},
         [](const lineage::ListedValue& r) {
             return r.value ? number_cell(r.value->reliability, 3) : Cell{};
         }},
        {{"rank", whole, "", "Rank",
          "1 for the highest value; where low scores are desired, read from the end."},
         [](const lineage::ListedValue& r) { return whole_cell(r.rank); }},
        {{"remark", text, "", "Remark", "Caution."},
         [](const lineage::ListedValue& r) { return text_cell(r.remark); }},
    };
    return all;
}

constexpr TableOf<lineage::ListedValue> table{
    "breeding_values", "Breeding values", "Estimated breeding value of each accession, the highest first.",
    columns, [] {
        return TableView{.first = {"rank", "accession", "value", "reliability", "scores", "mean", "kind"},
                         .below = {"remark"}};
    }};

lineage::ScoreVariance variance_of(const Request& request) {
    auto variance = lineage::usual_variance(request.heritability);
    variance.repeatability = request.repeatability.value_or(variance.repeatability);
    return variance;
}

Sentence summary_of(const Request& request, const lineage::TraitScores& scores) {
    const auto variance = variance_of(request);
    const auto seasons = scores.years.size() == 1 ? say("1 season") : say("{} seasons", scores.years.size());
    return say(
        "{}: {} scores of {} accessions in {}. Heritability {:.2f} and repeatability {:.2f} are assumptions; "
        "the reliabilities depend on them.",
        request.trait, scores.records.size(), scores.members.size(), seasons, variance.heritability,
        variance.repeatability);
}

Findings check(const Request& request) {
    if (request.repeatability && *request.repeatability < request.heritability) {
        return {about_parameter(
            "repeatability", fmt::format("{}", *request.repeatability),
            say("The repeatability is lower than the heritability, {}.", request.heritability),
            say("The repeatability is at least the heritability."))};
    }
    return {};
}

Outcome run(const Request& request, const Run& lent) {
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto& orchard = reading.orchard;
    const auto order = lineage::pedigree_order(orchard.accessions, orchard.blend_members);
    if (!order.loops.empty()) {
        throw Error(Trouble::input, order.loops);
    }
    const lineage::TraitQuestion question{request.trait, request.as_of, "trait"};
    const auto scores = lineage::scores_of(orchard, order, question);
    lent.step(0.3, say("Calculating the breeding values"));
    const auto values =
        lineage::values_of(scores, lineage::kinship_factors(order.members), variance_of(request), question);
    const auto list = lineage::value_list(orchard, order, scores, values);
    Outcome outcome;
    outcome.findings = reading.findings;
    add_findings(outcome, scores.left_out);
    outcome.tables = {table.of(list.listed)};
    outcome.summary = summary_of(request, scores);
    if (list.left_out > 0) {
        outcome.summary += verbatim(" ");
        outcome.summary +=
            list.left_out == 1
                ? say("1 accession is not listed: the scores have no information on it.")
                : say("{} accessions are not listed: the scores have no information on them.", list.left_out);
    }
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> breeding_values() {
    return declare<Request>(
        {.about = {"breeding-values", "Breeding values", "Pedigree",
                   "Estimates breeding values of a scored trait for each accession, from its own scores and "
                   "those of all its relatives, corrected for seasons. Unknown parents count as founders, a "
                   "blend as a mixture of its members; triploids and their descendants are left out. Where "
                   "there are too few scores it says so."},
         .parameters =
             {book_parameter(&Request::book),
              parameter(&Request::trait, "trait", "Trait", "The trait, always in the same word.").required(),
              heritability_parameter(&Request::heritability),
              parameter(&Request::repeatability, "repeatability", "Repeatability",
                        "Repeatability of the scores of an accession; the heritability and a quarter of the "
                        "rest where not given.")
                  .in("0 to 1")
                  .between(0.01, 0.99)
                  .advanced(),
              as_of_parameter(&Request::as_of)},
         .results = {table.shape()},
         .examples = {{"Which accession transmits large fruit.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"trait", "fruit_mass_g"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
