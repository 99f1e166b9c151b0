// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/lineage/cross_notation.h"
#include "pipward/lineage/pedigree_summary.h"
#include "pipward/lineage/pedigree_tree_text.h"
#include "pipward/lineage/trait_scores.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/lineage/detail/pedigree_tables.h"
#include "pipward/paper/page_svg.h"
#include "pipward/paper/paper_size.h"
#include "pipward/paper/pdf.h"
#include "pipward/paper/pedigree_drawing.h"
#include "pipward/place/accession_choice.h"

namespace pipward::operation::detail {
namespace {

struct Request {
    BookName book;
    Day as_of;
    std::string who;
    int up = 4;
    int down = 1;
    paper::PaperSize paper = paper::PaperSize::a4;
    std::string traits;
};

/// A string of more generations has hundreds of names.
constexpr int most_in_a_string = 6;

void add_files(const Request& request, const paper::PedigreeDrawing& drawing, const Sentence& title,
               const Run& lent, Outcome& outcome) {
    const auto words = title.in(lent.wording);
    const paper::Typesetter typesetter;
    outcome.files.push_back({"pedigree.svg", "image/svg+xml", paper::page_svg(drawing.page, words)});
    outcome.files.push_back({"pedigree.pdf", "application/pdf",
                             paper::pdf_of(std::vector{drawing.page}, {words, request.as_of}, typesetter)});
}

void draw(const Request& request, const lineage::PedigreeGraph& graph, const paper::PedigreeFacts& facts,
          const Run& lent, Outcome& outcome) {
    const lineage::PedigreeLimits limits{request.up, request.down, 0};
    const auto title = say("Pedigree of {}", graph.nodes[facts.subject].name);
    const auto cross =
        lineage::cross_tree(graph, facts.subject, std::min(request.up, 2), say("unknown").in(lent.wording));
    const auto subtitle = cross.parents.empty() ? Sentence{} : verbatim(lineage::times_text(cross));
    const auto drawing = paper::pedigree_drawing(
        facts, {paper::turned(paper::size_of(request.paper)), title, subtitle, limits}, lent.wording);
    const auto left_out = paper::left_out_of(drawing, limits);
    add_findings(outcome, left_out);
    lent.step(0.7, say("Drawing the pedigree"));
    add_files(request, drawing, title, lent, outcome);
    outcome.files.push_back({"pedigree.txt", "text/plain",
                             lineage::pedigree_tree_text(graph, facts.subject, limits, lent.wording)});
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_line(request.book);
    const auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto who = place::accession_meant(orchard, request.who, "accessions", outcome.findings);
    const auto traits = lineage::scored_traits(orchard, request.traits, "traits", outcome.findings);
    expect_no_errors(outcome.findings);
    lent.step(0.3, say("Following the pedigree"));
    const auto graph = lineage::pedigree_graph(orchard.accessions, orchard.blend_members);
    const int subject = graph.number.at(*who);
    const auto shares = lineage::ancestor_shares(graph, subject);
    auto facts = paper::pedigree_facts(graph, subject, shares);
    facts.more = lineage::trait_lines(
        graph, lineage::trait_means(orchard.trees, lineage::scores_until(orchard, request.as_of)), traits);
    draw(request, graph, facts, lent, outcome);
    outcome.tables = {
        pedigree_notation_table(graph, subject, std::min(request.up, most_in_a_string), lent.wording),
        ancestor_share_table(graph, shares), descendant_table(graph, subject)};
    outcome.summary = lineage::pedigree_summary(graph, subject, shares, outcome.tables.back().rows.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return {
        book_parameter(&Request::book),
        parameter(&Request::who, "accessions", "Accessions",
                  "Names of accessions or labels of trees, separated by commas.")
            .required(),
        parameter(&Request::up, "generations-up", "Generations up", "Generations of ancestors to draw.")
            .between(0, 20),
        parameter(&Request::down, "generations-down", "Generations down",
                  "Generations of descendants to draw.")
            .between(0, 20),
        parameter(
            &Request::traits, "traits", "Traits",
            "Traits whose means are shown in the boxes, separated by commas, or all; none where left out."),
        parameter(&Request::paper, "paper", "Paper",
                  "Page size; portrait or landscape is chosen by the program."),
        as_of_parameter(&Request::as_of)};
}

}  // namespace

std::unique_ptr<const Operation> pedigree_show() {
    return declare<Request>(
        {.about =
             {"pedigree-show", "Pedigree", "Pedigree",
              "Draws the pedigree of an accession, ancestors and descendants, as SVG and PDF on one page: "
              "the seed parent above the pollen parent, an ancestor that occurs more than once drawn once, "
              "blends with their members, unknown parents and sports as such. Writes the pedigree in "
              "breeders' notation and lists the expected genetic contribution of each ancestor.",
              Role::draw_pedigree},
         .parameters = parameters(),
         .results = {pedigree_notation_shape(), ancestor_share_shape(), descendant_shape()},
         .examples = {{"The pedigree of a selection.",
                       {{"book", "BOOK"}, {"accessions", "LF 11-023"}, {"as-of", "2026-03-20"}}},
                      {"The pedigree of a tree, with its traits, on A3.",
                       {{"book", "BOOK"},
                        {"accessions", "UP-05-04"},
                        {"traits", "taste, scab"},
                        {"paper", "a3"},
                        {"as-of", "2026-03-20"}}},
                      {"What came of a variety.",
                       {{"book", "BOOK"},
                        {"accessions", "Tansy Lane"},
                        {"generations-up", "1"},
                        {"generations-down", "3"},
                        {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
