// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "pipward/paper/page.h"

/// Two ways to number the same trees, side by side.
namespace pipward::paper {

/// A tree as one reading numbers it.
struct ReadTree {
    double x = 0;                   ///< on the map, to the right
    double y = 0;                   ///< on the map, upwards
    std::string row{};              ///< its row's name
    std::optional<int> position{};  ///< nothing where it is left open
};

/// One reading.
struct ReadingPanel {
    std::string title{};            ///< what is the case then
    std::vector<ReadTree> trees{};  ///< at least one
};

/// A sheet as wide as an A4 across, a panel beside the other: rows as lines through their trees, their names
/// at the beginning, the position of every fifth tree; what stays open is grey.
Page reading_page(const std::string& question, std::span<const ReadingPanel> panels);

}  // namespace pipward::paper
