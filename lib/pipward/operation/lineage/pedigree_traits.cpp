// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/lineage/trait_scores.h"
#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/place/accession_choice.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct Request {
    BookName book;
    Day as_of;
    std::string who;
    std::string traits;
};

struct TraitRow {
    const lineage::PedigreeGraph* graph = nullptr;
    const lineage::TraitDescent* descent = nullptr;
};

Cell mean_cell(const std::optional<lineage::TraitMean>& mean) {
    return mean ? number_cell(mean->mean, 2) : Cell{};
}

Cell kin_cell(const TraitRow& row, lineage::Relative who) {
    return mean_cell(row.descent->of(who).mean);
}

Cell name_cell(const TraitRow& row, lineage::Relative who) {
    const int node = row.descent->of(who).node;
    return node < 0 ? Cell{} : text_cell(row.graph->nodes[node].name);
}

Sentence years_of(const lineage::TraitMean& mean) {
    return mean.first_year == mean.last_year ? verbatim(std::to_string(mean.first_year))
                                             : say("{} to {}", mean.first_year, mean.last_year);
}

const std::vector<ColumnOf<TraitRow>>& columns() {
    using enum lineage::Relative;
    static const std::vector<ColumnOf<TraitRow>> all{
        {{"accession", text, "", "Accession", "The accession."},
         [](const TraitRow& r) { return text_cell(r.graph->nodes[r.descent->node].name); }},
        {{"trait", text, "", "Trait", "What was scored."},
         [](const TraitRow& r) { return text_cell(r.descent->trait); }},
        {{"own", number, "points", "Own mean",
          "Mean over its trees, each tree's scores averaged first; in the trait's own unit."},
         [](const TraitRow& r) { return mean_cell(r.descent->own); }},
        {{"trees", whole, "", "Trees", "Trees of it that were scored."},
         [](const TraitRow& r) { return r.descent->own ? whole_cell(r.descent->own->trees) : Cell{}; }},
        {{"years", text, "", "Years", "First and last year of its scores."},
         [](const TraitRow& r) { return r.descent->own ? text_cell(years_of(*r.descent->own)) : Cell{}; }},
        {{"seed_parent", text, "", "Seed parent", "Its seed parent."},
         [](const TraitRow& r) { return name_cell(r, seed); }},
        {{"of_seed_parent", number, "points", "Of the seed parent", "Mean of the seed parent."},
         [](const TraitRow& r) { return kin_cell(r, seed); }},
        {{"pollen_parent", text, "", "Pollen parent", "Its pollen parent or blend."},
         [](const TraitRow& r) { return name_cell(r, pollen); }},
        {{"of_pollen_parent", number, "points", "Of the pollen parent",
          "Mean of the pollen parent; of a blend that of its scored members by their shares."},
         [](const TraitRow& r) { return kin_cell(r, pollen); }},
        {{"of_seed_seed", number, "points", "Seed parent's seed parent", "Mean of that grandparent."},
         [](const TraitRow& r) { return kin_cell(r, seed_seed); }},
        {{"of_seed_pollen", number, "points", "Seed parent's pollen parent", "Mean of that grandparent."},
         [](const TraitRow& r) { return kin_cell(r, seed_pollen); }},
        {{"of_pollen_seed", number, "points", "Pollen parent's seed parent", "Mean of that grandparent."},
         [](const TraitRow& r) { return kin_cell(r, pollen_seed); }},
        {{"of_pollen_pollen", number, "points", "Pollen parent's pollen parent", "Mean of that grandparent."},
         [](const TraitRow& r) { return kin_cell(r, pollen_pollen); }},
        {{"seen_in", text, "", "Seen in",
          "Parents and grandparents in whom it was scored, and parents in whom it was not."},
         [](const TraitRow& r) { return text_cell(lineage::seen_in_words(*r.graph, *r.descent)); }},
    };
    return all;
}

constexpr TableOf<TraitRow> table{
    "trait_descent", "Traits of parents", "Scored traits of parents and grandparents.", columns, [] {
        return TableView{.first = {"accession", "trait", "own", "seed_parent", "of_seed_parent",
                                   "pollen_parent", "of_pollen_parent", "trees"}};
    }};

/// Whose traits are shown.
struct Subjects {
    std::vector<int> nodes;
    bool named = false;  ///< otherwise everybody who is a parent
};

