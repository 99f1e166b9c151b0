// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/lineage/trait_values.h"
#include "pipward/operation/declare/detail/declare.h"

namespace pipward::operation::detail {

template <class Request>
Bound<Request> heritability_parameter(double Request::*field) {
    return parameter(field, "heritability", "Heritability",
                     "Narrow-sense heritability of a score of one season; an assumption, not an estimate.")
        .in("0 to 1")
        .between(0.01, 0.95);
}

}  // namespace pipward::operation::detail
