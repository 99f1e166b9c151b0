// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/paper/typesetter.h"

/// What a label says, fitted into its room: pure, so that it can be looked at without a printer.
namespace pipward::paper {

/// A word with a line behind it to write on.
struct Blank {
    std::string word;      ///< before the line: "date"
    bool is_wide = false;  ///< a row of its own
};

/// What one label says, plain UTF-8.
struct LabelText {
    std::string headline;             ///< large: what stands on the tag
    std::vector<std::string> lines;   ///< under it, the weightiest first
    std::vector<Blank> blanks{};      ///< at the foot
    std::optional<std::string> qr{};  ///< what the code says; no code where absent
};

/// The height of small letters below which a label is hard to read: 0.9 mm, and 1.2 mm on labels of 80 square
/// centimetres and more. Taken from the rule for food labels, Regulation (EU) No 1169/2011, article 13(2) and
/// (3), looked up.
Millimetres least_small_letters(const PageSize& label);

/// One label, ready to print.
struct LaidLabel {
    std::vector<PagePiece> pieces;           ///< in millimetres of the page that `room` lies on
    double headline_points = 0;              ///< 0 where it does not fit or there is no text
    double smallest_points = 0;              ///< of all of its letters; 0 where it does not fit
    std::optional<Millimetres> qr_module{};  ///< absent where there is no code
    bool fits = true;                        ///< false: not even in tiny letters; then there are no pieces
    bool qr_fits = true;                     ///< false: the text is too long for any code
};

/// Each text stands on one line, shrunk to little more than half if need be; what does not fit then is
/// wrapped, and where all of it is still too much, all of it shrinks. Nothing is cut.
LaidLabel lay_label(const LabelText& label, const Box& room, const TextRuler& ruler);

}  // namespace pipward::paper
