// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "pipward/lineage/pedigree_graph.h"

/// Lines in one string: the notation of Purdy, Loegering, Konzak, Peterson & Allan 1968, Crop Sci. 8:405, and
/// the breeder's "A × B".
namespace pipward::lineage {

/// A cross of crosses. A leaf has a name and no parents; a cross has two, the seed parent first, and no name.
struct CrossTree {
    std::string name{};                ///< of a leaf, as it is written; empty for a cross
    std::vector<CrossTree> parents{};  ///< none or two

    bool operator==(const CrossTree&) const = default;
};

/// The cross of two. Nothing is asked of them: either may be a leaf or a cross.
CrossTree crossed(CrossTree seed, CrossTree pollen);

/// How the second cross is written; the first is "/" and the third "/3/" in both.
enum class SlashStyle {
    doubled,  ///< "A/B//C"
    numbered  ///< "A/B/2/C"
};

/// What was made of a text.
struct ReadCross {
    CrossTree tree{};  ///< an empty leaf where the text cannot be read
    /// As the text wrote its second cross; `doubled` where it has none.
    SlashStyle style = SlashStyle::doubled;
    Sentence trouble{};  ///< why the text cannot be read; empty where it can
};

/// Reads Purdy notation: "/" the first cross, "//" or "/2/" the second, "///" or "/3/" the third, and so on,
/// the highest number the last cross; "*3" behind or "3*" before a recurrent parent are its doses, and
/// "A/3*B" is "A/B*3". A name in double quotes may hold slashes and stars. A text without any is a leaf.
ReadCross read_purdy(std::string_view text);
/// Reads "A × B", "A x B" and "(A × B) × C"; what stands in parentheses behind a name is passed over, as in
/// "A (C × D) × B". Falls back to Purdy notation where there is neither.
ReadCross read_cross(std::string_view text);

/// Repeated backcrosses to a leaf are written as doses: "A*3/B". The shortest reading reads back the same.
std::string purdy_text(const CrossTree& tree, SlashStyle style = SlashStyle::doubled);
/// "(A × B) × C".
std::string times_text(const CrossTree& tree);

/// Names of the leaves, seed side first.
std::vector<std::string> leaves_of(const CrossTree& tree);

/// The line of a node as far back as `generations`; the genes of a sport are its original's, an unknown
/// parent is called `unknown`, a blend is a leaf.
CrossTree cross_tree(const PedigreeGraph& graph, int node, int generations, const std::string& unknown);

}  // namespace pipward::lineage
