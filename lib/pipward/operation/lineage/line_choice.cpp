// SPDX-License-Identifier: MIT
#include "pipward/operation/lineage/line_choice.h"

namespace pipward::operation {

book::BookReading read_line(const std::string& location) {
    auto reading = book::read_tables(location, {"tree", "accession", "blend", "cross_goal", "trait_score"});
    if (reading.orchard.accessions.empty() && has_errors(reading.findings)) {
        throw Error(Trouble::input, std::move(reading.findings));
    }
    for (auto& finding : reading.findings) {
        finding.level = finding.level == Level::error ? Level::warning : finding.level;
    }
    return reading;
}

}  // namespace pipward::operation
