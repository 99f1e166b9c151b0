// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/book/book.h"
#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/schema.h"

namespace pipward::book::detail {

/// Inside of the room: fills in the trees' coordinate system; finds layers without one, and with another.
void find_crs(Session& session, Schema schema, BookReading& reading);

}  // namespace pipward::book::detail
