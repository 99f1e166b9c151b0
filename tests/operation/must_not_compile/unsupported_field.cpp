// SPDX-License-Identifier: MIT
// A request field of a type that no parameter kind stands for. FIELD is given by the build: a supported type
// must compile, so that the refusal of the others is known to come from the type alone.
#include "pipward/operation/declare/detail/declare.h"

struct Request {
    FIELD value{};
};

const auto bound = pipward::operation::detail::parameter(&Request::value, "value", "Value", "A value.");
