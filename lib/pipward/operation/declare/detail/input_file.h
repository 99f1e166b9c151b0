// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace pipward::operation::detail {

/// The bytes of a file that the user named. With the book, the only door through which the library reads:
/// rooms above take text. Throws Error (access) naming the file, for a folder, or above 200 MB.
std::string read_input_file(const std::string& path);

/// Files that intake/ takes for tables, as file dialogs want them.
inline constexpr std::string_view sheet_files = "*.csv *.tsv *.txt *.xlsx *.ods";

}  // namespace pipward::operation::detail
