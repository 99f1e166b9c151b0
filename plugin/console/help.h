// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/operation/operation.h"

/// Help as text for a terminal, from the declarations.
namespace pipward::console {

std::string overview();
std::string operation_list();
std::string operation_help(const operation::Operation& operation);

}  // namespace pipward::console
