// SPDX-License-Identifier: MIT
#include <cstdlib>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_rules.h"

namespace pipward::book::detail {
namespace {

constexpr int ladder_begins = 51;  // BBCH principal stage 5, inflorescence emergence
constexpr int ladder_ends = 69;    // end of principal stage 6, flowering
constexpr int one_spring = 120;    // days; notes farther apart are of two years' growth

bool same_subject(const BloomNote& a, const BloomNote& b) {
    return a.tree ? a.tree == b.tree : !b.tree && a.accession == b.accession;
}

void check_repeated(const BloomNote& noted, const BloomNote& other, Findings& findings) {
    if (noted.noted_on == other.noted_on && noted.bbch == other.bbch) {
        findings.push_back(warning({"bloom_note", new_row, "bbch", std::to_string(noted.bbch.code)},
                                   other.fid < 0
                                       ? say("An earlier row says the same.")
                                       : say("The same was noted already ({}).", fid_name(other.fid)),
                                   say("Take one of the two back.")));
    }
}

// Buds do not close again.
void check_backwards(const BloomNote& noted, const BloomNote& other, Findings& findings) {
    const int days = noted.noted_on - other.noted_on;
    const int stages = noted.bbch.code - other.bbch.code;
    const bool backwards = (days > 0 && stages < 0) || (days < 0 && stages > 0) || (days == 0 && stages != 0);
    if (backwards && std::abs(days) <= one_spring) {
        findings.push_back(warning({"bloom_note", new_row, "bbch", std::to_string(noted.bbch.code)},
                                   say("Stage {} was noted on {}, and bloom does not go back.",
                                       other.bbch.code, to_iso(other.noted_on)),
                                   say("Look again, and take back the one that is wrong.")));
    }
}

void check_ladder(const BloomNote& noted, Findings& findings) {
    if (noted.bbch.code < ladder_begins || noted.bbch.code > ladder_ends) {
        findings.push_back(note({"bloom_note", new_row, "bbch", std::to_string(noted.bbch.code)},
                                say("Stages outside {} to {} are kept, but bloom is not foreseen by "
                                    "them.",
                                    ladder_begins, ladder_ends),
                                say("Nothing need be done.")));
    }
}

}  // namespace

void judge(const BloomNote& noted, const Orchard& orchard, Findings& findings) {
    check_ladder(noted, findings);
    for (const auto& other : orchard.bloom_notes) {
        if (same_subject(noted, other)) {
            check_repeated(noted, other, findings);
            check_backwards(noted, other, findings);
        }
    }
}

}  // namespace pipward::book::detail
