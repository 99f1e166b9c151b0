// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/book.h"
#include "pipward/lineage/trait_descent.h"
#include "pipward/operation/declare.h"

/// Whose line somebody wants to see.
namespace pipward::operation {

/// What the book knows of parents and traits: a book needs no trees and no weather for it. What cannot be
/// read is told as warnings. Throws Error (input) where no accession could be read because of errors.
book::BookReading read_line(const std::string& location);

/// The accession that is named, or the accession of the tree whose label it is, be it written with other
/// capitals and blanks. Nothing where the book has neither; an error finding then offers the nearest.
std::optional<std::string> accession_meant(const Orchard& orchard, const std::string& who,
                                           const std::string& key, Findings& findings);

/// The scores given no later than a day.
std::vector<TraitScore> scores_until(const Orchard& orchard, Day as_of);

/// Every trait that the book has scores of.
std::vector<std::string> traits_of(const Orchard& orchard);

/// "taste 6.1 (4 trees)".
Sentence mean_words(const std::string& trait, const lineage::TraitMean& mean);

}  // namespace pipward::operation
