// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/lineage/detail/accessions_parameter.h"
#include "pipward/operation/lineage/detail/line_alleles_tables.h"
#include "pipward/seed/allele_survey.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    Day as_of;
    std::string accessions;
};

Sentence summary_of(const place::ChosenAccessions& chosen, const seed::AlleleSurvey& rows) {
    const auto told = [](const seed::MatchRow& row) { return row.match != lineage::SMatch::unknown; };
    auto words = say("{}: the match is known of {} of {} crosses.", chosen.which,
                     std::ranges::count_if(rows.matches, told), rows.matches.size());
    if (rows.not_crossed > 0) {
        words += verbatim(" ");
        words += say("Apples with pears are left out.");
    }
    words += verbatim(" ");
    words +=
        rows.contradictions.empty() ? say("No recorded parents are contradicted by alleles.")
        : rows.contradictions.size() == 1
            ? say("The parents of 1 accession are contradicted by alleles.")
            : say("The parents of {} accessions are contradicted by alleles.", rows.contradictions.size());
    return words;
}

Outcome run(const Request& request, const Run& lent) {
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto chosen = place::chosen_accessions(reading.orchard, request.accessions, request.as_of);
    lent.step(0.3, say("Holding alleles against each other"));
    const auto evidence = seed::gathered_evidence(reading.orchard, request.as_of);
    const auto rows = seed::allele_survey(evidence, chosen.names);
    Outcome outcome;
    outcome.findings = reading.findings;
    for (const auto& row : rows.contradictions) {
        outcome.findings.push_back(seed::contradiction_finding(row));
    }
    outcome.tables = {match_table.of(rows.matches), genotype_table.of(rows.genotypes),
                      contradiction_table.of(rows.contradictions)};
    outcome.summary = summary_of(chosen, rows);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> line_alleles() {
    return declare<Request>(
        {.about = {"line-alleles", "S-alleles and parentage", "Line",
                   "Tells of every two accessions whether one's style lets the other's pollen through, what "
                   "S-alleles those may have that nobody has determined, and which recorded parents the "
                   "alleles contradict. What the alleles tell and what the counts of worked crosses tell "
                   "stand apart."},
         .parameters = {book_parameter(&Request::book), accessions_parameter(&Request::accessions),
                        as_of_parameter(&Request::as_of)},
         .results = {match_table.shape(), genotype_table.shape(), contradiction_table.shape()},
         .examples =
             {{"The parents of this season's crosses.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
              {"Two seedlings whose alleles nobody has determined, with a cultivar.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"accessions", "16-01-01, 17-01-01, Wrenlea"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
