// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/passport_file.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/record/orchard_index.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string institute;
    bool seedlings = true;
};

struct ExportRow {
    const Accession* accession = nullptr;
    intake::Passport passport;
};

std::string value_of(const ExportRow& row, std::string_view name) {
    const auto found = row.passport.find(name);
    return found == row.passport.end() ? std::string{} : found->second;
}

const std::vector<ColumnOf<ExportRow>>& columns() {
    static const std::vector<ColumnOf<ExportRow>> all{
        {{"accession", text, "", "Accession", "Its name in the book."},
         [](const ExportRow& r) { return text_cell(r.accession->name); }},
        {{"genus", text, "", "Genus", "GENUS."},
         [](const ExportRow& r) { return text_cell(value_of(r, "GENUS")); }},
        {{"species", text, "", "Species", "SPECIES."},
         [](const ExportRow& r) { return text_cell(value_of(r, "SPECIES")); }},
        {{"status", text, "", "Status", "SAMPSTAT: the code of its biological status."},
         [](const ExportRow& r) { return text_cell(value_of(r, "SAMPSTAT")); }},
        {{"ancestry", text, "", "Ancestry", "ANCEST: its parents in Purdy notation."},
         [](const ExportRow& r) { return text_cell(value_of(r, "ANCEST")); }},
        {{"acquired", text, "", "Acquired", "ACQDATE: when the first tree of it was planted, YYYYMMDD."},
         [](const ExportRow& r) { return text_cell(value_of(r, "ACQDATE")); }},
    };
    return all;
}

constexpr TableOf<ExportRow> table{
    "passport", "Passport data", "The accessions of the file, with their main descriptors.", columns, [] {
        return TableView{.first = {"accession", "genus", "species", "status", "ancestry", "acquired"}};
    }};

Findings check(const Request& request) {
    if (request.institute.empty() || intake::is_institute_code(request.institute)) {
        return {};
    }
    return {about_parameter("institute", request.institute, say("This is no code of an institute."),
                            say("Write three capitals and three digits, as in AAA999, or leave it out."))};
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_line(request.book);
    Outcome outcome;
    outcome.findings = reading.findings;
    lent.step(0.5, say("Writing the passports"));
    const OrchardIndex book(reading.orchard);
    std::vector<ExportRow> rows;
    std::vector<intake::Passport> passports;
    for (const auto& accession : reading.orchard.accessions) {
        if (request.seedlings || accession.kind != AccessionKind::seedling) {
            rows.push_back({&accession, intake::passport_of(
                                            accession, intake::facts_of(accession, reading.orchard,
                                                                        request.institute, request.as_of))});
            passports.push_back(rows.back().passport);
        }
    }
    outcome.tables = {table.of(rows)};
    outcome.files = {{"passport.csv", "text/csv", intake::passport_file(passports)}};
    outcome.summary = rows.size() == 1 ? say("The passport of 1 accession.")
                                       : say("The passports of {} accessions.", rows.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> passport_export() {
    return declare<Request>(
        {.about = {"passport-export", "Export passport data", "Pedigree",
                   "Writes the accessions as a CSV file of multi-crop passport descriptors (FAO and "
                   "Bioversity, V2.1), as genebanks exchange them: name, genus and species, status, parents, "
                   "first planting. What the standard has no descriptor for, such as S-alleles, stands in "
                   "REMARKS. The place of collecting is left empty: the orchard is not where a variety was "
                   "found."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::institute, "institute", "Institute",
                                  "Your institute's code in FAO's list, as in AAA999; empty where you have "
                                  "none."),
                        parameter(&Request::seedlings, "with-seedlings", "Seedlings too",
                                  "Whether single seedlings are written as well."),
                        as_of_parameter(&Request::as_of)},
         .results = {table.shape()},
         .examples = {{"Every accession of the book.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"Without the seedlings, for an institute.",
                       {{"book", "BOOK"},
                        {"institute", "ZZZ999"},
                        {"with-seedlings", "no"},
                        {"as-of", "2026-03-20"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
