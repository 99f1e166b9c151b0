// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/operation/accession_choice.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/field_counts.h"
#include "pipward/operation/line_alleles_tables.h"
#include "pipward/operation/list.h"
#include "pipward/operation/read_checked.h"
#include "pipward/seed/learning.h"

namespace pipward {
namespace {

// A count that chance alone explains more rarely than this is told as a sign.
constexpr double rare = 0.01;
constexpr double certain = 1 - 1e-9;

struct Request {
    BookName book;
    Day as_of;
    std::string accessions;
};

// All that is known of the alleles and of the crosses that were worked.
struct Evidence {
    const Orchard& orchard;
    PedigreeOrder order;
    std::vector<std::optional<SAlleles>> recorded;
    std::vector<SKnowledge> knowledge;
    std::map<PairOfParents, CrossCount> counts;
    SetChances chances;

    SKnowledge of(const std::string& name) const {
        const auto member = order.number.find(name);
        return member == order.number.end() ? SKnowledge{} : knowledge[member->second];
    }
    std::optional<SAlleles> recorded_of(const std::string& name) const {
        const auto member = order.number.find(name);
        return member == order.number.end() ? std::nullopt : recorded[member->second];
    }
};

Evidence gathered(const Orchard& orchard, Day as_of) {
    Evidence evidence{orchard, pedigree_order(orchard.accessions, orchard.blend_members), {}, {}, {}, {}};
    if (!evidence.order.loops.empty()) {
        throw Error(Trouble::input, evidence.order.loops);
    }
    evidence.recorded = recorded_s_alleles(orchard.accessions, evidence.order);
    evidence.knowledge = s_knowledge(evidence.order, evidence.recorded);
    evidence.counts = field_counts(orchard, as_of);
    evidence.chances.set = learn(orchard, as_of, CrossingAssumptions{}).fruit_set.used;
    return evidence;
}

std::string percent(double share) {
    return fmt::format("{:.3g} %", 100 * share);
}

bool is_recorded(const SKnowledge& knowledge) {
    return knowledge.source == SSource::recorded;
}

Sentence match_words(const SMatchChances& chances, const SKnowledge& style, const SKnowledge& donor) {
    if (style.genotypes.empty() || donor.genotypes.empty()) {
        return say("The alleles of one of them are not known.");
    }
    if (is_recorded(style) && is_recorded(donor)) {
        return verbatim(to_text(style.genotypes.front().alleles) + " × " +
                        to_text(donor.genotypes.front().alleles));
    }
    std::vector<Sentence> parts;
    const auto add = [&](double chance, const Sentence& word) {
        if (chance > 0) {
            parts.push_back(say("{} {}", word, percent(chance)));
        }
    };
    add(chances.full, say("full"));
    add(chances.half, say("half"));
    add(chances.none, say("none"));
    add(chances.unknown, say("not known"));
    return say("By the parents' alleles: {}.", joined(parts, verbatim(", ")));
}

SMatch certain_match(const SMatchChances& chances) {
    return chances.full > certain   ? SMatch::full
           : chances.half > certain ? SMatch::half
           : chances.none > certain ? SMatch::none
                                    : SMatch::unknown;
}

Sentence count_words(const CrossCount& count) {
    return count.flowers == 1 ? say("{} of 1 flower set.", count.set)
                              : say("{} of {} flowers set.", count.set, count.flowers);
}

Sentence none_words(const CrossCount& count, const SetChances& chances) {
    return say(
        "None of {} flowers set; of a compatible cross, where {} set on the mean, chance would do that "
        "once in {:.2g} times.",
        count.flowers, percent(chances.set), 1 / chance_of_none(count.flowers, chances.set));
}

Sentence field_words(const CrossCount& count, SMatch match, const SetChances& chances) {
    auto words = count.set == 0 ? none_words(count, chances) : count_words(count);
    if (match == SMatch::none && count.set > 0 && chance_by_leak(count, chances.leak) < rare) {
        words += verbatim(" ");
        words += say("That is against the alleles: look at both records, or foreign pollen came in.");
    }
    if ((match == SMatch::full || match == SMatch::half) && count.set == 0 &&
        chance_of_none(count.flowers, chances.set) < rare) {
        words += verbatim(" ");
        words += say("The alleles do not explain it: frost and dead pollen do that too.");
    }
    return words;
}

MatchRow match_row(const Evidence& evidence, const std::string& seed, const std::string& pollen) {
    const auto style = evidence.of(seed);
    const auto donor = evidence.of(pollen);
    const auto chances = s_match_chances(style, donor);
    MatchRow row{seed, pollen, certain_match(chances), std::nullopt, {}, std::nullopt, std::nullopt, {}};
    if (chances.unknown == 0) {
        row.share = chances.share;
    }
    row.from_alleles = match_words(chances, style, donor);
    if (const auto count = evidence.counts.find({seed, pollen}); count != evidence.counts.end()) {
        row.flowers = count->second.flowers;
        row.set = count->second.set;
        row.from_field = field_words(count->second, row.match, evidence.chances);
    }
    return row;
}

// Apple and pear are not crossed.
bool may_be_crossed(const Orchard& orchard, const std::string& a, const std::string& b) {
    const auto one = genus_of(orchard, a);
    const auto other = genus_of(orchard, b);
    return one.empty() || other.empty() || one == other;
}

// A cross of the accession with a partner whose alleles are recorded.
struct Trial {
    const PairOfParents* parents = nullptr;
    const CrossCount* count = nullptr;
    SAlleles partner;
    bool as_seed = false;  // the accession is the seed parent
};

std::vector<Trial> trials_of(const Evidence& evidence, const std::string& name) {
    std::vector<Trial> trials;
    for (const auto& [parents, count] : evidence.counts) {
        const bool as_seed = parents.first == name;
        if (!as_seed && parents.second != name) {
            continue;
        }
        if (const auto partner = evidence.recorded_of(as_seed ? parents.second : parents.first)) {
            trials.push_back({&parents, &count, *partner, as_seed});
        }
    }
    return trials;
}

double likelihood(const std::vector<Trial>& trials, const SAlleles& alleles, const SetChances& chances) {
    double product = 1;
    for (const auto& trial : trials) {
        const auto met =
            trial.as_seed ? s_compatibility(alleles, trial.partner) : s_compatibility(trial.partner, alleles);
        const auto likely = field_likelihood(*trial.count, chances);
        product *= met.match == SMatch::none ? likely.incompatible : likely.compatible;
    }
    return product;
}

Sentence trial_words(const std::vector<Trial>& trials, const SetChances& chances) {
    std::vector<Sentence> words;
    for (const auto& trial : trials) {
        const auto& count = *trial.count;
        words.push_back(say("{} × {}: {}", trial.parents->first, trial.parents->second,
                            count.set == 0 ? none_words(count, chances) : count_words(count)));
    }
    return joined(words, verbatim(" "));
}

Sentence nothing_words(const Evidence& evidence, const PedigreeMember& member) {
    const auto tells = [&](const ParentShare& parent) {
        return !evidence.knowledge[parent.parent].genotypes.empty();
    };
    if (!member.diploid) {
        return say("It is not diploid: nothing is inferred.");
    }
    return !member.seed.empty() && !member.pollen.empty() && std::ranges::all_of(member.seed, tells) &&
                   std::ranges::all_of(member.pollen, tells)
               ? say("Nothing fits: by the alleles of its parents the style turns all this pollen away.")
               : say("Neither it nor its parents have alleles on record.");
}

Sentence source_words(const Evidence& evidence, const std::string& name, const SKnowledge& knowledge) {
    const auto member = evidence.order.number.find(name);
    if (member == evidence.order.number.end()) {
        return say("Neither it nor its parents have alleles on record.");
    }
    const auto& of = evidence.order.members[member->second];
    if (knowledge.source == SSource::nothing) {
        return nothing_words(evidence, of);
    }
    if (of.name != name) {
        return say("Those of {}, whose sport it is.", of.name);
    }
    if (knowledge.source == SSource::recorded) {
        return {};
    }
    return of.expected ? say("One allele of each parent; the blend is one pool of pollen.")
                       : say("One allele of each parent, of the pollen only such as the style lets through.");
}

std::vector<GenotypeRow> genotype_rows(const Evidence& evidence, const std::string& name) {
    const auto knowledge = evidence.of(name);
    const auto source = source_words(evidence, name, knowledge);
    if (knowledge.genotypes.empty()) {
        return {{name, std::nullopt, knowledge.source, std::nullopt, std::nullopt, source, {}}};
    }
    const bool guessed = knowledge.source == SSource::parents;
    const auto trials = guessed ? trials_of(evidence, name) : std::vector<Trial>{};
    double sum = 0;
    for (const auto& genotype : knowledge.genotypes) {
        sum += genotype.chance * likelihood(trials, genotype.alleles, evidence.chances);
    }
    std::vector<GenotypeRow> rows;
    for (const auto& genotype : knowledge.genotypes) {
        GenotypeRow row{name, genotype.alleles, knowledge.source, std::nullopt, std::nullopt, source, {}};
        if (guessed) {
            row.chance = genotype.chance;
        }
        if (!trials.empty() && sum > 0) {
            row.field_chance = genotype.chance * likelihood(trials, genotype.alleles, evidence.chances) / sum;
            row.from_field = trial_words(trials, evidence.chances);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

// Of a parent by name; of a blend all that its members have, nothing where one of them is not known.
std::optional<SAlleles> parent_alleles(const Evidence& evidence, const std::vector<ParentShare>& parents) {
    SAlleles all;
    double told = 0;
    for (const auto& parent : parents) {
        const auto& recorded = evidence.recorded[parent.parent];
        if (!recorded || !evidence.order.members[parent.parent].diploid) {
            return std::nullopt;
        }
        all.insert(recorded->begin(), recorded->end());
        told += parent.share;
    }
    return told > certain ? std::optional{all} : std::nullopt;
}

std::optional<ContradictionRow> contradiction_of(const Evidence& evidence, const Accession& accession) {
    const int number = evidence.order.number.at(accession.name);
    const auto& member = evidence.order.members[number];
    if (!evidence.recorded[number] || !member.diploid || member.name != accession.name) {
        return std::nullopt;
    }
    const auto seed = parent_alleles(evidence, member.seed);
    const auto pollen = parent_alleles(evidence, member.pollen);
    const auto verdict = s_contradiction(*evidence.recorded[number], seed, pollen);
    if (!verdict) {
        return std::nullopt;
    }
    return ContradictionRow{accession.name,
                            to_text(*evidence.recorded[number]),
                            accession.seed_parent.value_or(""),
                            seed ? to_text(*seed) : "",
                            accession.pollen_parent.value_or(""),
                            pollen ? to_text(*pollen) : "",
                            *verdict};
}

Finding contradiction_finding(const ContradictionRow& row) {
    return {Level::warning,
            "accession",
            row.accession,
            "s_alleles",
            row.alleles,
            row.verdict == SContradiction::rejected_pollen
                ? say("By its alleles it can only come of pollen that the style should have turned away.")
                : say("Its alleles do not fit its recorded parents."),
            say("Check its parents and all three records; s_contradiction tells which allele is missing.")};
}

struct Rows {
    std::vector<MatchRow> matches;
    std::vector<GenotypeRow> genotypes;
    std::vector<ContradictionRow> contradictions;
    int not_crossed = 0;
};

Rows rows_of(const Evidence& evidence, const std::vector<std::string>& names) {
    Rows rows;
    for (const auto& seed : names) {
        for (const auto& pollen : names) {
            if (seed != pollen && may_be_crossed(evidence.orchard, seed, pollen)) {
                rows.matches.push_back(match_row(evidence, seed, pollen));
            } else {
                rows.not_crossed += seed < pollen ? 1 : 0;
            }
        }
        const auto more = genotype_rows(evidence, seed);
        rows.genotypes.insert(rows.genotypes.end(), more.begin(), more.end());
    }
    for (const auto& accession : evidence.orchard.accessions) {
        if (const auto row = contradiction_of(evidence, accession)) {
            rows.contradictions.push_back(*row);
        }
    }
    return rows;
}

Sentence summary_of(const ChosenAccessions& chosen, const Rows& rows) {
    const auto told = [](const MatchRow& row) { return row.match != SMatch::unknown; };
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
    const auto reading = read_checked(request.book, request.as_of, lent);
    const auto chosen = chosen_accessions(reading.orchard, request.accessions, request.as_of);
    lent.step(0.3, say("Holding alleles against each other"));
    const auto evidence = gathered(reading.orchard, request.as_of);
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

}  // namespace pipward
