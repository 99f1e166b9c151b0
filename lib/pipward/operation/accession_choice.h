// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/operation/declare.h"
#include "pipward/record/orchard.h"

/// Which accessions somebody asks about.
namespace pipward::operation {

template <class Request>
Bound<Request> accessions_parameter(std::string Request::*field) {
    return parameter(field, "accessions", "Accessions",
                     "Names of accessions or blends, or labels of trees, with commas between; the parents of "
                     "the season's crosses where left out.");
}

/// Accessions by name, each once.
struct ChosenAccessions {
    std::vector<std::string> names;
    Sentence which;  ///< for a summary: "6 accessions", "the parents of the crosses of 2026"
};

/// Those of the text, in its order; a tree stands for its accession, a blend for its members, and a parent
/// may have a name only. Where the text is blank: the parents of the crosses of the first season that has
/// any from the year of the day on, else of the last one; where there are no crosses, the first 60 accessions
/// of the book. Throws Error (input) with a finding for every name that is not known, offering the nearest,
/// and where more than 500 are asked for or the book has none.
ChosenAccessions chosen_accessions(const Orchard& orchard, const std::string& text, Day as_of);

}  // namespace pipward::operation
