// SPDX-License-Identifier: MIT
#pragma once

#include <string>

/// Inside of the room: files that are opened here ask nobody else for anything.
namespace pipward::book::detail {

/// While it lives, what the GIS library would fetch on this thread is refused: coordinate systems, schemas
/// and documents that a file refers to.
class NoNetwork {
  public:
    NoNetwork();
    ~NoNetwork();
    NoNetwork(const NoNetwork&) = delete;
    NoNetwork& operator=(const NoNetwork&) = delete;
};

/// Throws Error (access) for a location in the network, a named pipe, or a device: reading those can last for
/// ever.
void refuse_what_is_not_at_hand(const std::string& location);

}  // namespace pipward::book::detail
