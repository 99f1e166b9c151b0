// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/intake/adoption.h"
#include "pipward/operation/operation.h"

/// What is shown of an adoption: where the layer's fields go, and what becomes of its features.
namespace pipward::operation::detail {

ResultShape adopt_field_shape();
Table adopt_field_table(const intake::Adoption& adoption);
ResultShape adopt_row_shape();
Table adopt_row_table(const intake::Adoption& adoption);

}  // namespace pipward::operation::detail
