// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

#include "pipward/book/schema.h"
#include "pipward/value/sentence.h"

/// The schema's words for people, as sentences that a host can say in another language.
namespace pipward::book {

/// The label in the middle of a sentence: "BBCH stage", "noted on".
Sentence inside_label(const BookColumn& column);
/// "about 10 % of flowers open".
Sentence meaning_of(const Choice& choice);
/// What the schema says to people, label, unit, meaning, title or plain name, for translators.
std::set<std::string> schema_texts();

}  // namespace pipward::book
