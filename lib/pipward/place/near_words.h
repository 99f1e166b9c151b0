// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/named_place.h"
#include "pipward/place/near_question.h"

/// Spots near by, questions and answers in words.
namespace pipward::place {

/// Answers to questions, by their keys; keys in the order given.
struct NearAnswers {
    std::map<std::string, bool> by_key;
    std::vector<std::string> keys;
};
/// "tree-ahead=no; label:UP-03-09=yes"; nothing where a part is not so written.
std::optional<NearAnswers> parse_answers(std::string_view text);

/// Block, row and position of a spot, of its tree or, without a record, of its own; empty where unknown.
Sentence address_at(const NearSpot& spot, const Orchard& orchard);

/// The likeliest spots after an answer, at most three and none below 5 %: "UP-05-04 81 %, the gap at ... 9
/// %". `shares` are the spots' probabilities, 0..1.
Sentence after_words(const NearSpots& near, const std::vector<double>& shares, const Orchard& orchard);

/// A warning where nothing is near the place that was named, or nothing as near as the accuracy would have
/// it.
std::optional<Finding> distance_warning(const NearSpots& near, const NamedPlace& named);

/// Where one stands, if that is 95 % sure; else the first question and where one stands as yet.
Sentence near_summary(const NearSpots& near, const std::vector<NearQuestion>& questions,
                      const Orchard& orchard);

}  // namespace pipward::place
