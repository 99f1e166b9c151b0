// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/intake/note_kind.h"
#include "pipward/operation/declare/detail/common_parameters.h"

namespace pipward::operation::detail {

template <class Request, class Field>
BoundField<Request, Field> note_kind_parameter(Field Request::*field) {
    return parameter(field, "kind", "Kind",
                     "What the lines of the sheet note; note-import sees it from the header where it is not "
                     "given.");
}

}  // namespace pipward::operation::detail
