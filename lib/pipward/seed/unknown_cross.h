// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/value/finding.h"

namespace pipward::seed {

/// An error about the parameter `crosses`: it names a cross that the book does not have.
Finding unknown_cross(const std::string& code);

}  // namespace pipward::seed
