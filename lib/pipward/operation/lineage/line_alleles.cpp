// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/lineage/detail/accessions_parameter.h"
#include "pipward/operation/lineage/detail/line_alleles_tables.h"
#include "pipward/operation/detail/list.h"
#include "pipward/record/descent.h"
#include "pipward/seed/allele_evidence.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    Day as_of;
    std::string accessions;
};

// Apple and pear are not crossed.
bool may_be_crossed(const std::string& genus, const std::string& other) {
    return genus.empty() || other.empty() || genus == other;
}

Finding contradiction_finding(const seed::ContradictionRow& row) {
    return {Level::warning,
            "accession",
            row.accession,
            "s_alleles",
            row.alleles,
            row.verdict == lineage::SContradiction::rejected_pollen
                ? say("By its alleles it can only come of pollen that the style should have turned away.")
                : say("Its alleles do not fit its recorded parents."),
            say("Check its parents and all three records; s_contradiction tells which allele is missing.")};
}

struct Rows {
    std::vector<seed::MatchRow> matches;
    std::vector<seed::GenotypeRow> genotypes;
    std::vector<seed::ContradictionRow> contradictions;
    int not_crossed = 0;
};

Rows rows_of(const seed::Evidence& evidence, const std::vector<std::string>& names) {
    Rows rows;
    const OrchardIndex book(evidence.orchard);
    std::vector<std::string> genera;
    for (const auto& name : names) {
        genera.push_back(genus_of(book, name));
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (std::size_t j = 0; j < names.size(); ++j) {
            if (i != j && may_be_crossed(genera[i], genera[j])) {
                rows.matches.push_back(seed::match_row(evidence, names[i], names[j]));
            } else {
                rows.not_crossed += i < j ? 1 : 0;
            }
        }
        const auto more = seed::genotype_rows(evidence, names[i]);
        rows.genotypes.insert(rows.genotypes.end(), more.begin(), more.end());
    }
    for (const auto& accession : evidence.orchard.accessions) {
        if (const auto row = seed::contradiction_of(evidence, accession)) {
            rows.contradictions.push_back(*row);
        }
    }
    return rows;
}

Sentence summary_of(const place::ChosenAccessions& chosen, const Rows& rows) {
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
    const auto rows = rows_of(evidence, chosen.names);
    Outcome outcome;
    outcome.findings = reading.findings;
    for (const auto& row : rows.contradictions) {
        outcome.findings.push_back(contradiction_finding(row));
    }
    outcome.tables = {match_table(rows.matches), genotype_table(rows.genotypes),
                      contradiction_table(rows.contradictions)};
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
         .results = {match_shape(), genotype_shape(), contradiction_shape()},
         .examples =
             {{"The parents of this season's crosses.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
              {"Two seedlings whose alleles nobody has determined, with a cultivar.",
               {{"book", "BOOK"}, {"as-of", "2026-03-20"}, {"accessions", "16-01-01, 17-01-01, Wrenlea"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
