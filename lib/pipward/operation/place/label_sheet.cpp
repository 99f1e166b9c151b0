// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "pipward/operation/declare/column_of.h"
#include "pipward/operation/declare/detail/common_parameters.h"
#include "pipward/operation/declare/detail/read_checked.h"
#include "pipward/operation/detail/list.h"
#include "pipward/operation/place/detail/label_sheet_grid.h"
#include "pipward/operation/place/detail/tree_choice.h"
#include "pipward/paper/label_contents.h"
#include "pipward/paper/pdf.h"
#include "pipward/place/address_order.h"
#include "pipward/place/ground_layer.h"
#include "pipward/value/complaint.h"

namespace pipward::operation::detail {
namespace {

enum class LabelsOf { trees, crosses, blank };

std::span<const Word<LabelsOf>> words(LabelsOf) {
    static constexpr std::array<Word<LabelsOf>, 3> all{
        {{LabelsOf::trees, "trees", "a label for each tree"},
         {LabelsOf::crosses, "crosses", "tags for the flowers of the season's crosses"},
         {LabelsOf::blank, "blank", "tags to fill in by hand"}}};
    return all;
}

struct Request : TreeRequest, paper::SheetWish {
    LabelsOf labels_of = LabelsOf::trees;
    std::optional<int> season;
    paper::CodeSays code = paper::CodeSays::label;
    place::LabelOrder order = place::LabelOrder::address;
    bool letters = true;
    int first = 1;
    int copies = 1;
    bool outline = false;
};

/// A book of paper; more is a slip.
constexpr std::size_t most_labels = 20000;

Findings check(const Request& request) {
    auto findings = paper::problems_of(request);
    const int places = paper::grid_of(static_cast<const paper::SheetWish&>(request)).labels_a_page();
    if (request.first > places) {
        findings.push_back(about_parameter("first", std::to_string(request.first),
                                           say("The sheet has {} labels only.", places),
                                           say("Count from the upper left, row by row.")));
    }
    return findings;
}

struct PrintedLabel {
    int number = 0;
    const paper::PlacedLabel* placed = nullptr;
    const paper::NamedLabel* label = nullptr;
};

using enum CellType;

std::string second_line(const PrintedLabel& printed) {
    const auto& lines = printed.label->text.lines;
    std::string all;
    for (const auto& line : lines) {
        all += (all.empty() ? "" : "; ") + line;
    }
    return all;
}

const std::vector<ColumnOf<PrintedLabel>>& columns() {
    static const std::vector<ColumnOf<PrintedLabel>> all{
        {{"number", whole, "", "Number", "1 for the first label that is printed."},
         [](const PrintedLabel& p) { return whole_cell(p.number); }},
        {{"page", whole, "", "Page", "The page of the file on which it stands."},
         [](const PrintedLabel& p) { return whole_cell(p.placed->page + 1); }},
        {{"place", whole, "", "Position on the page",
          "Number of the label on the page, row by row from the upper left."},
         [](const PrintedLabel& p) { return whole_cell(p.placed->place + 1); }},
        {{"label", text, "", "Label", "Main text."},
         [](const PrintedLabel& p) { return text_cell(p.label->text.headline); }},
        {{"text", text, "", "Text", "Text below."},
         [](const PrintedLabel& p) { return text_cell(second_line(p)); }},
        {{"code_text", text, "", "Code content", "Content of the QR code."},
         [](const PrintedLabel& p) { return text_cell(p.label->text.qr.value_or("")); }},
        {{"x_height_mm", number, "mm", "X-height", "X-height of its smallest text."},
         [](const PrintedLabel& p) {
             return number_cell(paper::small_letters(p.placed->laid.smallest_points).value, 2);
         }},
        {{"module_mm", number, "mm", "Module size of the code", "Side of one module of the QR code."},
         [](const PrintedLabel& p) {
             const auto& module = p.placed->laid.qr_module;
             return module ? number_cell(module->value, 2) : Cell{};
         }},
    };
    return all;
}

constexpr TableOf<PrintedLabel> label_table{
    "label_place", "Labels", "Every label that is printed, in the order of the sheets.", columns, [] {
        return TableView{.first = {"number", "page", "place", "label", "text", "x_height_mm", "module_mm"}};
    }};

std::vector<paper::NamedLabel> labels_for_trees(const Request& request, const Orchard& orchard,
                                                const Wording& wording, Findings& findings) {
    auto trees =
        chosen_trees(orchard, request, {.as_of = request.as_of, .with_place = false, .to_come_too = true},
                     findings, planned_works(request));
    return paper::tree_labels(orchard, place::in_order(orchard, std::move(trees), request.order),
                              request.code, wording, findings);
}

std::vector<paper::NamedLabel> tags_for_crosses(const Request& request, const Orchard& orchard,
                                                const Wording& wording, Findings& findings) {
    const Season season =
        request.season ? Season{*request.season} : season_of(request.as_of, place::hemisphere_of(orchard));
    return paper::cross_tags(
        orchard, {season, request.copies, request.letters, request.code != paper::CodeSays::nothing}, wording,
        findings);
}

std::vector<paper::NamedLabel> labels_for(const Request& request, const Orchard& orchard,
                                          const paper::LabelGrid& grid, const Wording& wording,
                                          Findings& findings) {
    switch (request.labels_of) {
        case LabelsOf::trees:
            return labels_for_trees(request, orchard, wording, findings);
        case LabelsOf::crosses:
            return tags_for_crosses(request, orchard, wording, findings);
        case LabelsOf::blank:
            break;
    }
    return paper::blank_tags(grid, {request.copies, request.first - 1}, wording);
}

void refuse_too_many(std::size_t labels) {
    if (labels > most_labels) {
        throw Error(Trouble::input, about_table(Level::error, "tree",
                                                say("{} labels are too many for one file; {} is the most.",
                                                    labels, most_labels),
                                                say("Choose a block, an accession or fewer copies.")));
    }
}

Table table_of_labels(const paper::LabelPages& pages, const std::vector<paper::NamedLabel>& labels) {
    std::vector<PrintedLabel> printed;
    for (const auto& placed : pages.labels) {
        printed.push_back({static_cast<int>(printed.size()) + 1, &placed, &labels[placed.label]});
    }
    return label_table.of(printed);
}

Sentence summary_of(const paper::LabelPages& pages, const paper::LabelGrid& grid) {
    if (pages.labels.empty()) {
        return say("Nothing is to be printed.");
    }
    const auto count =
        pages.labels.size() == 1  ? say("1 label of {:g} x {:g} mm.", grid.width.value, grid.height.value)
        : pages.pages.size() == 1 ? say("{} labels of {:g} x {:g} mm on 1 page.", pages.labels.size(),
                                        grid.width.value, grid.height.value)
                                  : say("{} labels of {:g} x {:g} mm on {} pages.", pages.labels.size(),
                                        grid.width.value, grid.height.value, pages.pages.size());
    return joined(
        {count, say("Print at 100 %, not fitted to the page, and measure one sheet of plain paper first.")},
        verbatim(" "));
}

Outcome run(const Request& request, const Run& lent) {
    lent.step(0.0, say("Reading the book"));
    const auto reading = book::read_trees(request.book);
    const auto wording = lent.wording;
    const auto grid = paper::grid_of(static_cast<const paper::SheetWish&>(request));
    Outcome outcome;
    outcome.findings = reading.findings;
    lent.step(0.2, say("Writing the labels"));
    const auto labels = labels_for(request, reading.orchard, grid, wording, outcome.findings);
    const int copies = request.labels_of == LabelsOf::trees ? request.copies : 1;
    refuse_too_many(labels.size() * static_cast<std::size_t>(copies));
    const paper::Typesetter typesetter;
    add_findings(outcome, paper::font_findings(typesetter));
    const auto pages = paper::label_pages(
        labels, {grid, request.first - 1, copies, request.outline}, typesetter, wording, outcome.findings,
        [&](double share) { lent.step(0.2 + 0.5 * share, say("Writing the labels")); });
    expect_no_errors(outcome.findings);
    if (!pages.pages.empty()) {
        auto pdf =
            paper::pdf_of(pages.pages, {say("Labels").in(wording), request.as_of}, typesetter,
                          [&](double share) { lent.step(0.7 + 0.3 * share, say("Drawing the sheets")); });
        outcome.files.push_back({"labels.pdf", "application/pdf", std::move(pdf)});
    }
    outcome.tables = {table_of_labels(pages, labels)};
    outcome.summary = summary_of(pages, grid);
    lent.step(1.0, say("Done"));
    return outcome;
}

std::vector<Bound<Request>> parameters() {
    auto all = extended<Request>(
        tree_parameters(),
        {parameter(&Request::season, "season", "Season",
                   "For crosses: their season; that of the reference date where left out.")
             .between(1900, 2200),
         parameter(&Request::letters, "letters", "Letters on tags",
                   "For crosses: whether every tag has a code of its own, with the next free letter."),
         parameter(&Request::code, "qr-code", "QR code",
                   "Content of the QR code on a label; on the tag of a cross it is the tag's code."),
         parameter(&Request::order, "order", "Order", "Order of the trees' labels."),
         parameter(&Request::copies, "copies", "Copies",
                   "Labels of each tree, tags of each cross, or sheets of blank tags.")
             .between(1, 500),
         parameter(&Request::first, "first", "First label",
                   "First free label on a partly used sheet, row by row from the upper left.")
             .between(1, 5000),
         parameter(&Request::outline, "outline", "Outline", "Whether a thin line shows where to cut.")});
    all.insert(all.begin() + 1,
               parameter(&Request::labels_of, "labels-of", "Labels of", "What the labels are for."));
    all =
        extended<Request>(all, extended<Request>(sheet_parameters(), {as_of_parameter(&TreeRequest::as_of)}));
    return all;
}

}  // namespace

std::unique_ptr<const Operation> label_sheet() {
    return declare<Request>(
        {.about = {"label-sheet", "Labels and tags", "Paper",
                   "Makes a PDF of tree labels, of tags for the pollinated flowers of a season's crosses, or "
                   "of blank tags, in true millimetres on sheets or rolls. A label shows the tree's label, "
                   "its accession and parents, its address, the year of planting and a QR code. Text that is "
                   "too long is made smaller and wrapped, never cut. Nothing is written to the book."},
         .parameters = parameters(),
         .results = {label_table.shape()},
         .examples = {{"Labels for the seedlings of a block, in the order in which one walks.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"purpose", "seedling"},
                        {"block", "Upper"},
                        {"order", "to-and-fro"}}},
                      {"Five tags for each cross of 2026, on a roll.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"labels-of", "crosses"},
                        {"copies", "5"},
                        {"sheet", "roll-89x36"}}},
                      {"A sheet of tags to fill in by hand, with lines for cutting.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"labels-of", "blank"},
                        {"sheet", "a4-63x38"},
                        {"outline", "yes"}}},
                      {"One tree on a sheet of my own, with its place as a link, from the third label on.",
                       {{"book", "BOOK"},
                        {"as-of", "2026-03-20"},
                        {"trees", "UP-05-04"},
                        {"qr-code", "place"},
                        {"sheet", "own"},
                        {"label-width", "90"},
                        {"label-height", "50"},
                        {"columns", "2"},
                        {"label-rows", "5"},
                        {"margin-left", "12"},
                        {"margin-top", "20"},
                        {"first", "3"}}}},
         .check = check,
         .run = run});
}

}  // namespace pipward::operation::detail
