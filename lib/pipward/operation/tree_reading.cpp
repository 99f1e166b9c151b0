// SPDX-License-Identifier: MIT
#include "pipward/operation/tree_reading.h"

namespace pipward {

BookReading read_trees(const std::string& location) {
    auto reading = read_tables(location, {"block", "tree_row", "tree", "accession", "blend", "bloom_note",
                                          "cross_goal", "pollination", "trait_score"});
    if (reading.orchard.trees.empty() && has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
    for (auto& finding : reading.findings) {
        finding.level = finding.level == Level::error ? Level::warning : finding.level;
    }
    return reading;
}

}  // namespace pipward
