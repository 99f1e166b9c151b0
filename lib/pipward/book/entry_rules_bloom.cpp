// SPDX-License-Identifier: MIT
#include <cstdlib>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_rules.h"

namespace pipward::book::detail {
namespace {

constexpr int ladder_begins = 51;  // BBCH principal stage 5, inflorescence emergence
constexpr int ladder_ends = 69;    // end of principal stage 6, flowering
constexpr int one_spring = 120;    // days; notes farther apart are of two years' growth

bool same_subject(const BloomObservation& a, const BloomObservation& b) {
    return a.tree ? a.tree == b.tree : !b.tree && a.accession == b.accession;
}

void check_repeated(const BloomObservation& observed, const BloomObservation& other, Findings& findings) {
    if (observed.observed_on == other.observed_on && observed.bbch == other.bbch) {
        findings.push_back(warning({"bloom_observation", new_row, "bbch", std::to_string(observed.bbch.code)},
                                   other.fid < 0
                                       ? say("An earlier row says the same.")
                                       : say("The same was recorded already ({}).", fid_name(other.fid)),
                                   say("Undo one of the two.")));
    }
}

// Buds do not close again.
void check_backwards(const BloomObservation& observed, const BloomObservation& other, Findings& findings) {
    const int days = observed.observed_on - other.observed_on;
    const int stages = observed.bbch.code - other.bbch.code;
    const bool backwards = (days > 0 && stages < 0) || (days < 0 && stages > 0) || (days == 0 && stages != 0);
    if (backwards && std::abs(days) <= one_spring) {
        findings.push_back(warning({"bloom_observation", new_row, "bbch", std::to_string(observed.bbch.code)},
                                   say("Stage {} was observed on {}, and bloom does not go back.",
                                       other.bbch.code, to_iso(other.observed_on)),
                                   say("Check, and undo the wrong record.")));
    }
}

void check_ladder(const BloomObservation& observed, Findings& findings) {
    if (observed.bbch.code < ladder_begins || observed.bbch.code > ladder_ends) {
        findings.push_back(notice({"bloom_observation", new_row, "bbch", std::to_string(observed.bbch.code)},
                                  say("Stages outside {} to {} are kept, but not used to forecast bloom.",
                                      ladder_begins, ladder_ends),
                                  say("Nothing need be done.")));
    }
}

}  // namespace

void judge(const BloomObservation& observed, const Orchard& orchard, Findings& findings) {
    check_ladder(observed, findings);
    for (const auto& other : orchard.bloom_observations) {
        if (same_subject(observed, other)) {
            check_repeated(observed, other, findings);
            check_backwards(observed, other, findings);
        }
    }
}

}  // namespace pipward::book::detail
