// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/value/spoken.h"

namespace pipward::record {

/// What people look at first where a screen cannot hold a whole table: names of its columns. Files, forms and
/// maps hold them all.
struct TableView {
    std::vector<std::string> first{};  ///< weightiest first, and so shown; empty: all, in their order
    std::vector<std::string> below{};  ///< long texts, which stand under their row
    std::vector<std::string> once{};   ///< alike in all rows: said once above them
    bool in_order = false;             ///< those of `first` that have room stand as in the table
    bool behind = false;               ///< tells how a result came about, not the result
};

}  // namespace pipward::record
