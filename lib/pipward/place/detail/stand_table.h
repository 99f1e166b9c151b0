// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/detail/hits.h"
#include "pipward/place/detail/key_table.h"

/// Inside of the room: trees by block, row and position as people write them.
namespace pipward::place::detail {

class StandTable {
  public:
    /// `trees` must outlive the table.
    explicit StandTable(const std::vector<Tree>& trees);

    /// "B3-12", "row 3 12", "Upper 3 12", "block Upper, row 3, position 12"; without a position, "Upper row
    /// 3".
    void find(std::string_view query, Hits& hits) const;

  private:
    struct Spot;
    void find_spot(const Spot& spot, Hits& hits) const;
    float block_likeness(const Tree& tree, const Spot& spot) const;

    const std::vector<Tree>& trees_;
    KeyTable by_place_;
    KeyTable by_row_;
};

}  // namespace pipward::place::detail
