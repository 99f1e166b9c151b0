// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/book/detail/ogr_session.h"

/// Inside of the room: how a result table of ours is told from a table of the same name that is not.
namespace pipward::book::detail {

/// The mark is the beginning of the table's description: it is seen by people, kept by every program and
/// every backend, and travels with copies.
std::string marked(const std::string& description);
std::string without_mark(const std::string& description);
/// Whether the layer `name` carries the mark.
bool is_result(Session& session, const std::string& name);
/// The layer's description as stored.
std::string description_of(Session& session, const std::string& name);

}  // namespace pipward::book::detail
