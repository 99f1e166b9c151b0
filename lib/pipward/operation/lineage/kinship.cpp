// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/lineage/kinship_survey.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/lineage/detail/accessions_parameter.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string accessions;
};

const std::vector<ColumnOf<lineage::PairKinship>>& kinship_columns() {
    static const std::vector<ColumnOf<lineage::PairKinship>> columns{
        {{"accession_a", text, "", "One", "An accession."},
         [](const lineage::PairKinship& r) { return text_cell(r.one); }},
        {{"accession_b", text, "", "Other", "Another one."},
         [](const lineage::PairKinship& r) { return text_cell(r.other); }},
        {{"kinship", number, "0 to 1", "Kinship",
          "Coefficient of kinship: the inbreeding of an offspring of the two; unknown where it cannot be "
          "calculated."},
         [](const lineage::PairKinship& r) { return number_cell(r.kinship, 5); }},
        {{"relationship", text, "", "Relationship",
          "Relationship of the one to the other, by the nearest path.", codes_of<lineage::Relation>()},
         [](const lineage::PairKinship& r) { return text_cell(to_word(r.relation)); }},
        {{"remark", text, "", "Remark", "Caution."},
         [](const lineage::PairKinship& r) { return text_cell(r.remark); }},
    };
    return columns;
}

constexpr TableOf<lineage::PairKinship> kinship_table{
    "kinship", "Kinship", "Every pair of the accessions, the most closely related first.", kinship_columns,
    [] {
        return TableView{.first = {"accession_a", "accession_b", "kinship", "relationship"},
                         .below = {"remark"}};
    }};

const std::vector<ColumnOf<lineage::OwnInbreeding>>& inbreeding_columns() {
    static const std::vector<ColumnOf<lineage::OwnInbreeding>> columns{
        {{"accession", text, "", "Accession", "Its name."},
         [](const lineage::OwnInbreeding& r) { return text_cell(r.accession); }},
        {{"inbreeding", number, "0 to 1", "Inbreeding",
          "Coefficient of inbreeding; unknown where it cannot be calculated."},
         [](const lineage::OwnInbreeding& r) { return number_cell(r.inbreeding, 5); }},
        {{"mean_kinship", number, "0 to 1", "Mean kinship",
          "Mean of its known kinships with the others of this list, sports left out: the lower, the less it "
          "is related to them."},
         [](const lineage::OwnInbreeding& r) { return number_cell(r.mean_kinship, 5); }},
        {{"remark", text, "", "Remark", "Caution."},
         [](const lineage::OwnInbreeding& r) { return text_cell(r.remark); }},
    };
    return columns;
}

constexpr TableOf<lineage::OwnInbreeding> inbreeding_table{
    "inbreeding", "Inbreeding", "Each of the accessions: how inbred it is itself.", inbreeding_columns, [] {
        return TableView{.first = {"accession", "inbreeding", "mean_kinship"}, .below = {"remark"}};
    }};

Sentence summary_of(const place::ChosenAccessions& chosen, const std::vector<lineage::PairKinship>& pairs) {
    const lineage::PairKinship* closest = nullptr;
    std::size_t known = 0;
    for (const auto& pair : pairs) {
        known += pair.kinship ? 1 : 0;
        if (pair.kinship && pair.relation != lineage::Relation::same &&
            (closest == nullptr || *pair.kinship > *closest->kinship)) {
            closest = &pair;
        }
    }
    auto words = say("{}: kinship is known of {} of {} pairs.", chosen.which, known, pairs.size());
    if (closest != nullptr && *closest->kinship > 0) {
        words += verbatim(" ");
        words += say("The closest are {} and {}, {:.3f}.", closest->one, closest->other, *closest->kinship);
    }
    return words;
}

Outcome run(const Request& request, const Run& lent) {
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto chosen = place::chosen_accessions(reading.orchard, request.accessions, request.as_of);
    lent.step(0.3, say("Calculating the kinship"));
    const auto survey = lineage::kinship_survey(reading.orchard, chosen.names);
    Outcome outcome;
    outcome.findings = reading.findings;
    outcome.tables = {kinship_table.of(survey.pairs), inbreeding_table.of(survey.singles)};
    outcome.summary = summary_of(chosen, survey.pairs);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> kinship() {
    return declare<Request>(
        {.about = {"kinship", "Kinship and inbreeding", "Pedigree",
                   "Calculates for every pair of accessions how closely related they are by their recorded "
                   "parents, and for each its inbreeding. Unknown parents count as unrelated, a blend as a "
                   "mixture of its members, a sport as its original; triploids and their descendants are "
                   "left out."},
         .parameters = {book_parameter(&Request::book), accessions_parameter(&Request::accessions),
                        as_of_parameter(&Request::as_of)},
         .results = {kinship_table.shape(), inbreeding_table.shape()},
         .examples = {{"The parents of this season's crosses.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"A parent, its offspring and a tree of the seedling block.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"accessions", "Mossgate Late, LF 09-117, 16-01-04"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
