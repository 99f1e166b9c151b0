// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace pipward::operation {

/// The bytes of a file that the user named. With the book, the only door through which the library reads:
/// rooms above take text. Throws Error (access) naming the file, for a folder, or above 200 MB.
std::string read_input_file(const std::string& path);

}  // namespace pipward::operation
