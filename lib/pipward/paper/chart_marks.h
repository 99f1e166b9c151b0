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

struct Spot {
    double x = 0;
    double y = 0;  ///< downwards
};

/// The chart's colours by what they are for.
enum class Ink { none, paper, ink, quiet, grid, month, petal, stem, tick, now };

/// What a mark means; chart_look() says how it is drawn.
enum class MarkRole {
    name,       ///< of an accession or a month
    days,       ///< the day in words
    quiet,      ///< what is said beside
    as_of,      ///< the day of the forecast
    grid,       ///< a Monday, or the edge of a row
    month,      ///< the beginning of one
    life,       ///< first bloom to end of bloom
    band,       ///< full bloom, of own notes
    lent_band,  ///< full bloom, borrowed
    median      ///< full bloom's median
};

struct ChartLook {
    Ink fill = Ink::none;  ///< of text: its colour
    Ink stroke = Ink::none;
    double width = 0;              ///< of the stroke
    std::vector<double> dashes{};  ///< drawn, left out, drawn ...; none: an unbroken line
    bool bold = false;
};
ChartLook chart_look(MarkRole role);

/// "#rrggbb" or "#rgb" of each ink but `none`, in their order.
using Inks = std::array<std::string_view, 9>;
/// On a light or a dark ground. Plum and ochre stay apart for every common kind of colour blindness and
/// differ in lightness; each mark also has a shape of its own, so a copy in black and white reads the same.
const Inks& chart_inks(bool dark);
/// Of any ink but `none`.
std::string_view colour_of(Ink ink, const Inks& inks);

enum class Anchor { start, middle, end };

/// Text on its base line.
struct TextMark {
    MarkRole role = MarkRole::name;
    Spot at;
    Anchor anchor = Anchor::start;
    std::string text;   ///< plain, not escaped
    bool over = false;  ///< keeps what lies under it away from its letters
};

struct LineMark {
    MarkRole role = MarkRole::grid;
    Spot from;
    Spot to;
};

struct BoxMark {
    MarkRole role = MarkRole::band;
    Spot at;  ///< its upper left corner
    double width = 0;
    double height = 0;
};
inline constexpr double box_corner = 2;  ///< the radius of a box's corners

using ChartMark = std::variant<TextMark, LineMark, BoxMark>;
using ChartMarks = std::vector<ChartMark>;  ///< later ones lie above earlier ones

/// Puts the one's marks above the other's.
void lay_over(ChartMarks& marks, ChartMarks above);

}  // namespace pipward::paper
