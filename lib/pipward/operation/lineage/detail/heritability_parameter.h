// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/lineage/trait_values.h"
#include "pipward/operation/declare/detail/declare.h"

namespace pipward::operation::detail {

template <class Request>
Bound<Request> heritability_parameter(double Request::*field) {
    return parameter(field, "heritability", "Heritability",
                     "The part of the differences between scores of one season that is handed on to "
                     "children; a judgement, not an estimate.")
        .in("of 1")
        .between(0.01, 0.95);
}

}  // namespace pipward::operation::detail
