// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "pipward/paper/label_pages.h"
#include "pipward/record/orchard.h"
#include "pipward/record/words.h"

/// What stands on the labels of a book's trees and crosses.
namespace pipward::paper {

/// What a reader of the QR code gets.
enum class CodeSays {
    label,   ///< the label, as plain text
    place,   ///< a geo: URI, which telephones open on a map
    nothing  ///< there is no code
};
/// The choices as they are typed.
std::span<const Word<CodeSays>> words(CodeSays);

/// Label large; accession, "seed parent × pollen parent", address, year of planting as far as they are known.
/// A code that should say the place of a tree that has none says its label instead, and a warning tells.
std::vector<NamedLabel> tree_labels(const Orchard& orchard, std::span<const std::uint32_t> trees,
                                    CodeSays code, const Wording& wording, Findings& findings);

/// Tags for the flowers of a season's crosses, so many each, in the order of their codes: tag or code, "seed
/// parent × pollen parent", and lines for day, flowers and initials. With letters every tag has a code of its
/// own, the next that the book's pollinations leave free: "26-01-c".
struct TagWish {
    Season season;          ///< whose crosses
    int each = 1;           ///< tags a cross, 1 or more
    bool letters = true;    ///< else all tags of a cross say its code
    bool with_code = true;  ///< a QR code of what the tag says
};
/// A warning where the season has no crosses, and where a cross has fewer letters left than tags are wanted.
std::vector<NamedLabel> cross_tags(const Orchard& orchard, const TagWish& wish, const Wording& wording,
                                   Findings& findings);

/// A tag to fill in by hand.
NamedLabel blank_tag(const Wording& wording);
/// So many sheets full of them, the first sheet from its first free label (counted from 0) on.
struct BlankSheets {
    int sheets = 1;
    int first_place = 0;
};
std::vector<NamedLabel> blank_tags(const LabelGrid& grid, const BlankSheets& wish, const Wording& wording);

}  // namespace pipward::paper
