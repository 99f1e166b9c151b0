// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace pipward::paper::detail {

/// The UID of an event by its key: letters, digits and a few signs, everything else by its number, so that two
/// keys never give one UID.
std::string uid_of(std::string_view key);

/// The key that a UID was made of; nothing for a UID that is not ours.
std::optional<std::string> key_of_uid(std::string_view uid);

}  // namespace pipward::paper::detail
