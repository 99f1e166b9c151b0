// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/intake/passport_judging.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/input_file.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    InputFile file;
    bool write = false;
};

const std::vector<ColumnOf<intake::JudgedPassport>>& columns() {
    static const std::vector<ColumnOf<intake::JudgedPassport>> all{
        {{"line", whole, "", "File line", "Line of the file."},
         [](const intake::JudgedPassport& p) { return whole_cell(p.line); }},
        {{"accession", text, "", "Accession", "Its name."},
         [](const intake::JudgedPassport& p) { return text_cell(p.reading.accession.name); }},
        {{"action", text, "", "What happens", "What happens to the line.", codes_of<intake::PassportFate>()},
         [](const intake::JudgedPassport& p) { return text_cell(to_word(p.fate)); }},
        {{"kind", text, "", "Kind", "The sort of accession by its status."},
         [](const intake::JudgedPassport& p) { return text_cell(to_word(p.reading.accession.kind)); }},
        {{"seed_parent", text, "", "Seed parent", "As it would be written."},
         [](const intake::JudgedPassport& p) { return cell(p.reading.accession.seed_parent); }},
        {{"pollen_parent", text, "", "Pollen parent", "As it would be written."},
         [](const intake::JudgedPassport& p) { return cell(p.reading.accession.pollen_parent); }},
        {{"remarks", text, "", "Remarks",
          "What differs from the book, what is kept in the remark, what is unknown."},
         [](const intake::JudgedPassport& p) { return text_cell(joined(p.remarks, verbatim("; "))); }},
    };
    return all;
}

constexpr TableOf<intake::JudgedPassport> table{
    "passport_line", "Lines of the file", "What happens to each line of the file.", columns, [] {
        return TableView{.first = {"line", "accession", "action", "kind", "seed_parent", "pollen_parent"},
                         .below = {"remarks"}};
    }};

std::ptrdiff_t count(const intake::PassportJudgement& judgement, intake::PassportFate fate) {
    return std::ranges::count(judgement.passports, fate, &intake::JudgedPassport::fate);
}

Sentence summary_of(const Request& request, const intake::PassportJudgement& judgement) {
    const auto others =
        say("In the book already: {}; left out: {}.", count(judgement, intake::PassportFate::known),
            count(judgement, intake::PassportFate::left_out));
    const auto added = count(judgement, intake::PassportFate::added);
    const auto errors = std::ranges::count(judgement.findings, Level::error, &Finding::level);
    const auto first =
        errors == 1     ? say("1 error prevents the import: nothing would be written.")
        : errors > 1    ? say("{} errors prevent the import: nothing would be written.", errors)
        : request.write ? say("Accessions added: {}.", added)
                        : say("Nothing was written; with write these accessions would be added: {}.", added);
    return first + verbatim(" ") + others;
}

book::BookReading read_book_for(const BookName& book) {
    auto reading = book::read_tables(book, {"accession", "blend"});
    expect_no_errors(reading.findings);
    return reading;
}

Outcome take_in(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = read_book_for(request.book);
    lent.step(0.3, say("Reading the file"));
    const auto& path = request.file.path;
    const auto name = path.substr(path.find_last_of("/\\") + 1);
    const auto judgement = intake::judge_passports(intake::read_passport_file(read_input_file(path), name),
                                                   name, reading.orchard);
    Outcome outcome;
    outcome.findings = reading.findings;
    add_findings(outcome, judgement.findings);
    outcome.tables = {table.of(judgement.passports)};
    outcome.summary = summary_of(request, judgement);
    if (request.write) {
        expect_no_errors(outcome.findings);
        lent.step(0.8, say("Writing to the book"));
        if (const auto change = intake::change_of(judgement); !change.added.empty()) {
            book::apply_change(request.book, change);
        }
    }
    lent.step(1.0, say("Done"));
    return outcome;
}

Outcome run(const Request& request, const Run& lent) {
    return in_one_change_if(request.write, request, lent, take_in);
}

}  // namespace

std::unique_ptr<const Operation> passport_import() {
    return declare<Request>(
        {.about = {"passport-import", "Import passport data", "Pedigree",
                   "Reads accessions from a CSV file of multi-crop passport descriptors (FAO and Bioversity, "
                   "V2.1) and shows what would happen to each line; with write they are added, all at once "
                   "or not at all. Parents are taken from ANCEST where they are two known names. Descriptors "
                   "without a column in the book are kept in the accession's remark. Existing accessions are "
                   "never changed: differences are shown."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::file, "passport-file", "Passport file",
                                  "A CSV file in UTF-8, with commas or semicolons, whose header names "
                                  "descriptors.")
                            .named(sheet_files)
                            .required(),
                        write_parameter(&Request::write)},
         .results = {table.shape()},
         .examples = {{"What would come of a file.",
                       {{"book", "BOOK"}, {"passport-file", "FILE"}},
                       "ACCENUMB,ACCENAME,GENUS,SPECIES,SAMPSTAT,ANCEST,ACQDATE\n"
                       "P-1,Pellhurst,Malus,domestica,500,Wrenlea/Owlcombe,1975----\n"
                       ",Wrenlea,Malus,domestica,500,,\n"},
                      {"The same, written.",
                       {{"book", "BOOK"}, {"passport-file", "FILE"}, {"write", "yes"}},
                       "ACCENAME;GENUS;SPECIES;SAMPSTAT;ANCEST\n"
                       "Pellhurst;Malus;domestica;500;Wrenlea x Owlcombe\n"}},
         .run = run});
}

}  // namespace pipward::operation::detail
