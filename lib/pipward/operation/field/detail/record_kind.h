// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/intake/record_kind.h"
#include "pipward/operation/declare/detail/common_parameters.h"

namespace pipward::operation::detail {

template <class Request, class Field>
BoundField<Request, Field> record_kind_parameter(Field Request::*field) {
    return parameter(
        field, "kind", "Kind",
        "Kind of the records of the sheet; record-import recognises it by the header where not given.");
}

}  // namespace pipward::operation::detail
