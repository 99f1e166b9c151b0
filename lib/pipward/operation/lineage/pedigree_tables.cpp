// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/detail/pedigree_tables.h"

#include "pipward/lineage/cross_notation.h"
#include "pipward/lineage/pedigree_summary.h"
#include "pipward/operation/declare/column_of.h"

namespace pipward::operation::detail {
namespace {

using enum CellType;

using lineage::PedigreeGraph;

struct ShareRow {
    const PedigreeGraph* graph = nullptr;
    int subject = 0;
    const lineage::AncestorShare* share = nullptr;  // null: what came from nobody known
    double unknown = 0;
};

const std::vector<ColumnOf<ShareRow>>& share_columns() {
    static const std::vector<ColumnOf<ShareRow>> columns{
        {{"accession", text, "", "Accession", "The accession whose ancestor it is."},
         [](const ShareRow& r) { return text_cell(r.graph->nodes[r.subject].name); }},
        {{"ancestor", text, "", "Ancestor", "The ancestor; unknown for parents that are not recorded."},
         [](const ShareRow& r) {
             return r.share == nullptr ? Cell{} : text_cell(r.graph->nodes[r.share->node].name);
         }},
        {{"share", number, "0 to 1", "Share",
          "Expected genetic contribution; the contributions of founders add up to 1."},
         [](const ShareRow& r) { return number_cell(r.share == nullptr ? r.unknown : r.share->share, 6); }},
        {{"generation", whole, "", "Generation", "Generations back by the shortest path: 1 for a parent."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : whole_cell(r.share->nearest); }},
        {{"longest_path", whole, "", "Longest path", "Generations back by the longest path."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : whole_cell(r.share->farthest); }},
        {{"paths", whole, "", "Paths", "Number of pedigree paths to the ancestor."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : Cell{r.share->ways}; }},
        {{"founder", yes_no, "", "Founder", "Whether no parent of it is known."},
         [](const ShareRow& r) { return r.share == nullptr ? Cell{} : Cell{r.share->is_founder}; }},
        {{"remark", text, "", "Remark", "A sport, blend or unknown parent on which the share depends."},
         [](const ShareRow& r) {
             return r.share == nullptr ? text_cell(say("From unknown parents."))
                                       : text_cell(lineage::share_note(*r.graph, *r.share));
         }},
    };
    return columns;
}

constexpr TableOf<ShareRow> ancestor_share_rows{
    "ancestor_contribution", "Contributions of ancestors", "Expected genetic contribution of each ancestor.",
    share_columns, [] {
        return TableView{.first = {"ancestor", "share", "generation", "paths", "founder", "longest_path"},
                         .below = {"remark"},
                         .once = {"accession"}};
    }};

struct ChildRow {
    const PedigreeGraph* graph = nullptr;
    int subject = 0;
    lineage::Descendant descendant;
};

std::string parent_name(const ChildRow& row, lineage::PedigreeRole role) {
    const auto* link = row.graph->parent(row.descendant.node, role);
    return link == nullptr ? std::string{} : row.graph->nodes[link->parent].name;
}

const std::vector<ColumnOf<ChildRow>>& child_columns() {
    static const std::vector<ColumnOf<ChildRow>> columns{
        {{"accession", text, "", "Accession", "The accession whose descendant it is."},
         [](const ChildRow& r) { return text_cell(r.graph->nodes[r.subject].name); }},
        {{"descendant", text, "", "Descendant", "The descendant."},
         [](const ChildRow& r) { return text_cell(r.graph->nodes[r.descendant.node].name); }},
        {{"share", number, "0 to 1", "Share", "Expected genetic contribution to the descendant."},
         [](const ChildRow& r) { return number_cell(r.descendant.share, 6); }},
        {{"generation", whole, "", "Generation",
          "Generations forward by the shortest path: 1 for an offspring."},
         [](const ChildRow& r) { return whole_cell(r.descendant.generation); }},
        {{"seed_parent", text, "", "Seed parent", "The descendant's seed parent."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::PedigreeRole::seed)); }},
        {{"pollen_parent", text, "", "Pollen parent", "The descendant's pollen parent or blend."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::PedigreeRole::pollen)); }},
        {{"sport_of", text, "", "Sport of", "Original of which the descendant is a sport or clone."},
         [](const ChildRow& r) { return text_cell(parent_name(r, lineage::PedigreeRole::sport)); }},
    };
    return columns;
}

constexpr TableOf<ChildRow> descendant_rows{
    "descendant", "Descendants",
    "Descendants of the accession, and its expected genetic contribution to them.", child_columns, [] {
        return TableView{
            .first = {"descendant", "share", "generation", "seed_parent", "pollen_parent", "sport_of"},
            .once = {"accession"}};
    }};

struct TextRow {
    std::string accession;
    Sentence form;
    std::string line;
};

const std::vector<ColumnOf<TextRow>>& text_columns() {
    static const std::vector<ColumnOf<TextRow>> columns{
        {{"accession", text, "", "Accession", "The accession whose pedigree it is."},
         [](const TextRow& r) { return text_cell(r.accession); }},
        {{"form", text, "", "Form", "The way of writing."},
         [](const TextRow& r) { return text_cell(r.form); }},
        {{"line", text, "", "Pedigree", "The pedigree, seed parent first."},
         [](const TextRow& r) { return text_cell(r.line); }},
    };
    return columns;
}

constexpr TableOf<TextRow> notation_rows{
    "pedigree_notation", "Pedigree notation",
    "The pedigree in breeders' notation; further generations are left out.", text_columns, [] {
        return TableView{.first = {"form", "line"}, .once = {"accession"}};
    }};

void add_shares(std::vector<ShareRow>& rows, const PedigreeGraph& graph,
                const std::vector<lineage::AncestorShare>& shares) {
    const int subject = shares.front().node;
    double unknown = 0;
    for (const auto& share : shares) {
        unknown += share.unknown_share;
        if (share.node != subject) {
            rows.push_back({&graph, subject, &share, 0});
        }
    }
    if (unknown > 0) {
        rows.push_back({&graph, subject, nullptr, unknown});
    }
}

}  // namespace

ResultShape ancestor_share_shape() {
    return ancestor_share_rows.shape();
}

ResultShape descendant_shape() {
    return descendant_rows.shape();
}

ResultShape pedigree_notation_shape() {
    return notation_rows.shape();
}

Table ancestor_share_table(const PedigreeGraph& graph,
                           const std::vector<std::vector<lineage::AncestorShare>>& shares) {
    std::vector<ShareRow> rows;
    for (const auto& of_subject : shares) {
        add_shares(rows, graph, of_subject);
    }
    return ancestor_share_rows.of(rows);
}

Table descendant_table(const PedigreeGraph& graph, const std::vector<int>& subjects) {
    std::vector<ChildRow> rows;
    for (const int subject : subjects) {
        for (const auto& descendant : lineage::descendants_of(graph, subject)) {
            rows.push_back({&graph, subject, descendant});
        }
    }
    return descendant_rows.of(rows);
}

Table pedigree_notation_table(const PedigreeGraph& graph, const std::vector<int>& subjects, int generations,
                              const Wording& wording) {
    std::vector<TextRow> rows;
    for (const int subject : subjects) {
        const auto tree = lineage::cross_tree(graph, subject, generations, say("unknown").in(wording));
        const auto& name = graph.nodes[subject].name;
        rows.push_back({name, say("Purdy notation"), lineage::purdy_text(tree)});
        rows.push_back({name, say("With crosses in parentheses"), lineage::times_text(tree)});
    }
    return notation_rows.of(rows);
}

}  // namespace pipward::operation::detail
