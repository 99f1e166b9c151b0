// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/paper/field_plan.h"
#include "pipward/paper/typesetter.h"
#include "pipward/value/finding.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {

/// A map, ready to print.
struct FieldPages {
    std::vector<Page> pages;           ///< the overview first, where there is one
    std::vector<int> trees;            ///< on each page
    std::vector<int> denominators;     ///< of each page
    std::size_t numbers_left_out = 0;  ///< of trees, and names of rows and blocks, for want of room
};

/// The map as planned: rows as lines with their names at both ends, trees as marks with their numbers. A
/// number for which there is no room beside its mark is left out and counted. `tell` hears the share that is
/// done.
FieldPages field_pages(
    const FieldMap& map, const FieldPlan& plan, const TextRuler& ruler, const Wording& wording,
    const std::function<void(double share)>& tell = [](double) {});

/// What can be read of it badly: marks that touch (a warning), numbers left out (a note).
Findings findings_on(const FieldPlan& plan, const FieldPages& pages);

}  // namespace pipward::paper
