// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/match.h"
#include "pipward/place/own_position.h"
#include "pipward/record/orchard.h"

namespace pipward::place {

/// A tree that a search text led to.
struct FoundTree {
    std::size_t tree = 0;  ///< into Orchard::trees
    double score = 0;      ///< 0..1; 1 for a tree's own label as it is written
    Match match;           ///< by what
};

/// Every way from a search text of a record to trees: labels, accessions, tags, codes of crosses and lots,
/// parents and number, block, row and position in words, rootstock and year, coordinates, words of remarks.
/// Built once, asked as often as wanted, by several threads at once where need be. Removed trees are found
/// like all others.
class TreeIndex {
  public:
    /// Takes the orchard in and keeps it; any orchard will do, also an empty one.
    explicit TreeIndex(Orchard orchard);

    /// The one that it was built of; FoundTree::tree counts in its trees.
    const Orchard& orchard() const;

    /// The best `limit` trees, best first; of equally good ones those that stand on `as_of` come first, then
    /// those nearer to `from`, as far as these are given. Any bytes may be asked for; nothing is thrown. A
    /// name that is only like the search text (Likeness) is given where nothing else was found. A blank
    /// search text gives nothing.
    std::vector<FoundTree> find(std::string_view query, std::size_t limit = 20,
                                const std::optional<OwnPosition>& from = {},
                                const std::optional<Day>& as_of = {}) const;

    /// Whether the search text names something so well that find() does not look for what else may have been
    /// meant: names that are cut short or only like it.
    bool is_named(std::string_view query) const;

    /// The trees nearest to a position, nearest first; those without a place on the map are left out.
    std::vector<FoundTree> nearest(const OwnPosition& from, std::size_t limit = 20) const;

    /// Names of the book that the search text may have meant, most like first.
    std::vector<std::string> names_like(std::string_view query, std::size_t how_many = 3) const;

  private:
    struct Parts;
    std::shared_ptr<const Parts> parts_;
};

}  // namespace pipward::place
