// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/detail/check.h"

/// Inside of the room: what the rules on pollen and on seed have in common.
namespace pipward::book::detail {

/// `message` says what came earlier.
inline void check_order(const Whereabouts& place, Day earlier, const Sentence& message, Day later,
                        Findings& findings) {
    if (later < earlier) {
        findings.push_back(error(place, message, say("Correct one of the two days.")));
    }
}

inline void check_not_future(const Whereabouts& place, Day day, Day as_of, Findings& findings) {
    if (day > as_of) {
        findings.push_back(warning(place, say("The day lies in the future of {}.", to_iso(as_of)),
                                   say("Correct the day if it is wrong.")));
    }
}

}  // namespace pipward::book::detail
