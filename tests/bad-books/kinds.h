// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <vector>

/// The ways in which books go bad, each tried on a copy of the sample.
namespace pipward::testing {

/// What book-check has to make of it.
enum class Verdict {
    told,     ///< with a warning or an error, or the book is refused
    nothing,  ///< it does no harm and needs no word
};

struct BadKind {
    std::string name;                               ///< of words and hyphens
    Verdict verdict = Verdict::told;                ///< by book-check
    std::function<void(const std::string&)> spoil;  ///< takes the path of a closed book
};

/// All of them, by name.
const std::vector<BadKind>& bad_kinds();

}  // namespace pipward::testing
