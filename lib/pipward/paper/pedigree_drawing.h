// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "pipward/lineage/pedigree_layout.h"
#include "pipward/paper/page.h"
#include "pipward/paper/pedigree_boxes.h"
#include "pipward/value/finding.h"

/// The line of one accession on one page: descendants to the left, ancestors to the right, one column a
/// generation where nobody is shared. Lines tell by their dashes what they are and boxes by their edges.
namespace pipward::paper {

/// The page that is wanted.
struct PedigreeSheet {
    PageSize size = turned(a4_page);  ///< of the page
    Sentence title;                   ///< one line
    Sentence subtitle;                ///< one line below it; what is too long ends in "…"
    lineage::PedigreeLimits limits;   ///< what is wanted
};

/// The page that came out.
struct PedigreeDrawing {
    Page page;                       ///< ready to print
    lineage::PedigreeView view;      ///< what is drawn
    lineage::PedigreeLayout layout;  ///< in millimetres of the page
    lineage::PedigreeLimits limits;  ///< what came on the page: at most what was wanted
    double points = 0;               ///< size of the text in the boxes, 1/72 inch
};

/// Smaller text and briefer boxes first, then fewer generations, until everything can be read on the page.
PedigreeDrawing pedigree_drawing(const PedigreeFacts& facts, const PedigreeSheet& sheet,
                                 const Wording& wording = in_english);

/// Notes on the ancestors and descendants that were wanted or are recorded and do not stand on the page.
Findings left_out_of(const PedigreeDrawing& drawing, const lineage::PedigreeLimits& wanted);

}  // namespace pipward::paper
