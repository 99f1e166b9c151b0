// SPDX-License-Identifier: MIT
#include "pipward/lineage/kinship_survey.h"

#include <algorithm>
#include <set>

#include "pipward/lineage/kinship_factors.h"

namespace pipward::lineage {
namespace {

// The chosen accessions with all that is calculated of them.
struct Line {
    PedigreeOrder order;
    KinshipFactors factors;
    std::vector<std::string> names;
    std::vector<int> numbers;
    std::vector<double> block;
    std::set<std::string> sports;

    const PedigreeMember& member(std::size_t i) const { return order.members[numbers[i]]; }
    double kinship(std::size_t i, std::size_t j) const { return block[i * names.size() + j]; }
};

Line calculated(const Orchard& orchard, std::vector<std::string> names) {
    Line line{pedigree_order(orchard.accessions, orchard.blend_members), {}, std::move(names), {}, {}, {}};
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
    line.factors = kinship_factors(line.order.members);
    line.block = kinship_block(line.factors, line.numbers, line.numbers);
    return line;
}

Sentence pair_remark(const Line& line, std::size_t i, std::size_t j, Relation relation) {
    if (!line.member(i).calculated) {
        return not_calculated_words(line.names[i], line.member(i));
    }
    if (!line.member(j).calculated) {
        return not_calculated_words(line.names[j], line.member(j));
    }
    if (relation == Relation::unknown) {
        return say("No parent of either is recorded.");
    }
    if (line.kinship(i, j) > 0 && (line.member(i).expected || line.member(j).expected)) {
        return say("Expected: the pedigree has a pollen blend.");
    }
    return {};
}

PairKinship pair_row(const Line& line, std::size_t i, std::size_t j) {
    const bool calculated_both = line.member(i).calculated && line.member(j).calculated;
    auto kinship = calculated_both ? std::optional{line.kinship(i, j)} : std::nullopt;
    const auto relation = relation_of(line.order, line.numbers[i], line.numbers[j], kinship);
    auto remark = pair_remark(line, i, j, relation);
    if (relation == Relation::unknown) {
        kinship.reset();
    }
    return {line.names[i], line.names[j], kinship, relation, std::move(remark)};
}

bool all_founders(const Line& line, const PedigreeMember& member) {
    const auto founder = [&](const ParentShare& parent) {
        return line.order.members[parent.parent].is_founder();
    };
    return std::ranges::all_of(member.seed, founder) && std::ranges::all_of(member.pollen, founder);
}

Sentence inbreeding_remark(const Line& line, std::size_t i) {
    const auto& member = line.member(i);
    if (!member.calculated) {
        return not_calculated_words(line.names[i], member);
    }
    if (member.is_founder()) {
        return say("No parent is recorded.");
    }
    if (member.seed.empty() || member.pollen.empty()) {
        return say("One parent is not recorded: assumed to be unrelated to the other.");
    }
    const double inbreeding = line.factors.inbreeding[line.numbers[i]];
    if (member.expected) {
        return say("Expected: the pedigree has a pollen blend.");
    }
    return inbreeding == 0 && all_founders(line, member)
               ? say("No parent of its parents is recorded: assumed to be unrelated.")
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

OwnInbreeding inbreeding_row(const Line& line, std::size_t i, const MeanOf& mean) {
    const auto& member = line.member(i);
    OwnInbreeding row{line.names[i], std::nullopt, std::nullopt, inbreeding_remark(line, i)};
    if (member.calculated && !member.is_founder()) {
        row.inbreeding = line.factors.inbreeding[line.numbers[i]];
    }
    if (mean.known > 0) {
        row.mean_kinship = mean.sum / mean.known;
    }
    if (line.sports.contains(line.names[i])) {
        row.remark += verbatim(row.remark.empty() ? "" : " ");
        row.remark += say("A sport: it has the parents of {}.", member.name);
    }
    return row;
}

}  // namespace

Sentence not_calculated_words(const std::string& name, const PedigreeMember& member) {
    return member.diploid ? say("Not calculated: {} descends from one that is not diploid.", name)
                          : say("Not calculated: {} is not diploid.", name);
}

KinshipSurvey kinship_survey(const Orchard& orchard, std::vector<std::string> names) {
    const auto line = calculated(orchard, std::move(names));
    KinshipSurvey survey;
    std::vector<MeanOf> means(line.names.size());
    for (std::size_t i = 0; i < line.names.size(); ++i) {
        for (std::size_t j = i + 1; j < line.names.size(); ++j) {
            survey.pairs.push_back(pair_row(line, i, j));
            if (survey.pairs.back().relation != Relation::same) {
                add_to(means[i], survey.pairs.back().kinship);
                add_to(means[j], survey.pairs.back().kinship);
            }
        }
    }
    std::ranges::stable_sort(survey.pairs, std::greater<>(),
                             [](const PairKinship& pair) { return pair.kinship.value_or(-1); });
    for (std::size_t i = 0; i < line.names.size(); ++i) {
        survey.singles.push_back(inbreeding_row(line, i, means[i]));
    }
    return survey;
}

}  // namespace pipward::lineage
