// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/lineage/detail/heritability_parameter.h"
#include "pipward/operation/detail/list.h"
#include "pipward/record/orchard_index.h"
#include "pipward/record/words.h"
#include "pipward/value/complaint.h"
#include "pipward/value/nearest.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

constexpr double least_reliability = 0.005;

struct Request {
    BookName book;
    Day as_of;
    std::string trait;
    double heritability = lineage::usual_heritability;
    std::optional<double> repeatability;
};

struct ValueRow {
    std::string accession;
    std::optional<AccessionKind> kind;
    int scores = 0;
    std::optional<double> mean;
    std::optional<lineage::BreedingValue> value;
    std::optional<int> rank;
    Sentence note;
};

std::vector<CodeWord> kinds_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& entry : words(AccessionKind{})) {
        codes.push_back({std::string(entry.word), std::string(entry.word)});
    }
    return codes;
}

const std::vector<ColumnOf<ValueRow>>& columns() {
    static const std::vector<ColumnOf<ValueRow>> all{
        {{"accession", text, "", "Accession", "Its name."},
         [](const ValueRow& r) { return text_cell(r.accession); }},
        {{"kind", text, "", "Kind", "What it is; unknown for a parent without a record.", kinds_as_codes()},
         [](const ValueRow& r) { return r.kind ? text_cell(to_word(*r.kind)) : Cell{}; }},
        {{"scores", whole, "", "Scores", "Scores of its own trees."},
         [](const ValueRow& r) { return whole_cell(r.scores); }},
        {{"mean", number, "score", "Mean", "Plain mean of them."},
         [](const ValueRow& r) { return number_cell(r.mean, 2); }},
        {{"value", number, "score", "Breeding value",
          "How far above the founders it is in what it hands on; a child of two parents is expected at the "
          "mean of their values."},
         [](const ValueRow& r) { return r.value ? number_cell(r.value->value, 3) : Cell{}; }},
        {{"reliability", number, "of 1", "Reliability",
          "How much of the truth the value holds, 0 for nothing to 1 for all: the squared accuracy."},
         [](const ValueRow& r) { return r.value ? number_cell(r.value->reliability, 3) : Cell{}; }},
        {{"rank", whole, "", "Rank",
          "1 for the highest value; where a low score is the good one, read from the end."},
         [](const ValueRow& r) { return whole_cell(r.rank); }},
        {{"note", text, "", "Note", "What to bear in mind."},
         [](const ValueRow& r) { return text_cell(r.note); }},
    };
    return all;
}

TableShape shape() {
    return shape_of<ValueRow>({"breeding_values",
                               "Breeding values",
                               "What each accession is expected to hand on of a trait, the highest first.",
                               false,
                               {}},
                              columns());
}

lineage::ScoreVariance variance_of(const Request& request) {
    auto variance = lineage::usual_variance(request.heritability);
    variance.repeatability = request.repeatability.value_or(variance.repeatability);
    return variance;
}

Sentence note_of(const lineage::PedigreeMember& member, const std::string& name, int own_scores) {
    if (!member.reckoned) {
        return member.diploid ? say("Not reckoned: {} comes of one that is not diploid.", name)
                              : say("Not reckoned: {} is not diploid.", name);
    }
    std::vector<Sentence> notes;
    if (member.name != name) {
        notes.push_back(say("Taken together with {}, whose sport it is.", member.name));
    } else if (own_scores == 0) {
        notes.push_back(say("From its relatives only."));
    }
    if (member.expected) {
        notes.push_back(say("Expected: a pollen blend stands in the line."));
    }
    return joined(notes, verbatim(" "));
}

// Every accession with a record, and parents with a name only.
std::vector<ValueRow> rows_of(const Orchard& orchard, const lineage::PedigreeOrder& order,
                              const lineage::TraitScores& scores, const lineage::BreedingValues& values) {
    const OrchardIndex book(orchard);
    std::vector<ValueRow> rows;
    for (const auto& [name, number] : order.number) {
        const auto& member = order.members[number];
        const auto own = scores.of.find(name);
        ValueRow row;
        row.accession = name;
        if (own != scores.of.end()) {
            row.scores = static_cast<int>(own->second.size());
            double sum = 0;
            for (const double score : own->second) {
                sum += score;
            }
            row.mean = sum / row.scores;
        }
        if (const auto* record = book.accession(name)) {
            row.kind = record->kind;
        }
        if (member.reckoned) {
            row.value = values.values[number];
        }
        row.note = note_of(member, name, row.scores);
        rows.push_back(std::move(row));
    }
    return rows;
}

// The highest first; equal values share a rank, those without one come last.
void rank(std::vector<ValueRow>& rows) {
    std::ranges::stable_sort(rows, [](const ValueRow& a, const ValueRow& b) {
        return a.value && (!b.value || a.value->value > b.value->value);
    });
    for (std::size_t i = 0; i < rows.size() && rows[i].value; ++i) {
        const bool equal = i > 0 && rows[i].value->value == rows[i - 1].value->value;
        rows[i].rank = equal ? *rows[i - 1].rank : static_cast<int>(i) + 1;
    }
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
    auto rows = rows_of(orchard, order, scores, values);
    const auto dropped = std::erase_if(rows, [](const ValueRow& row) {
        return row.scores == 0 && (!row.value || row.value->reliability < least_reliability);
    });
    rank(rows);
    Outcome outcome;
    outcome.findings = reading.findings;
    outcome.findings.insert(outcome.findings.end(), scores.left_out.begin(), scores.left_out.end());
    outcome.tables = {table_of<ValueRow>(shape(), rows, columns())};
    outcome.summary = summary_of(request, scores);
    if (dropped > 0) {
        outcome.summary += verbatim(" ");
        outcome.summary +=
            dropped == 1 ? say("1 accession is not listed: the scores tell nothing of it.")
                         : say("{} accessions are not listed: the scores tell nothing of them.", dropped);
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
         .results = {shape()},
         .examples = {{"Which accession hands on large fruit.",
                       {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"trait", "fruit_mass_g"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
