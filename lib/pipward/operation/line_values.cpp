// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "pipward/lineage/breeding_values.h"
#include "pipward/operation/column_of.h"
#include "pipward/operation/common_parameters.h"
#include "pipward/operation/complaint.h"
#include "pipward/operation/list.h"
#include "pipward/operation/read_checked.h"
#include "pipward/record/words.h"
#include "pipward/value/nearest.h"

namespace pipward {
namespace {

using enum CellType;

// Fewer say more about chance than about trees: common practice, no source.
constexpr std::size_t least_scores = 10;
constexpr std::size_t least_accessions = 5;
constexpr double least_reliability = 0.005;

struct Request {
    BookName book;
    Day as_of;
    std::string trait;
    double heritability = 0.35;
    std::optional<double> repeatability;
};

struct ValueRow {
    std::string accession;
    std::optional<AccessionKind> kind;
    int scores = 0;
    std::optional<double> mean;
    std::optional<BreedingValue> value;
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

void refuse_unknown_trait(const Orchard& orchard, const std::string& trait) {
    std::set<std::string> scored;
    for (const auto& score : orchard.trait_scores) {
        scored.insert(score.trait);
    }
    if (scored.contains(trait)) {
        return;
    }
    constexpr std::size_t most_listed = 12;
    const std::vector<std::string> known(scored.begin(), scored.end());
    const auto near = known.size() > most_listed ? nearest_few(trait, known) : known;
    throw Error(Trouble::input,
                about_parameter("trait", trait, say("No tree was scored for this trait."),
                                known.empty()  ? say("The book has no scores yet; note them with note-score.")
                                : near.empty() ? say("Ask for a trait that was scored.")
                                               : say("The traits that were scored are: {}.",
                                                     fmt::format("{}", fmt::join(near, ", ")))));
}

// The scores of the trait, by accession and as the model wants them.
struct Scores {
    std::map<std::string, std::vector<double>> of;
    std::vector<ScoreRecord> records;
    std::map<int, int> years;  // group by year
    std::set<int> members;
    Findings left_out;
};

Finding left_out(const TraitScore& score, Sentence why, Sentence remedy) {
    return {Level::warning, "trait_score", score.tree, "tree", score.tree, std::move(why), std::move(remedy)};
}

std::map<std::string, const Tree*> trees_by_label(const Orchard& orchard) {
    std::map<std::string, const Tree*> trees;
    for (const auto& tree : orchard.trees) {
        trees.try_emplace(tree.label, &tree);
    }
    return trees;
}

void add_score(Scores& scores, const PedigreeOrder& order, const std::string& accession,
               const TraitScore& score) {
    scores.of[accession].push_back(score.score);
    const auto member = order.number.find(accession);
    if (member == order.number.end() || !order.members[member->second].reckoned) {
        return;
    }
    const auto next = static_cast<int>(scores.years.size());
    const int group = scores.years.try_emplace(parts_of(score.scored_on).year, next).first->second;
    scores.records.push_back({member->second, group, score.score});
    scores.members.insert(member->second);
}

Scores scores_of(const Orchard& orchard, const PedigreeOrder& order, const Request& request) {
    Scores scores;
    const auto trees = trees_by_label(orchard);
    std::set<std::string> told;
    for (const auto& score : orchard.trait_scores) {
        if (score.trait != request.trait || score.scored_on > request.as_of) {
            continue;
        }
        const auto tree = trees.find(score.tree);
        if (tree != trees.end() && tree->second->accession) {
            add_score(scores, order, *tree->second->accession, score);
        } else if (told.insert(score.tree).second) {
            scores.left_out.push_back(left_out(score,
                                               say("The scores of this tree are left out: nobody wrote down "
                                                   "which accession it is."),
                                               say("Give the tree its accession.")));
        }
    }
    return scores;
}

void refuse_too_few(const Scores& scores, const Request& request) {
    if (scores.records.size() >= least_scores && scores.members.size() >= least_accessions) {
        return;
    }
    throw Error(
        Trouble::input,
        about_parameter("trait", request.trait,
                        say("Too few scores: {} of {} diploid accessions up to {}. Breeding values need {} "
                            "scores of {} accessions, or they tell of chance.",
                            scores.records.size(), scores.members.size(), to_iso(request.as_of), least_scores,
                            least_accessions),
                        say("Score more trees, or look at the scores themselves.")));
}

ScoreVariance variance_of(const Request& request) {
    const double h2 = request.heritability;
    return {h2, request.repeatability.value_or(h2 + (1 - h2) / 4)};
}

Sentence note_of(const PedigreeMember& member, const std::string& name, int own_scores) {
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
std::vector<ValueRow> rows_of(const Orchard& orchard, const PedigreeOrder& order, const Scores& scores,
                              const BreedingValues& values) {
    std::map<std::string, AccessionKind> kinds;
    for (const auto& accession : orchard.accessions) {
        kinds.try_emplace(accession.name, accession.kind);
    }
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
        if (const auto kind = kinds.find(name); kind != kinds.end()) {
            row.kind = kind->second;
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

Sentence summary_of(const Request& request, const Scores& scores) {
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
    const auto reading = read_checked(request.book, request.as_of, lent);
    const auto& orchard = reading.orchard;
    refuse_unknown_trait(orchard, request.trait);
    const auto order = pedigree_order(orchard.accessions, orchard.blend_members);
    if (!order.loops.empty()) {
        throw Error(Trouble::input, order.loops);
    }
    const auto scores = scores_of(orchard, order, request);
    refuse_too_few(scores, request);
    lent.step(0.3, say("Reckoning the breeding values"));
    const auto values = breeding_values(kinship_factors(order.members), scores.records, variance_of(request));
    if (!values) {
        throw Error(Trouble::input,
                    about_parameter("trait", request.trait, say("The equations cannot be solved."),
                                    say("Look for scores that are far out of the way.")));
    }
    auto rows = rows_of(orchard, order, scores, *values);
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
         .parameters =
             {book_parameter(&Request::book),
              parameter(&Request::trait, "trait", "Trait", "What was scored, always in the same word.")
                  .required(),
              parameter(&Request::heritability, "heritability", "Heritability",
                        "The part of the differences between scores of one season that is handed on to "
                        "children; a judgement, not an estimate.")
                  .in("of 1")
                  .between(0.01, 0.95),
              parameter(&Request::repeatability, "repeatability", "Repeatability",
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

}  // namespace pipward
