// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "expression/book_facts.h"
#include "expression/layer_books.h"

class QgsExpressionFunction;

namespace pipward::desktop {

/// Functions over the orchard book for labels, filters and forms. They look into the book that the layer at
/// hand lies in, or else into the one that the season panel was used with last.
///   orchard_full_bloom(tree or accession)          median day of full bloom
///   orchard_days_to_bloom(tree or accession, day)  whole days from the day, or from today
///   orchard_address(tree)                          "block Upper, row 3, position 12"
///   orchard_lineage(tree or accession)             "seed parent × pollen parent"
/// Without a name they ask for the tree (or accession) of the feature at hand.
class ExpressionFunctions {
  public:
    ExpressionFunctions();
    ~ExpressionFunctions();
    ExpressionFunctions(const ExpressionFunctions&) = delete;
    ExpressionFunctions& operator=(const ExpressionFunctions&) = delete;

  private:
    std::shared_ptr<FactShelf> shelf_;
    std::shared_ptr<LayerBooks> layers_;
    std::vector<std::unique_ptr<QgsExpressionFunction>> functions_;
};

}  // namespace pipward::desktop
