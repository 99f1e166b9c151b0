// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/line_tables.h"

#include "pipward/lineage/cross_notation.h"
#include "pipward/lineage/line_summary.h"
#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct ShareRow {
    const lineage::LineGraph* graph = nullptr;
    const lineage::AncestorShare* share = nullptr;  // null: what came from nobody known
    double unknown = 0;
};

const std::vector<ColumnOf<ShareRow>>& share_columns() {
    static const std::vector<ColumnOf<ShareRow>> columns{
        {{"ancestor", text, "", "Ancestor", "The ancestor; unknown for parents that nobody noted."},
         [](const ShareRow& r) {
             return r.share == nullptr ? Cell{} : text_cell(r.graph->nodes[r.share->node].name);
         }},
        {{"share", number, "%", "Share",
          "Expected part of the genes that came from it; shares of those of whom no parent is known add up "
          "to 100."},
         [](const ShareRow& r) {
             return number_cell(100 * (r.share == nullptr ? r.unknown : r.share->share), 4);
         }},
        {{"generation", whole, "", "Generation", "Generations back by the shortest way: 1 for a parent."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : whole_cell(r.share->nearest); }},
        {{"farthest", whole, "", "Farthest", "Generations back by the longest way."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : whole_cell(r.share->farthest); }},
        {{"ways", whole, "", "Ways", "In how many ways it is an ancestor."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : Cell{r.share->ways}; }},
        {{"founder", yes_no, "", "Founder", "Whether no parent of it is known."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : Cell{r.share->is_founder}; }},
        {{"note", text, "", "Note", "What to know of it."},
         [](const ShareRow& r) {
             return r.share == nullptr ? text_cell(say("From parents that are not known."))
                                       : text_cell(lineage::share_note(*r.graph, *r.share));
         }},
    };
    return columns;
}

constexpr TableOf<ShareRow> ancestor_share_rows{
    "ancestor_share", "Shares of ancestors",
    "What part of the genes each ancestor is expected to have given.", share_columns};

struct ChildRow {
    const lineage::LineGraph* graph = nullptr;
    lineage::Descendant descendant;
};

std::string parent_name(const ChildRow& row, lineage::LineRole role) {
    const auto* link = row.graph->parent(row.descendant.node, role);
    return link == nullptr ? std::string{} : row.graph->nodes[link->parent].name;
}

const std::vector<ColumnOf<ChildRow>>& child_columns() {
    static const std::vector<ColumnOf<ChildRow>> columns{
        {{"descendant", text, "", "Descendant", "Who descends from it."},
         [](const ChildRow& r) { return text_cell(r.graph->nodes[r.descendant.node].name); }},
        {{"share", number, "%", "Share", "Expected part of the descendant's genes that came from it."},
         [](const ChildRow& r) { return number_cell(100 * r.descendant.share, 4); }},
        {{"generation", whole, "", "Generation", "Generations on by the shortest way: 1 for a child."},
         [](const ChildRow& r) { return whole_cell(r.descendant.generation); }},
        {{"seed_parent", text, "", "Seed parent", "The descendant's seed parent."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::LineRole::seed)); }},
        {{"pollen_parent", text, "", "Pollen parent", "The descendant's pollen parent or blend."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::LineRole::pollen)); }},
        {{"sport_of", text, "", "Sport of", "What the descendant is a sport or clone of."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::LineRole::sport)); }},
    };
    return columns;
}

constexpr TableOf<ChildRow> descendant_rows{"line_descendant", "Descendants",
                                            "Who descends from the accession, and how much of it they have.",
                                            child_columns};

struct TextRow {
    Sentence form;
    std::string line;
};

const std::vector<ColumnOf<TextRow>>& text_columns() {
    static const std::vector<ColumnOf<TextRow>> columns{
        {{"form", text, "", "Form", "The way of writing."},
         [](const TextRow& r) { return text_cell(r.form); }},
        {{"line", text, "", "Line", "The line, seed parent first."},
         [](const TextRow& r) { return text_cell(r.line); }},
    };
    return columns;
}

constexpr TableOf<TextRow> line_text_rows{
    "line_text", "Line in one string",
    "The line in the notations of breeders; generations that were not asked for are left out.", text_columns};

}  // namespace

TableShape ancestor_share_shape() {
    return ancestor_share_rows.shape();
}

TableShape descendant_shape() {
    return descendant_rows.shape();
}

TableShape line_text_shape() {
    return line_text_rows.shape();
}

Table ancestor_share_table(const lineage::LineGraph& graph,
                           const std::vector<lineage::AncestorShare>& shares) {
    std::vector<ShareRow> rows;
    double unknown = 0;
    for (const auto& share : shares) {
        unknown += share.unknown_share;
        if (share.node != shares.front().node) {
            rows.push_back({&graph, &share, 0});
        }
    }
    if (unknown > 0) {
        rows.push_back({&graph, nullptr, unknown});
    }
    return ancestor_share_rows.of(rows);
}

Table descendant_table(const lineage::LineGraph& graph, int subject) {
    std::vector<ChildRow> rows;
    for (const auto& descendant : lineage::descendants_of(graph, subject)) {
        rows.push_back({&graph, descendant});
    }
    return descendant_rows.of(rows);
}

Table line_text_table(const lineage::LineGraph& graph, int subject, int generations, const Wording& wording) {
    const auto tree = lineage::cross_tree(graph, subject, generations, say("unknown").in(wording));
    const std::vector<TextRow> rows{{say("Purdy notation"), lineage::purdy_text(tree)},
                                    {say("With crosses in parentheses"), lineage::times_text(tree)}};
    return line_text_rows.of(rows);
}

}  // namespace pipward::operation::detail
