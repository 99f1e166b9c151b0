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

struct Paint {
    int red = 0;
    int green = 0;
    int blue = 0;  ///< 0..255 each

    bool operator==(const Paint&) const = default;
};

inline constexpr Paint black_paint{0, 0, 0};
inline constexpr Paint grey_paint{120, 120, 120};
inline constexpr Paint white_paint{255, 255, 255};

struct Face {
    double points = 10;
    bool bold = false;
};

enum class Align { left, centre, right };

/// Text that begins at the upper left corner of its box and wraps at the box's width where `wraps`.
struct TextPiece {
    std::string text;
    Box box;
    Face face;
    Align side = Align::left;
    bool wraps = false;
    Paint paint = black_paint;
    bool halo = false;  ///< a white rim, so that it can be read across lines
};

struct LinePiece {
    std::vector<PaperSpot> through;
    Millimetres width{0.2};
    Paint paint = black_paint;
    std::vector<Millimetres> dashes{};  ///< drawn, left out, drawn ...; none: an unbroken line
};

/// A closed shape.
struct ShapePiece {
    std::vector<PaperSpot> corners;
    Paint fill = black_paint;
    Paint edge = black_paint;
    Millimetres edge_width{0.15};  ///< 0: no edge
};

struct DiscPiece {
    PaperSpot middle;
    Millimetres diameter;
    Paint fill = black_paint;
    Paint edge = black_paint;
    Millimetres edge_width{0.15};
};

/// The code and its free zone fill the box, which is a square.
struct QrPiece {
    Box box;
    QrCode code;
};

using PagePiece = std::variant<TextPiece, LinePiece, ShapePiece, DiscPiece, QrPiece>;

struct Page {
    PageSize size;
    std::vector<PagePiece> pieces;  ///< later ones lie above earlier ones
};

LinePiece outline_of(const Box& box, Millimetres width, Paint paint);

}  // namespace pipward::paper
