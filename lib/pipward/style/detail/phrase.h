// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/value/sentence.h"

/// Inside of the room: sentences as the desktop's expressions.
namespace pipward::style::detail {

/// A filling that is itself an expression: say("row {}", computed(column("name"))).
Sentence computed(const std::string& expression);
/// "name" in the quotes of a column.
std::string column(std::string_view name);

/// A sentence as an expression, in the words of a host: 'row ' || "name".
std::string phrase(const Sentence& sentence, const Wording& wording);

/// A day in words: format_date("observed_on", 'd MMM yyyy'). `form` is the desktop's, as a host writes days.
std::string day_words(std::string_view name, const Sentence& form, const Wording& wording);

/// A column of codes as the host says them; the column itself where its words are the codes.
std::string code_words(std::string_view name, const std::vector<Sentence>& codes, const Wording& wording);

/// An expression in a tip.
Sentence tip(const std::string& expression);

}  // namespace pipward::style::detail
