// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Which accessions somebody asks about.
namespace pipward::place {

/// Accessions by name, each once.
struct ChosenAccessions {
    std::vector<std::string> names;  ///< in the order asked for, 1 to 500
    Sentence which;                  ///< for a summary: "6 accessions", "the parents of the crosses of 2026"
};

/// Those of the text, in its order; a tree stands for its accession, a blend for its members, and a parent
/// may have a name only. Where the text is blank: the parents of the crosses of the first season that has
/// any from the year of the day on, else of the last one; where there are no crosses, the first 60 accessions
/// of the book. Throws Error (input) with a finding for every name that is not known, offering the nearest,
/// and where more than 500 are asked for or the book has none.
ChosenAccessions chosen_accessions(const Orchard& orchard, const std::string& text, Day as_of);

/// The accession that is named, or the accession of the tree whose label it is, be it written with other
/// capitals and blanks. Nothing where the book has neither; an error finding then offers the nearest.
std::optional<std::string> accession_meant(const Orchard& orchard, const std::string& who,
                                           const std::string& key, Findings& findings);

/// Those of a list such as "Wrenlea, UP-05-04", each as accession_meant takes it and each once, in its order;
/// a text that is one name as it stands is not taken apart. An error finding for every name that is not
/// known, and for a text without any; no names for empty text.
std::vector<std::string> accessions_meant(const Orchard& orchard, const std::string& text,
                                          const std::string& key, Findings& findings);

}  // namespace pipward::place
