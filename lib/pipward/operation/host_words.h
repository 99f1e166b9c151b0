// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/operation/operation.h"
#include "pipward/value/sentence.h"

namespace pipward {

/// The language of what is printed: the host's where it lends one.
template <class Lent>
Wording wording_of(const Lent& lent) {
    if constexpr (requires { lent.wording; }) {
        return lent.wording;
    } else {
        return in_english;
    }
}

/// Tells progress, in words that the host can say in its language where it takes them.
template <class Lent>
void step(const Lent& lent, double share, const Sentence& what) {
    if constexpr (requires { lent.step(share, what); }) {
        lent.step(share, what);
    } else {
        lent.step(share, what.text());
    }
}

}  // namespace pipward
