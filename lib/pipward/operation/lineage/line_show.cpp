// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/lineage/cross_notation.h"
#include "pipward/lineage/line_summary.h"
#include "pipward/lineage/line_tree_text.h"
#include "pipward/lineage/trait_scores.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/lineage/detail/line_tables.h"
#include "pipward/paper/line_drawing.h"
#include "pipward/paper/page_svg.h"
#include "pipward/paper/paper_size.h"
#include "pipward/paper/pdf.h"
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

void add_files(const Request& request, const paper::LineDrawing& drawing, const Sentence& title,
               const Run& lent, Outcome& outcome) {
    const auto words = title.in(lent.wording);
    const paper::Typesetter typesetter;
    outcome.files.push_back({"line.svg", "image/svg+xml", paper::page_svg(drawing.page, words)});
    outcome.files.push_back({"line.pdf", "application/pdf",
                             paper::pdf_of(std::vector{drawing.page}, {words, request.as_of}, typesetter)});
}

void draw(const Request& request, const lineage::LineGraph& graph, const paper::LineFacts& facts,
          const Run& lent, Outcome& outcome) {
    const lineage::LineLimits limits{request.up, request.down, 0};
    const auto title = say("Line of {}", graph.nodes[facts.subject].name);
    const auto cross =
        lineage::cross_tree(graph, facts.subject, std::min(request.up, 2), say("unknown").in(lent.wording));
    const auto subtitle = cross.parents.empty() ? Sentence{} : verbatim(lineage::times_text(cross));
    const auto drawing = paper::line_drawing(
        facts, {paper::turned(paper::size_of(request.paper)), title, subtitle, limits}, lent.wording);
    const auto left_out = paper::left_out_of(drawing, limits);
    add_findings(outcome, left_out);
    lent.step(0.7, say("Drawing the line"));
    add_files(request, drawing, title, lent, outcome);
    outcome.files.push_back(
        {"line.txt", "text/plain", lineage::line_tree_text(graph, facts.subject, limits, lent.wording)});
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_line(request.book.location);
    const auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto who = place::accession_meant(orchard, request.who, "who", outcome.findings);
    const auto traits = lineage::scored_traits(orchard, request.traits, "show-traits", outcome.findings);
    expect_no_errors(outcome.findings);
    lent.step(0.3, say("Following the line"));
    const auto graph = lineage::line_graph(orchard.accessions, orchard.blend_members);
    const int subject = graph.number.at(*who);
    const auto shares = lineage::ancestor_shares(graph, subject);
    auto facts = paper::line_facts(graph, subject, shares);
    facts.more = lineage::trait_lines(
        graph, lineage::trait_means(orchard.trees, lineage::scores_until(orchard, request.as_of)), traits);
    draw(request, graph, facts, lent, outcome);
    outcome.tables = {line_text_table(graph, subject, std::min(request.up, most_in_a_string), lent.wording),
                      ancestor_share_table(graph, shares), descendant_table(graph, subject)};
    outcome.summary = lineage::line_summary(graph, subject, shares, outcome.tables.back().rows.size());
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    return {book_parameter(&Request::book),
            parameter(&Request::who, "who", "Who", "The name of an accession, or the label of a tree.")
                .required(),
            parameter(&Request::up, "generations-up", "Generations up", "Generations of ancestors to draw.")
                .between(0, 20),
            parameter(&Request::down, "generations-down", "Generations down",
                      "Generations of descendants to draw.")
                .between(0, 20),
            parameter(&Request::traits, "show-traits", "Traits in the boxes",
                      "Traits whose means stand in the boxes, with commas between, or all; none where left "
                      "out."),
            parameter(&Request::paper, "paper", "Paper",
                      "The size of the pages; upright or on the side is chosen."),
            as_of_parameter(&Request::as_of)};
}

}  // namespace

std::unique_ptr<const Operation> line_show() {
    return declare<Request>(
        {.about = {"line-show", "Line of an accession", "Line",
                   "Draws who an accession descends from and what descends from it, as SVG and PDF on one "
                   "page: the seed parent above the pollen parent, an ancestor that comes in more than once "
                   "drawn once, blends with their members, unknown parents and sports as such. Writes the "
                   "line in breeders' notation and tells what part of the genes each ancestor is expected to "
                   "have given.",
                   Role::draw_line},
         .parameters = parameters(),
         .results = {line_text_shape(), ancestor_share_shape(), descendant_shape()},
         .examples = {{"The line of a selection.",
                       {{"book", "BOOK"}, {"who", "LF 11-023"}, {"as-of", "2026-03-20"}}},
                      {"The line of a tree, with its traits, on A3.",
                       {{"book", "BOOK"},
                        {"who", "UP-05-04"},
                        {"show-traits", "taste, scab"},
                        {"paper", "a3"},
                        {"as-of", "2026-03-20"}}},
                      {"What came of a variety.",
                       {{"book", "BOOK"},
                        {"who", "Tansy Lane"},
                        {"generations-up", "1"},
                        {"generations-down", "3"},
                        {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
