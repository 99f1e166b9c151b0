// SPDX-License-Identifier: MIT
#include "pipward/operation/place/tree_reading.h"

namespace pipward::operation {
namespace {

book::BookReading read_leniently(const std::string& location, const std::set<std::string>& tables) {
    auto reading = book::read_tables(location, tables);
    if (reading.orchard.trees.empty() && has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
    for (auto& finding : reading.findings) {
        finding.level = finding.level == Level::error ? Level::warning : finding.level;
    }
    return reading;
}

}  // namespace

book::BookReading read_trees(const std::string& location) {
    return read_leniently(location, {"block", "tree_row", "tree", "accession", "blend", "bloom_note",
                                     "cross_goal", "pollination", "trait_score"});
}

book::BookReading read_stands(const std::string& location) {
    return read_leniently(location, {"block", "tree_row", "tree"});
}

}  // namespace pipward::operation
