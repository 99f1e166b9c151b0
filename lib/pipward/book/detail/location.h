// SPDX-License-Identifier: MIT
#pragma once

#include <string>

/// Inside of the room: what a location of a book or a layer says before anything is opened.
namespace pipward::book::detail {

/// The location as the GIS library understands it.
std::string as_opened(const std::string& location);

/// What the database's library said of a connection, without what must not be shown of it.
std::string without_secrets(const std::string& said, const std::string& location);

/// Whether opening it would ask the network for a file. A database server that is named as such does not
/// count.
bool lies_in_network(const std::string& location);

}  // namespace pipward::book::detail
