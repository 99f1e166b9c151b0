// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/intake/adoption.h"
#include "pipward/record/table.h"

/// What is shown of an adoption: where the layer's fields go, and what becomes of its features.
namespace pipward::operation::detail {

TableShape adopt_field_shape();
Table adopt_field_table(const intake::Adoption& adoption);
TableShape adopt_row_shape();
Table adopt_row_table(const intake::Adoption& adoption);

}  // namespace pipward::operation::detail
