// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

/// Books that appear whole or not at all.
namespace pipward::book::detail {

/// Lets `make` make the book under another name beside `path`, and then puts it there: never over a file that
/// is there or that has come meanwhile. Two who do so in one folder follow each other. Throws Error: (usage)
/// for a name that is none of a book's, told under `field`, (access) with the reason; then nothing is left.
/// Errors of `make` pass.
void make_whole_file(const std::string& path, const std::string& field,
                     const std::function<void(const std::string& made)>& make);

}  // namespace pipward::book::detail
