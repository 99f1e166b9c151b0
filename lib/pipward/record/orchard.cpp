// SPDX-License-Identifier: MIT
#include "pipward/record/orchard.h"

namespace pipward::record {

Orchard::Orchard() = default;
Orchard::Orchard(const Orchard& other) = default;
Orchard::Orchard(Orchard&& other) noexcept = default;
Orchard& Orchard::operator=(const Orchard& other) = default;
Orchard& Orchard::operator=(Orchard&& other) noexcept = default;
Orchard::~Orchard() = default;

}  // namespace pipward::record
