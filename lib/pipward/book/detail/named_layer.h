// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/detail/ogr_session.h"

namespace pipward::book::detail {

/// The layer or table of that name. Throws Error (access) where the book has none.
OGRLayer& named_layer(Session& session, const std::string& location, const std::string& name);

}  // namespace pipward::book::detail
