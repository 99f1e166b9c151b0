// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "pipward/lineage/ancestor_shares.h"
#include "pipward/lineage/pedigree_view.h"

namespace pipward::paper {

/// What a drawing of a line tells in each box beside the name.
struct PedigreeFacts {
    const lineage::PedigreeGraph* graph = nullptr;  ///< needed; must outlive this
    int subject = 0;                                ///< into PedigreeGraph::nodes
    std::vector<double> of_ancestor;                ///< by node: what the subject has of it, 0..1
    std::vector<double> of_subject;                 ///< by node: what it has of the subject, 0..1
    std::map<int, std::vector<Sentence>> more;      ///< by node: lines to add, such as means of traits
};

/// What the drawing of a subject's line tells of its ancestors and descendants; `shares` are its
/// lineage::ancestor_shares(). The graph must outlive it.
PedigreeFacts pedigree_facts(const lineage::PedigreeGraph& graph, int subject,
                         const std::vector<lineage::AncestorShare>& shares);

/// A line of text in a box.
struct BoxLine {
    std::string text;      ///< plain, not escaped
    bool is_bold = false;  ///< the name's
};

/// How the text of a box is broken.
struct BoxFace {
    double points = 8;        ///< size of the letters, 1/72 inch
    double width = 40;        ///< of the box, millimetres
    bool is_compact = false;  ///< share and name on one line where they fit, no kind
};

inline constexpr double box_padding = 0.6;  ///< millimetres, above and below the text

/// The text of a box, line by line, in the words of a host.
std::vector<BoxLine> box_lines(const lineage::PedigreeBox& box, const lineage::PedigreeView& view,
                               const PedigreeFacts& facts, const BoxFace& face, const Wording& wording);
double line_height(double points);  ///< millimetres
/// Millimetres, the padding included.
double box_height(const std::vector<BoxLine>& lines, double points);

}  // namespace pipward::paper
