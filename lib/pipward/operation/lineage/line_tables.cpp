// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/line_tables.h"

#include <algorithm>

#include "pipward/lineage/cross_notation.h"
#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

struct ShareRow {
    const lineage::LineGraph* graph = nullptr;
    const lineage::AncestorShare* share = nullptr;  // null: what came from nobody known
    double unknown = 0;
};

Sentence note_of(const lineage::LineGraph& graph, const lineage::AncestorShare& share) {
    std::vector<Sentence> notes;
    if (share.nearest == 0) {
        notes.push_back(say("The same genes: one is a sport or clone of the other."));
    }
    if (share.by_blend) {
        notes.push_back(say("By a blend of pollen, reckoned with its shares."));
    }
    if (share.unknown_share > 0) {
        notes.push_back(say("One of its parents is not known."));
    }
    if (share.is_founder && graph.nodes[share.node].record == nullptr) {
        notes.push_back(say("The book has its name only."));
    }
    return joined(notes, verbatim(" "));
}

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
                                       : text_cell(note_of(*r.graph, *r.share));
         }},
    };
    return columns;
}

struct ChildRow {
    const lineage::LineGraph* graph = nullptr;
    int node = 0;
    double share = 0;
    int generation = 0;
};

std::string parent_name(const ChildRow& row, lineage::LineRole role) {
    const auto* link = row.graph->parent(row.node, role);
    return link == nullptr ? std::string{} : row.graph->nodes[link->parent].name;
}

const std::vector<ColumnOf<ChildRow>>& child_columns() {
    static const std::vector<ColumnOf<ChildRow>> columns{
        {{"descendant", text, "", "Descendant", "Who descends from it."},
         [](const ChildRow& r) { return text_cell(r.graph->nodes[r.node].name); }},
        {{"share", number, "%", "Share", "Expected part of the descendant's genes that came from it."},
         [](const ChildRow& r) { return number_cell(100 * r.share, 4); }},
        {{"generation", whole, "", "Generation", "Generations on by the shortest way: 1 for a child."},
         [](const ChildRow& r) { return whole_cell(r.generation); }},
        {{"seed_parent", text, "", "Seed parent", "The descendant's seed parent."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::LineRole::seed)); }},
        {{"pollen_parent", text, "", "Pollen parent", "The descendant's pollen parent or blend."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::LineRole::pollen)); }},
        {{"sport_of", text, "", "Sport of", "What the descendant is a sport or clone of."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::LineRole::sport)); }},
    };
    return columns;
}

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

}  // namespace

TableShape ancestor_share_shape() {
    return shape_of<ShareRow>({"ancestor_share",
                               "Shares of ancestors",
                               "What part of the genes each ancestor is expected to have given.",
                               false,
                               {}},
                              share_columns());
}

TableShape descendant_shape() {
    return shape_of<ChildRow>({"line_descendant",
                               "Descendants",
                               "Who descends from the accession, and how much of it they have.",
                               false,
                               {}},
                              child_columns());
}

TableShape line_text_shape() {
    return shape_of<TextRow>(
        {"line_text",
         "Line in one string",
         "The line in the notations of breeders; generations that were not asked for are left out.",
         false,
         {}},
        text_columns());
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
    return table_of<ShareRow>(ancestor_share_shape(), rows, share_columns());
}

Table descendant_table(const lineage::LineGraph& graph, int subject) {
    const auto shares = lineage::shares_of_ancestor(graph, subject);
    std::vector<int> generation(graph.nodes.size(), -1);
    generation[subject] = 0;
    std::vector<ChildRow> rows;
    for (std::size_t node = static_cast<std::size_t>(subject) + 1; node < graph.nodes.size(); ++node) {
        for (const auto& link : graph.parents[node]) {
            const int there = generation[link.parent] + lineage::generations_of(link);
            if (generation[link.parent] >= 0 && (generation[node] < 0 || there < generation[node])) {
                generation[node] = there;
            }
        }
        if (generation[node] >= 0 && !graph.nodes[node].is_blend) {
            rows.push_back({&graph, static_cast<int>(node), shares[node], generation[node]});
        }
    }
    std::ranges::stable_sort(
        rows, {}, [&](const ChildRow& row) { return std::pair(row.generation, graph.nodes[row.node].name); });
    return table_of<ChildRow>(descendant_shape(), rows, child_columns());
}

Table line_text_table(const lineage::LineGraph& graph, int subject, int generations, const Wording& wording) {
    const auto tree = lineage::cross_tree(graph, subject, generations, say("unknown").in(wording));
    const std::vector<TextRow> rows{{say("Purdy notation"), lineage::purdy_text(tree)},
                                    {say("With crosses in parentheses"), lineage::times_text(tree)}};
    return table_of<TextRow>(line_text_shape(), rows, text_columns());
}

}  // namespace pipward::operation::detail
