// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "pipward/lineage/kinship_factors.h"
#include "pipward/lineage/relation.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/lineage/detail/accessions_parameter.h"
#include "pipward/operation/detail/list.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string accessions;
};

struct KinshipRow {
    std::string a;
    std::string b;
    std::optional<double> kinship;
    lineage::Relation relation = lineage::Relation::unknown;
    Sentence note;
};

struct InbreedingRow {
    std::string accession;
    std::optional<double> inbreeding;
    std::optional<double> mean_kinship;
    Sentence note;
};

std::vector<CodeWord> relations_as_codes() {
    std::vector<CodeWord> codes;
    for (const auto& entry : lineage::words(lineage::Relation{})) {
        codes.push_back({std::string(entry.word), std::string(entry.meaning)});
    }
    return codes;
}

const std::vector<ColumnOf<KinshipRow>>& kinship_columns() {
    static const std::vector<ColumnOf<KinshipRow>> columns{
        {{"a", text, "", "One", "An accession."}, [](const KinshipRow& r) { return text_cell(r.a); }},
        {{"b", text, "", "Other", "Another one."}, [](const KinshipRow& r) { return text_cell(r.b); }},
        {{"kinship", number, "share", "Kinship",
          "Coefficient of kinship, 0 to 1: the inbreeding that a child of the two would have; unknown where "
          "it cannot be told."},
         [](const KinshipRow& r) { return number_cell(r.kinship, 5); }},
        {{"relationship", text, "", "Relationship", "What the one is to the other, by the nearest way.",
          relations_as_codes()},
         [](const KinshipRow& r) { return text_cell(to_word(r.relation)); }},
        {{"note", text, "", "Note", "What to bear in mind."},
         [](const KinshipRow& r) { return text_cell(r.note); }},
    };
    return columns;
}

const std::vector<ColumnOf<InbreedingRow>>& inbreeding_columns() {
    static const std::vector<ColumnOf<InbreedingRow>> columns{
        {{"accession", text, "", "Accession", "Its name."},
         [](const InbreedingRow& r) { return text_cell(r.accession); }},
        {{"f", number, "share", "Inbreeding",
          "Coefficient of inbreeding, 0 to 1; unknown where it cannot be told."},
         [](const InbreedingRow& r) { return number_cell(r.inbreeding, 5); }},
        {{"mean_kinship", number, "share", "Mean kinship",
          "Mean of its known kinships with the others of this list, sports left out: the lower, the fresher "
          "its blood."},
         [](const InbreedingRow& r) { return number_cell(r.mean_kinship, 5); }},
        {{"note", text, "", "Note", "What to bear in mind."},
         [](const InbreedingRow& r) { return text_cell(r.note); }},
    };
    return columns;
}

TableShape kinship_shape() {
    return shape_of<KinshipRow>(
        {"kinship", "Kinship", "Every two of the accessions, the most closely related first.", false, {}},
        kinship_columns());
}

TableShape inbreeding_shape() {
    return shape_of<InbreedingRow>(
        {"inbreeding", "Inbreeding", "Each of the accessions: how inbred it is itself.", false, {}},
        inbreeding_columns());
}

// The chosen accessions with all that is reckoned of them.
struct Line {
    lineage::PedigreeOrder order;
    lineage::KinshipFactors factors;
    std::vector<std::string> names;
    std::vector<int> numbers;
    std::vector<double> block;
    std::set<std::string> sports;

    const lineage::PedigreeMember& member(std::size_t i) const { return order.members[numbers[i]]; }
    double kinship(std::size_t i, std::size_t j) const { return block[i * names.size() + j]; }
};

Line reckoned(const Orchard& orchard, std::vector<std::string> names) {
    Line line{
        lineage::pedigree_order(orchard.accessions, orchard.blend_members), {}, std::move(names), {}, {}, {}};
    if (!line.order.loops.empty()) {
        throw Error(Trouble::input, line.order.loops);
    }
    // Some names stand in a goal only: they are founders that nothing is known of.
    for (const auto& name : line.names) {
        const auto next = static_cast<int>(line.order.members.size());
        const auto [known, added] = line.order.number.try_emplace(name, next);
        if (added) {
            line.order.members.push_back({name, {}, {}});
        }
        line.numbers.push_back(known->second);
    }
    for (const auto& accession : orchard.accessions) {
        if (accession.sport_of) {
            line.sports.insert(accession.name);
        }
    }
    line.factors = lineage::kinship_factors(line.order.members);
    line.block = lineage::kinship_block(line.factors, line.numbers, line.numbers);
    return line;
}

Sentence why_not_reckoned(const std::string& name, const lineage::PedigreeMember& member) {
    return member.diploid ? say("Not reckoned: {} comes of one that is not diploid.", name)
                          : say("Not reckoned: {} is not diploid.", name);
}

Sentence pair_note(const Line& line, std::size_t i, std::size_t j, lineage::Relation relation) {
    if (!line.member(i).reckoned) {
        return why_not_reckoned(line.names[i], line.member(i));
    }
    if (!line.member(j).reckoned) {
        return why_not_reckoned(line.names[j], line.member(j));
    }
    if (relation == lineage::Relation::unknown) {
        return say("No parent of either is recorded.");
    }
    if (line.kinship(i, j) > 0 && (line.member(i).expected || line.member(j).expected)) {
        return say("Expected: a pollen blend stands in the line.");
    }
    return {};
}

