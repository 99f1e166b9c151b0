// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/lineage/detail/accessions_parameter.h"
#include "pipward/operation/lineage/detail/s_allele_tables.h"
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
    const auto reading = read_checked_without_ground(request.book, request.as_of, lent);
    const auto chosen = place::chosen_accessions(reading.orchard, request.accessions, request.as_of);
    lent.step(0.3, say("Comparing alleles"));
    const auto evidence = seed::collected_evidence(reading.orchard, request.as_of);
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

std::unique_ptr<const Operation> s_alleles() {
    return declare<Request>(
        {.about =
             {"s-alleles", "S-alleles and parentage", "Pedigree",
              "Shows for every pair of accessions whether they are compatible by their S-alleles, infers "
              "possible S-alleles where none were determined, and lists recorded parents that the alleles "
              "contradict. Evidence from alleles and from counts of pollinated flowers is kept separate."},
         .parameters = {book_parameter(&Request::book), accessions_parameter(&Request::accessions),
                        as_of_parameter(&Request::as_of)},
         .results = {match_table.shape(), genotype_table.shape(), contradiction_table.shape()},
         .examples =
             {{"The parents of this season's crosses.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
              {"Two seedlings with undetermined alleles, with a cultivar.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"accessions", "16-01-01, 17-01-01, Wrenlea"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
