// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "pipward/lineage/cross_notation.h"
#include "pipward/lineage/line_tree_text.h"
#include "pipward/lineage/trait_scores.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/lineage/line_choice.h"
#include "pipward/operation/lineage/detail/line_tables.h"
#include "pipward/operation/detail/list.h"
#include "pipward/paper/line_drawing.h"
#include "pipward/paper/page_svg.h"
#include "pipward/paper/pdf.h"
#include "pipward/place/accession_choice.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"

namespace pipward::operation::detail {
namespace {

enum class LinePaper { a4, a3, letter };

std::span<const Word<LinePaper>> words(LinePaper) {
    static constexpr std::array<Word<LinePaper>, 3> all{
        {{LinePaper::a4, "a4", "A4, 210 x 297 mm"},
         {LinePaper::a3, "a3", "A3, 297 x 420 mm"},
         {LinePaper::letter, "letter", "Letter, 8.5 x 11 inches"}}};
    return all;
}

paper::PageSize size_of(LinePaper paper) {
    return paper::turned(paper == LinePaper::a4   ? paper::a4_page
                         : paper == LinePaper::a3 ? paper::a3_page
                                                  : paper::letter_page);
}

struct Request {
    BookName book;
    Day as_of;
    std::string who;
    int up = 4;
    int down = 1;
    LinePaper paper = LinePaper::a4;
    std::string traits;
};

/// A string of more generations has hundreds of names.
constexpr int most_in_a_string = 6;
constexpr std::size_t most_founders = 5;

std::vector<std::string> wanted_traits(const Request& request, const Orchard& orchard, Findings& findings) {
    const auto known = lineage::traits_of(orchard);
    if (request.traits == "all") {
        return known;
    }
    auto wanted = listed_names(request.traits);
    for (const auto& trait : wanted) {
        if (std::ranges::find(known, trait) == known.end()) {
            std::vector<Sentence> names;
            for (const auto& name : known) {
                names.push_back(verbatim(name));
            }
            findings.push_back(about_parameter(
                "show-traits", trait, say("Nobody has scored this trait."),
                names.empty() ? say("Leave it out: the book has no scores.")
                              : say("The book has scores of: {}.", joined(names, verbatim(", ")))));
        }
    }
    return wanted;
}

std::map<int, std::vector<Sentence>> trait_lines(const lineage::LineGraph& graph, const Orchard& orchard,
                                                 const Request& request,
                                                 const std::vector<std::string>& traits) {
    std::map<int, std::vector<Sentence>> lines;
    const auto means = lineage::trait_means(orchard.trees, lineage::scores_until(orchard, request.as_of));
    for (const auto& trait : traits) {
        for (const auto& [accession, of_accession] : means) {
            const auto mean = of_accession.find(trait);
            const auto node = graph.number.find(accession);
            if (mean != of_accession.end() && node != graph.number.end()) {
                lines[node->second].push_back(lineage::mean_words(trait, mean->second));
            }
        }
    }
    return lines;
}

paper::LineFacts facts_of(const lineage::LineGraph& graph, int subject,
                          const std::vector<lineage::AncestorShare>& shares) {
    paper::LineFacts facts{&graph,
                           subject,
                           std::vector<double>(graph.nodes.size()),
                           lineage::shares_of_ancestor(graph, subject),
                           {}};
    for (const auto& share : shares) {
        facts.of_ancestor[share.node] = share.share;
    }
    return facts;
}

void tell_left_out(const Request& request, const paper::LineDrawing& drawing, Findings& findings) {
    const auto& view = drawing.view;
    if (view.ancestors_left_out > 0) {
        findings.push_back(about_table(
            Level::note, "accession",
            say("Ancestors farther back than generation {} are not drawn: {}.", drawing.limits.up,
                view.ancestors_left_out),
            drawing.limits.up < request.up
                ? say("The page holds no more: take larger paper, or draw the line of one of the ancestors.")
                : say("Ask for more generations up.")));
    }
    if (view.descendants_left_out > 0) {
        const bool page_is_full = drawing.limits.down < request.down || drawing.limits.most_children > 0;
        findings.push_back(about_table(
            Level::note, "accession", say("Descendants that are not drawn: {}.", view.descendants_left_out),
            page_is_full
                ? say("The page holds no more: take larger paper; the table of descendants has them all.")
                : say("Ask for more generations down; the table of descendants has them all.")));
    }
}

Sentence founders_of(const lineage::LineGraph& graph, const std::vector<lineage::AncestorShare>& shares) {
    std::vector<Sentence> parts;
    std::size_t founders = 0;
    for (const auto& share : shares) {
        if (share.is_founder && ++founders <= most_founders) {
            parts.push_back(say("{:.3g} % of {}", 100 * share.share, graph.nodes[share.node].name));
        }
    }
    if (founders > most_founders) {
        parts.push_back(say("{} more", founders - most_founders));
    }
    return joined(parts, verbatim(", "));
}

double unknown_of(const std::vector<lineage::AncestorShare>& shares) {
    double unknown = 0;
    for (const auto& share : shares) {
        unknown += share.unknown_share;
    }
    return unknown;
}

Sentence ancestors_of(const lineage::LineGraph& graph, const std::string& name,
                      const std::vector<lineage::AncestorShare>& shares) {
    const auto founders = founders_of(graph, shares);
    if (shares.size() == 1) {
        return say("No parent of {} is recorded.", name);
    }
    return shares.size() == 2 ? say("{} descends from 1 ancestor and is expected to have {}.", name, founders)
                              : say("{} descends from {} ancestors and is expected to have {}.", name,
                                    shares.size() - 1, founders);
}

Sentence summary_of(const lineage::LineGraph& graph, int subject,
                    const std::vector<lineage::AncestorShare>& shares, std::size_t descendants) {
    std::vector<Sentence> parts{ancestors_of(graph, graph.nodes[subject].name, shares)};
    if (const double unknown = unknown_of(shares); unknown > 0) {
        parts.push_back(say("From unknown parents: {:.3g} %.", 100 * unknown));
    }
    parts.push_back(say("Descendants in the book: {}.", descendants));
    return joined(parts, verbatim(" "));
}

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
    const auto drawing =
        paper::line_drawing(facts, {size_of(request.paper), title, subtitle, limits}, lent.wording);
    tell_left_out(request, drawing, outcome.findings);
    lent.step(0.7, say("Drawing the line"));
    add_files(request, drawing, title, lent, outcome);
    outcome.files.push_back(
        {"line.txt", "text/plain", lineage::line_tree_text(graph, facts.subject, limits, lent.wording)});
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = read_line(request.book.location);
    const auto& orchard = reading.orchard;
    Outcome outcome;
    outcome.findings = reading.findings;
    const auto who = place::accession_meant(orchard, request.who, "who", outcome.findings);
    const auto traits = wanted_traits(request, orchard, outcome.findings);
    if (has_errors(outcome.findings)) {
        throw Error(Trouble::input, std::move(outcome.findings));
    }
    lent.step(0.3, say("Following the line"));
    const auto graph = lineage::line_graph(orchard.accessions, orchard.blend_members);
    const int subject = graph.number.at(*who);
    const auto shares = lineage::ancestor_shares(graph, subject);
    auto facts = facts_of(graph, subject, shares);
    facts.more = trait_lines(graph, orchard, request, traits);
    draw(request, graph, facts, lent, outcome);
    outcome.tables = {line_text_table(graph, subject, std::min(request.up, most_in_a_string), lent.wording),
                      ancestor_share_table(graph, shares), descendant_table(graph, subject)};
    outcome.summary = summary_of(graph, subject, shares, outcome.tables.back().rows.size());
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
