// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/intake/adoption.h"
#include "pipward/operation/operation.h"

/// What is shown of an adoption: where the layer's fields go, and what becomes of its features.
namespace pipward::operation::detail {

ResultShape import_field_shape();
Table import_field_table(const intake::Adoption& adoption);
ResultShape import_feature_shape();
Table import_feature_table(const intake::Adoption& adoption);

}  // namespace pipward::operation::detail