std::vector<Sentence> lines_of(const std::vector<lineage::TraitDescent>& descents,
                               const lineage::PedigreeGraph& graph, int node) {
    std::vector<Sentence> lines;
    for (const auto& descent : descents) {
        if (descent.node == node) {
            const auto seen = lineage::seen_in_words(graph, descent);
            lines.push_back(descent.own
                                ? say("{} {:.3g}, seen in: {}.", descent.trait, descent.own->mean, seen)
                                : say("{} not scored, seen in: {}.", descent.trait, seen));
        }
    }
    return lines;
}

Sentence summary_of(const std::vector<lineage::TraitDescent>& descents, const lineage::PedigreeGraph& graph,
                    const Subjects& subjects) {
    if (!subjects.named) {
        return descents.empty() ? say("No parent was scored.")
                                : say("Traits of parents that were scored: {}.", descents.size());
    }
    std::vector<Sentence> lines;
    for (const int node : subjects.nodes) {
        const auto& name = graph.nodes[node].name;
        const auto traits = lines_of(descents, graph, node);
        lines.push_back(traits.empty() ? say("Neither {} nor its parents or grandparents were scored.", name)
                                       : say("{}: {}", name, joined(traits, verbatim(" "))));
    }
    return joined(lines, verbatim("\n"));
}

Subjects subjects_of(const Orchard& orchard, const lineage::PedigreeGraph& graph,
                     const std::vector<std::string>& names) {
    if (names.empty()) {
        return {lineage::parents_and_crossed(orchard, graph), false};
    }
    Subjects subjects{{}, true};
    for (const auto& name : names) {
        subjects.nodes.push_back(graph.number.at(name));
    }
    return subjects;
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_line(request.book);
    const auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto names = place::accessions_meant(orchard, request.who, "accessions", outcome.findings);
    const auto wanted = lineage::scored_traits(orchard, request.traits, "traits", outcome.findings);
    expect_no_errors(outcome.findings);
    lent.step(0.5, say("Following the traits"));
    const auto graph = lineage::pedigree_graph(orchard.accessions, orchard.blend_members);
    const auto means = lineage::trait_means(orchard.trees, lineage::scores_until(orchard, request.as_of));
    const auto subjects = subjects_of(orchard, graph, names);
    std::vector<lineage::TraitDescent> descents;
    for (const int node : subjects.nodes) {
        std::ranges::move(lineage::trait_descent(graph, node, means), std::back_inserter(descents));
    }
    std::erase_if(descents, [&](const lineage::TraitDescent& descent) {
        return !wanted.empty() && std::ranges::find(wanted, descent.trait) == wanted.end();
    });
    std::vector<TraitRow> rows;
    for (const auto& descent : descents) {
        rows.push_back({&graph, &descent});
    }
    outcome.tables = {table.of(rows)};
    outcome.summary = summary_of(descents, graph, subjects);
    lent.step(1.0, say("Done"));
    return outcome;
}

}  // namespace

std::unique_ptr<const Operation> pedigree_traits() {
    return declare<Request>(
        {.about = {"pedigree-traits", "Traits of parents", "Pedigree",
                   "Shows the scored traits of the parents and grandparents of accessions: means over trees, "
                   "with the number of trees and years. Blends are weighted by the shares of their scored "
                   "members; what is unknown or was not scored is marked."},
         .parameters = {book_parameter(&Request::book),
                        parameter(&Request::who, "accessions", "Accessions",
                                  "Names of accessions or labels of trees, separated by commas; all parents "
                                  "where none is named."),
                        parameter(
                            &Request::traits, "traits", "Traits",
                            "Only these traits, separated by commas; all that were scored where left out."),
                        as_of_parameter(&Request::as_of)},
         .results = {table.shape()},
         .examples = {{"Where a seedling has its traits from.",
                       {{"book", "BOOK"},
                        {"accessions", "17-01-01"},
                        {"traits", "taste, scab"},
                        {"as-of", "2026-03-20"}}},
                      {"Two seedlings side by side.",
                       {{"book", "BOOK"}, {"accessions", "17-01-01, 17-01-03"}, {"as-of", "2026-03-20"}}},
                      {"The taste of every parent.",
                       {{"book", "BOOK"}, {"traits", "taste"}, {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
