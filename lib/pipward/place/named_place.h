// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/place/earth.h"
#include "pipward/record/orchard.h"
#include "pipward/value/finding.h"

/// Places that a user names, held against the orchard.
namespace pipward::place {

/// Farther from every tree than this a place is a slip, not a walk.
inline constexpr Metres too_far{5000};

/// The place as a finding's subject: which parameter named it, and how it was written.
struct NamedPlace {
    std::string key;   ///< of the parameter: "at", "start"
    std::string text;  ///< as it was typed
};

/// The map's point of a place on the earth. Findings (errors) where the book's system is not of the earth,
/// where the orchard is too far away, and then whether latitude and longitude stand the wrong way round.
std::optional<MapPoint> place_on_map(const LonLat& place, const Orchard& orchard, const NamedPlace& named,
                                     Findings& findings);

/// Two coordinates of the book's own system: "522341.5,5331497". The same findings.
std::optional<MapPoint> grid_on_map(const Orchard& orchard, const NamedPlace& named, Findings& findings);

/// "two numbers with a comma between": nothing for anything else.
std::optional<MapPoint> parse_grid(std::string_view text);

/// Labels of trees that are most like a name, as a sentence: "The nearest labels are: A, B."
Sentence labels_like(const Orchard& orchard, const std::string& name);

/// The tree of a label, be it written with other blanks, dashes or capitals; nothing where there is none or
/// more than one.
std::optional<std::uint32_t> tree_labelled(const Orchard& orchard, const std::string& label);

}  // namespace pipward::place
