// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <set>
#include <string>
#include <string_view>

namespace pipward::desktop {

/// The forms of every say("...") call of a C++ source, as the program sees them: pieces joined, escapes
/// undone. Throws std::runtime_error with the line where the first argument is no literal, for such a form
/// could not be translated.
std::set<std::string> said_forms(std::string_view source);

}  // namespace pipward::desktop
