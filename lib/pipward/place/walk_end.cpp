// SPDX-License-Identifier: MIT
#include "pipward/place/walk_end.h"

#include "pipward/place/place_text.h"
#include "pipward/value/complaint.h"

namespace pipward::place {

std::optional<WalkEnd> walk_end(const Orchard& orchard, const NamedPlace& named, Findings& findings) {
    if (named.text.empty()) {
        return std::nullopt;
    }
    if (const auto tree = tree_labelled(orchard, named.text)) {
        const auto& at = orchard.trees[*tree].at;
        if (!at) {
            findings.push_back(
                about_parameter(named.key, named.text, say("This tree has no location on the map."),
                                say("Give latitude and longitude instead, or draw the tree.")));
        }
        return at ? std::optional{WalkEnd{*at, tree}} : std::nullopt;
    }
    if (const auto place = parse_place(named.text)) {
        const auto at = place_on_map(place->at, orchard, named, findings);
        return at ? std::optional{WalkEnd{*at, {}}} : std::nullopt;
    }
    findings.push_back(about_parameter(
        named.key, named.text, say("This is neither a tree's label nor latitude and longitude."),
        say("{} A gate is written as in 48.1340,9.3010.", labels_like(orchard, named.text))));
    return std::nullopt;
}

}  // namespace pipward::place