KinshipRow pair_row(const Line& line, std::size_t i, std::size_t j) {
    const bool reckoned_both = line.member(i).reckoned && line.member(j).reckoned;
    auto kinship = reckoned_both ? std::optional{line.kinship(i, j)} : std::nullopt;
    const auto relation = lineage::relation_of(line.order, line.numbers[i], line.numbers[j], kinship);
    auto note = pair_note(line, i, j, relation);
    if (relation == lineage::Relation::unknown) {
        kinship.reset();
    }
    return {line.names[i], line.names[j], kinship, relation, std::move(note)};
}

bool is_founder(const lineage::PedigreeMember& member) {
    return member.seed.empty() && member.pollen.empty();
}

bool all_founders(const Line& line, const lineage::PedigreeMember& member) {
    const auto founder = [&](const lineage::ParentShare& parent) {
        return is_founder(line.order.members[parent.parent]);
    };
    return std::ranges::all_of(member.seed, founder) && std::ranges::all_of(member.pollen, founder);
}

Sentence inbreeding_note(const Line& line, std::size_t i) {
    const auto& member = line.member(i);
    if (!member.reckoned) {
        return why_not_reckoned(line.names[i], member);
    }
    if (is_founder(member)) {
        return say("No parent is recorded.");
    }
    if (member.seed.empty() || member.pollen.empty()) {
        return say("One parent is not recorded: taken as unrelated to the other.");
    }
    const double inbreeding = line.factors.inbreeding[line.numbers[i]];
    if (member.expected) {
        return say("Expected: a pollen blend stands in the line.");
    }
    return inbreeding == 0 && all_founders(line, member)
               ? say("No parent of its parents is recorded: taken as unrelated.")
               : Sentence{};
}

struct MeanOf {
    double sum = 0;
    int known = 0;
};

void add_to(MeanOf& mean, const std::optional<double>& kinship) {
    mean.sum += kinship.value_or(0);
    mean.known += kinship ? 1 : 0;
}

InbreedingRow inbreeding_row(const Line& line, std::size_t i, const MeanOf& mean) {
    const auto& member = line.member(i);
    InbreedingRow row{line.names[i], std::nullopt, std::nullopt, inbreeding_note(line, i)};
    if (member.reckoned && !is_founder(member)) {
        row.inbreeding = line.factors.inbreeding[line.numbers[i]];
    }
    if (mean.known > 0) {
        row.mean_kinship = mean.sum / mean.known;
    }
    if (line.sports.contains(line.names[i])) {
        row.note += verbatim(row.note.empty() ? "" : " ");
        row.note += say("A sport: it has the parents of {}.", member.name);
    }
    return row;
}

Sentence summary_of(const place::ChosenAccessions& chosen, const std::vector<KinshipRow>& pairs) {
    const KinshipRow* closest = nullptr;
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
        words += say("The closest are {} and {}, {:.3f}.", closest->a, closest->b, *closest->kinship);
    }
    return words;
}

Outcome run(const Request& request, const Run& lent) {
    const auto reading = read_checked_without_weather(request.book, request.as_of, lent);
    const auto chosen = place::chosen_accessions(reading.orchard, request.accessions, request.as_of);
    lent.step(0.3, say("Reckoning the kinship"));
    const auto line = reckoned(reading.orchard, chosen.names);
    std::vector<KinshipRow> pairs;
    std::vector<MeanOf> means(line.names.size());
    for (std::size_t i = 0; i < line.names.size(); ++i) {
        for (std::size_t j = i + 1; j < line.names.size(); ++j) {
            pairs.push_back(pair_row(line, i, j));
            if (pairs.back().relation != lineage::Relation::same) {
                add_to(means[i], pairs.back().kinship);
                add_to(means[j], pairs.back().kinship);
            }
        }
    }
    std::ranges::stable_sort(pairs, std::greater<>(),
                             [](const KinshipRow& r) { return r.kinship.value_or(-1); });
    lent.step(0.8, say("Reckoning the inbreeding"));
    std::vector<InbreedingRow> singles;
    for (std::size_t i = 0; i < line.names.size(); ++i) {
        singles.push_back(inbreeding_row(line, i, means[i]));
    }
    Outcome outcome;
    outcome.findings = reading.findings;
    outcome.tables = {table_of<KinshipRow>(kinship_shape(), pairs, kinship_columns()),
                      table_of<InbreedingRow>(inbreeding_shape(), singles, inbreeding_columns())};
    outcome.summary = summary_of(chosen, pairs);
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> line_kinship() {
    return declare<Request>(
        {.about = {"line-kinship", "Kinship and inbreeding", "Line",
                   "Tells of every two accessions how much blood they share by their recorded parents, what "
                   "they are to each other, and how inbred each is itself. Unknown parents count as "
                   "unrelated, a blend as a mixture of its members, a sport as its original; triploids and "
                   "what comes of them are not reckoned."},
         .parameters = {book_parameter(&Request::book), accessions_parameter(&Request::accessions),
                        as_of_parameter(&Request::as_of)},
         .results = {kinship_shape(), inbreeding_shape()},
         .examples = {{"The parents of this season's crosses.", {{"book", "BOOK"}, {"as-of", "2026-03-20"}}},
                      {"A mother, a child of hers and a tree of the seedling block.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"accessions", "Mossgate Late, LF 09-117, 16-01-04"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
