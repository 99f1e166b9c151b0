// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "pipward/record/words.h"

/// Trees in the order in which one comes to them.
namespace pipward::place {

/// In which order trees are listed, printed or walked.
enum class LabelOrder {
    address,     ///< by block, row and position
    to_and_fro,  ///< the same, every second row of a block from its far end
    label,       ///< by label, as people count
    book         ///< as they stand in Orchard::trees
};
/// The orders as they are typed.
std::span<const Word<LabelOrder>> words(LabelOrder);

/// As people count: "row 2" before "row 10". Text without figures by its bytes.
bool counts_before(std::string_view a, std::string_view b);

/// Trees (into Orchard::trees) sorted; those without a block, row or position come after those with one.
std::vector<std::uint32_t> in_order(const Orchard& orchard, std::vector<std::uint32_t> trees,
                                    LabelOrder order);

}  // namespace pipward::place
