// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

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

/// What is known before anything is drawn.
struct Subjects {
    lineage::PedigreeGraph graph;
    std::vector<int> nodes;                                   ///< in the order asked for
    std::vector<std::vector<lineage::AncestorShare>> shares;  ///< of each
    std::map<int, std::vector<Sentence>> traits;              ///< lines of the boxes, by node
};

/// What is drawn of all of them.
struct Drawn {
    std::vector<paper::Page> pages;
    std::string text;
};

Subjects subjects_of(const Orchard& orchard, const std::vector<std::string>& names,
                     const std::vector<std::string>& traits, Day as_of) {
    Subjects subjects{lineage::pedigree_graph(orchard.accessions, orchard.blend_members), {}, {}, {}};
    for (const auto& name : names) {
        subjects.nodes.push_back(subjects.graph.number.at(name));
        subjects.shares.push_back(lineage::ancestor_shares(subjects.graph, subjects.nodes.back()));
    }
    subjects.traits = lineage::trait_lines(
        subjects.graph, lineage::trait_means(orchard.trees, lineage::scores_until(orchard, as_of)), traits);
    return subjects;
}

Sentence title_of(const Subjects& subjects, std::size_t which) {
    return say("Pedigree of {}", subjects.graph.nodes[subjects.nodes[which]].name);
}

void draw(const Request& request, const Subjects& subjects, std::size_t which, const Run& lent, Drawn& drawn,
          Outcome& outcome) {
    const auto& graph = subjects.graph;
    const int subject = subjects.nodes[which];
    const lineage::PedigreeLimits limits{request.up, request.down, 0};
    auto facts = paper::pedigree_facts(graph, subject, subjects.shares[which]);
    facts.more = subjects.traits;
    const auto cross =
        lineage::cross_tree(graph, subject, std::min(request.up, 2), say("unknown").in(lent.wording));
    const auto subtitle = cross.parents.empty() ? Sentence{} : verbatim(lineage::times_text(cross));
    const auto drawing = paper::pedigree_drawing(
        facts, {paper::turned(paper::size_of(request.paper)), title_of(subjects, which), subtitle, limits},
        lent.wording);
    add_findings(outcome, paper::left_out_of(drawing, limits));
    drawn.pages.push_back(drawing.page);
    drawn.text +=
        (drawn.text.empty() ? "" : "\n") + lineage::pedigree_tree_text(graph, subject, limits, lent.wording);
}

/// A file for each as pictures hold one page only.
std::string picture_name(std::size_t which) {
    return which == 0 ? "pedigree.svg" : fmt::format("pedigree-{}.svg", which + 1);
}

void add_files(const Request& request, const Subjects& subjects, const Drawn& drawn, const Run& lent,
               Outcome& outcome) {
    for (std::size_t which = 0; which < drawn.pages.size(); ++which) {
        outcome.files.push_back(
            {picture_name(which), "image/svg+xml",
             paper::page_svg(drawn.pages[which], title_of(subjects, which).in(lent.wording))});
    }
    const auto title = drawn.pages.size() == 1 ? title_of(subjects, 0) : say("Pedigrees");
    const paper::Typesetter typesetter;
    outcome.files.push_back(
        {"pedigree.pdf", "application/pdf",
         paper::pdf_of(drawn.pages, {title.in(lent.wording), request.as_of}, typesetter)});
    outcome.files.push_back({"pedigree.txt", "text/plain", drawn.text});
}

Sentence summary_of(const Subjects& subjects) {
    std::vector<Sentence> lines;
    for (std::size_t which = 0; which < subjects.nodes.size(); ++which) {
        const int subject = subjects.nodes[which];
        lines.push_back(lineage::pedigree_summary(subjects.graph, subject, subjects.shares[which],
                                                  lineage::descendants_of(subjects.graph, subject).size()));
    }
    return joined(lines, verbatim("\n"));
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_line(request.book);
    const auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto names = place::accessions_meant(orchard, request.who, "accessions", outcome.findings);
    const auto traits = lineage::scored_traits(orchard, request.traits, "traits", outcome.findings);
    expect_no_errors(outcome.findings);
    lent.step(0.3, say("Following the pedigree"));
    const auto subjects = subjects_of(orchard, names, traits, request.as_of);
    Drawn drawn;
    for (std::size_t which = 0; which < names.size(); ++which) {
        lent.step(0.4 + 0.5 * static_cast<double>(which) / static_cast<double>(names.size()),
                  say("Drawing the pedigree"));
        draw(request, subjects, which, lent, drawn, outcome);
    }
    add_files(request, subjects, drawn, lent, outcome);
    outcome.tables = {pedigree_notation_table(subjects.graph, subjects.nodes,
                                              std::min(request.up, most_in_a_string), lent.wording),
                      ancestor_share_table(subjects.graph, subjects.shares),
                      descendant_table(subjects.graph, subjects.nodes)};
    outcome.summary = summary_of(subjects);
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
              "Draws the pedigree of each accession, ancestors and descendants, on a page of its own, as SVG "
              "and PDF: the seed parent above the pollen parent, an ancestor that occurs more than once "
              "drawn once, blends with their members, unknown parents and sports as such. Writes the "
              "pedigree in breeders' notation and lists the expected genetic contribution of each ancestor.",
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
                      {"The pedigrees of two selections.",
                       {{"book", "BOOK"}, {"accessions", "LF 11-023, LF 09-117"}, {"as-of", "2026-03-20"}}},
                      {"What came of a variety.",
                       {{"book", "BOOK"},
                        {"accessions", "Tansy Lane"},
                        {"generations-up", "1"},
                        {"generations-down", "3"},
                        {"as-of", "2026-03-20"}}}},
         .run = run});
}

}  // namespace pipward::operation::detail
