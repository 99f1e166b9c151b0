// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What a bloom chart consists of, as plain data: the sheet's writer makes SVG of it, a desktop paints it.
/// Places are in drawing units, about a pixel of a screen each, from the upper left corner.
namespace pipward::paper {

/// A place in the drawing.
struct Spot {
    double x = 0;  ///< to the right
    double y = 0;  ///< downwards
};

/// The chart's colours by what they are for.
enum class Ink {
    none,   ///< nothing is drawn
    paper,  ///< the ground
    ink,    ///< text
    quiet,  ///< text beside
    grid,   ///< Mondays and rows
    month,  ///< beginnings of months
    petal,  ///< fill of full bloom
    stem,   ///< its edge, and first bloom to end
    tick,   ///< the median
    now     ///< the day of the forecast
};

/// What a mark means; chart_look() says how it is drawn.
enum class MarkRole {
    name,       ///< of an accession or a month
    days,       ///< the day in words
    quiet,      ///< what is said beside
    as_of,      ///< the day of the forecast
    grid,       ///< a Monday, or the edge of a row
    month,      ///< the beginning of one
    life,       ///< first bloom to end of bloom
    band,       ///< full bloom, of own observations
    lent_band,  ///< full bloom, borrowed
    median      ///< full bloom's median
};

/// How a mark is drawn; a text has no stroke.
struct ChartLook {
    Ink fill = Ink::none;          ///< of text: its colour
    Ink stroke = Ink::none;        ///< none: no line
    double width = 0;              ///< of the stroke
    std::vector<double> dashes{};  ///< drawn, left out, drawn ...; none: an unbroken line
    bool bold = false;             ///< of text
};
/// The same on every ground: the inks differ.
ChartLook chart_look(MarkRole role);

/// "#rrggbb" or "#rgb" of each ink but `none`, in their order.
using Inks = std::array<std::string_view, 9>;
/// On a light or a dark ground. Plum and ochre stay apart for every common kind of colour blindness and
/// differ in lightness; each mark also has a shape of its own, so a copy in black and white reads the same.
const Inks& chart_inks(bool dark);
/// Of any ink but `none`.
std::string_view colour_of(Ink ink, const Inks& inks);

/// Which part of a text stands at its spot.
enum class Anchor {
    start,   ///< its left end
    middle,  ///< its middle
    end      ///< its right end
};

/// Text on its base line.
struct TextMark {
    MarkRole role = MarkRole::name;  ///< name, days, quiet or as_of
    Spot at;                         ///< on the base line
    Anchor anchor = Anchor::start;   ///< which part of it stands there
    std::string text;                ///< plain, not escaped
    bool over = false;               ///< keeps what lies under it away from its letters
};

/// A straight line.
struct LineMark {
    MarkRole role = MarkRole::grid;  ///< what it means
    Spot from;                       ///< one end
    Spot to;                         ///< the other
};

/// A box with rounded corners.
struct BoxMark {
    MarkRole role = MarkRole::band;  ///< what it means
    Spot at;                         ///< its upper left corner
    double width = 0;                ///< 0 or more
    double height = 0;               ///< 0 or more
};
inline constexpr double box_corner = 2;  ///< the radius of a box's corners

using ChartMark = std::variant<TextMark, LineMark, BoxMark>;  ///< One thing that is drawn.
using ChartMarks = std::vector<ChartMark>;                    ///< later ones lie above earlier ones

/// Puts the one's marks above the other's.
void lay_over(ChartMarks& marks, ChartMarks above);

}  // namespace pipward::paper
