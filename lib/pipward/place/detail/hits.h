// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "pipward/place/match.h"
#include "pipward/place/own_position.h"
#include "pipward/record/orchard.h"

namespace pipward::place::detail {

/// Inside of the room: a tree that a search text led to. `source` says by which name, family or note.
struct Hit {
    std::uint32_t tree = 0;  ///< into Orchard::trees
    float score = 0;         ///< 0..1, as FoundTree::score
    MatchKind kind = MatchKind::label;
    Extent extent = Extent::whole;
    std::uint8_t slips = 0;  ///< letters off
    std::uint32_t source = 0;
};

/// Inside of the room: the best hit of each tree.
class Hits {
  public:
    explicit Hits(std::size_t trees) : best_(trees, none) {}

    void add(const Hit& hit);
    bool empty() const { return hits_.empty(); }
    /// 0 while there are none.
    float best_score() const { return best_score_; }

    /// The best `limit`; of equals those that stand on the day first, then the nearest, then by label. Uses
    /// the hits up: a short search text has as many as there are trees.
    std::vector<Hit> ranked(const Orchard& orchard, std::size_t limit, const std::optional<OwnPosition>& from,
                            const std::optional<Day>& as_of) &&;

  private:
    static constexpr std::uint32_t none = 0xFFFFFFFF;
    std::vector<std::uint32_t> best_;  // into hits_, by tree
    std::vector<Hit> hits_;
    float best_score_ = 0;
};

}  // namespace pipward::place::detail
