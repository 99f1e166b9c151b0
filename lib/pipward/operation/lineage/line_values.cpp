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
        {{"mean", number, "score", "Mean", "Plain mean of them."},
         [](const lineage::ListedValue& r) { return number_cell(r.mean, 2); }},
        {{"value", number, "score", "Breeding value",
          "How far above the founders it is in what it hands on; a child of two parents is expected at the "
          "mean of their values."},
         [](const lineage::ListedValue& r) { return r.value ? number_cell(r.value->value, 3) : Cell{}; }},
        {{"reliability", number, "of 1", "Reliability",
          "How much of the truth the value holds, 0 for nothing to 1 for all: the squared accuracy."},
         [](const lineage::ListedValue& r) {
             return r.value ? number_cell(r.value->reliability, 3) : Cell{};
         }},
        {{"rank", whole, "", "Rank",
          "1 for the highest value; where a low score is the good one, read from the end."},
         [](const lineage::ListedValue& r) { return whole_cell(r.rank); }},
        {{"note", text, "", "Note", "What to bear in mind."},
         [](const lineage::ListedValue& r) { return text_cell(r.note); }},
    };
    return all;
}

constexpr TableOf<lineage::ListedValue> table{
    "breeding_values", "Breeding values",
    "What each accession is expected to hand on of a trait, the highest first.", columns};

lineage::ScoreVariance variance_of(const Request& request) {
    auto variance = lineage::usual_variance(request.heritability);
    variance.repeatability = request.repeatability.value_or(variance.repeatability);
    return variance;
}

Sentence summary_of(const Request& request, const lineage::TraitScores& scores) {
    const auto variance = variance_of(request);
    const auto seasons = scores.years.size() == 1 ? say("1 season") : say("{} seasons", scores.years.size());
    return say(
        "{}: {} scores of {} accessions in {}. Heritability {:.2f} and repeatability {:.2f} are "
        "judgements; the reliabilities hang on them.",
        request.trait, scores.records.size(), scores.members.size(), seasons, variance.heritability,
        variance.repeatability);
}

Findings check(const Request& request) {
    if (request.repeatability && *request.repeatability < request.heritability) {
        return {about_parameter(
            "repeatability", fmt::format("{}", *request.repeatability),
            say("The repeatability is lower than the heritability, {}.", request.heritability),
            say("What is handed on comes back in every score: give at least that."))};
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
    lent.step(0.3, say("Reckoning the breeding values"));
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
                ? say("1 accession is not listed: the scores tell nothing of it.")
                : say("{} accessions are not listed: the scores tell nothing of them.", list.left_out);
    }
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> line_values() {
    return declare<Request>(
        {.about = {"line-values", "Breeding values", "Line",
                   "Tells of a scored trait what each accession is expected to hand on, from its own scores "
                   "and those of all its relatives, with the seasons' differences taken out. Unknown "
                   "parents count as founders, a blend as a mixture of its members; triploids and what "
                   "comes of them are left out. Where there are too few scores it says so."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::trait, "trait", "Trait",
                                  "What was scored, always in the same word.")
                            .required(),
                        heritability_parameter(&Request::heritability),
                        parameter(
                            &Request::repeatability, "repeatability", "Repeatability",
                            "The part that comes back in every score of an accession; the heritability and a "
                            "quarter of what it leaves where not given.")
                            .in("of 1")
                            .between(0.01, 0.99)
                            .advanced(),
                        as_of_parameter(&Request::as_of)},
         .results = {table.shape()},
         .examples = {{"Which accession hands on large fruit.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"trait", "fruit_mass_g"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
