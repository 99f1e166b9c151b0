// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "pipward/paper/millimetres.h"
#include "pipward/paper/qr_code.h"

/// What stands on a page, as plain data: layouts make it, the writer draws it, tests look at it.
namespace pipward::paper {

/// A colour (sRGB).
struct Paint {
    int red = 0;    ///< 0..255
    int green = 0;  ///< 0..255
    int blue = 0;   ///< 0..255 each

    bool operator==(const Paint&) const = default;
};

inline constexpr Paint black_paint{0, 0, 0};        ///< text and marks
inline constexpr Paint grey_paint{120, 120, 120};   ///< what is said beside
inline constexpr Paint white_paint{255, 255, 255};  ///< the paper

/// Letters of print_font of typesetter.h.
struct Face {
    double points = 10;  ///< size: 1/72 inch an em
    bool bold = false;   ///< else regular
};

/// Where lines of text stand in their box.
enum class Align {
    left,    ///< at its left edge
    centre,  ///< in its middle
    right    ///< at its right edge
};

/// Text that begins at the upper left corner of its box and wraps at the box's width where `wraps`.
struct TextPiece {
    std::string text;           ///< plain UTF-8, not escaped
    Box box;                    ///< its height is no bound, nor its width unless `wraps`
    Face face;                  ///< size and weight
    Align side = Align::left;   ///< within the box
    bool wraps = false;         ///< at words, then anywhere
    Paint paint = black_paint;  ///< of the letters
    bool halo = false;          ///< a white rim, so that it can be read across lines
};

/// A line from corner to corner.
struct LinePiece {
    std::vector<PaperSpot> through;     ///< two points or more
    Millimetres width{0.2};             ///< of the stroke
    Paint paint = black_paint;          ///< of the stroke
    std::vector<Millimetres> dashes{};  ///< drawn, left out, drawn ...; none: an unbroken line
};

/// A closed shape.
struct ShapePiece {
    std::vector<PaperSpot> corners;  ///< three or more; the last is joined to the first
    Paint fill = black_paint;        ///< inside
    Paint edge = black_paint;        ///< of the stroke around it
    Millimetres edge_width{0.15};    ///< 0: no edge
};

/// A circle.
struct DiscPiece {
    PaperSpot middle;              ///< of the circle
    Millimetres diameter;          ///< to the middle of its edge
    Paint fill = black_paint;      ///< inside
    Paint edge = black_paint;      ///< of the stroke around it
    Millimetres edge_width{0.15};  ///< 0: no edge
};

/// The code and its free zone fill the box, which is a square.
struct QrPiece {
    Box box;      ///< free zone included
    QrCode code;  ///< black on white
};

/// One thing that stands on a page.
using PagePiece = std::variant<TextPiece, LinePiece, ShapePiece, DiscPiece, QrPiece>;

/// One side of paper.
struct Page {
    PageSize size;                  ///< of the paper
    std::vector<PagePiece> pieces;  ///< later ones lie above earlier ones
};

/// Closed, along the edges of the box.
LinePiece outline_of(const Box& box, Millimetres width, Paint paint);

}  // namespace pipward::paper
