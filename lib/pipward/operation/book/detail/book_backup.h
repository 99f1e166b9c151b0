// SPDX-License-Identifier: MIT
#pragma once

#include <memory>

#include "pipward/operation/operation.h"

namespace pipward::operation::detail {

/// Copies a book to a new file and checks the copy.
std::unique_ptr<const Operation> book_backup();

}  // namespace pipward::operation::detail
