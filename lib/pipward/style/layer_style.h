// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "pipward/book/schema.h"

/// How one layer of a book looks and is filled in, as plain data: no file format stands in here.
/// Sizes in metres grow with the map, between a least and a most size in millimetres on the page or screen.
namespace pipward::style {

/// A colour: parts of red, green and blue, 0 to 255 each (sRGB).
struct Ink {
    int red = 0;        ///< 0 to 255
    int green = 0;      ///< 0 to 255
    int blue = 0;       ///< 0 to 255
    int opacity = 255;  ///< 0 (clear) to 255
};

/// Drawn about the point.
enum class MarkerShape {
    circle,    ///< filled
    square,    ///< its sides level and upright
    triangle,  ///< a corner upwards
    diamond,   ///< a square on its corner
    star,      ///< of five points
    pentagon,  ///< a corner upwards
    cross      ///< two strokes from corner to corner
};

/// A length that grows with the map between two bounds.
struct GrowingSize {
    double metres = 1;    ///< on the ground, above 0
    double least_mm = 1;  ///< on the page, above 0
    double most_mm = 3;   ///< on the page, least_mm or more
};

/// A point.
struct MarkerLook {
    MarkerShape shape = MarkerShape::circle;                                  ///< drawn about the place
    Ink fill{};                                                               ///< inside
    Ink edge{};                                                               ///< around it
    GrowingSize size{};                                                       ///< from side to side
    GrowingSize edge_width{.metres = 0.1, .least_mm = 0.15, .most_mm = 0.3};  ///< of the stroke
    double aside_mm = 0;                                                      ///< to the right of the point
    double above_mm = 0;   ///< above the point; negative below
    bool on_disc = false;  ///< a white disc behind it, which hides what lies below
};
/// A line.
struct LineLook {
    Ink ink{};              ///< of the stroke
    double width_mm = 0.3;  ///< of the stroke
    bool arrow = false;     ///< at the line's end
};
/// An area.
struct AreaLook {
    Ink fill{};            ///< inside
    Ink edge{};            ///< around it
    double edge_mm = 0.4;  ///< width of that stroke
};
using Look = std::variant<MarkerLook, LineLook, AreaLook>;  ///< By the layer's geometry.

/// The rows that answer to `filter`, a desktop expression; all rows where it is empty.
struct RuleLook {
    std::string words;   ///< in the legend
    std::string filter;  ///< which rows; empty for all
    Look look;           ///< of those rows
    int farthest = 0;    ///< drawn only while the map is nearer than 1 : this; 0 for always
};

/// Where a label stands.
enum class LabelPlace {
    around_point,      ///< wherever there is room beside it
    below_point,       ///< below it, or beside it where there is no room
    at_start_of_line,  ///< to the left of its first point
    inside_area        ///< level
};

/// Labels that are drawn while the map's scale is 1 : `nearest` to 1 : `farthest`.
struct LabelLook {
    std::string expression;                       ///< a desktop expression that gives the text
    double points = 7;                            ///< size of the letters: 1/72 inch
    Ink ink{};                                    ///< of the letters
    bool bold = false;                            ///< else regular
    LabelPlace place = LabelPlace::around_point;  ///< by the geometry
    double distance_mm = 1;                       ///< from the point or line
    int nearest = 1;                              ///< largest scale, as its denominator
    int farthest = 1000;                          ///< smallest scale, as its denominator
    int priority = 5;                             ///< 0 to 10: who stays where two have no room
};

/// From which day until which a row is there, by its columns.
struct Lasting {
    std::string from;  ///< a column of days; a row without its day was there always
    std::string to;    ///< a column of days; a row without its day is there still
};

/// A box for text.
struct PlainText {
    bool long_text = false;     ///< of several lines
    bool offers_known = false;  ///< completes to what stands in the column already
};
/// A box for a number.
struct NumberBox {
    double low = 0;      ///< least that may be typed, in `unit`
    double high = 0;     ///< most that may be typed, in `unit`
    bool whole = false;  ///< no decimals
    std::string unit{};  ///< shown behind the number; empty for none
};
/// A calendar to choose a day from; may be left empty.
struct DayBox {};
/// A closed list.
struct ValueList {
    std::vector<book::Choice> choices;  ///< `meaning` is what people see
};
/// A value list of another table's names.
struct ValuesFrom {
    std::string table;     ///< of the book
    std::string column;    ///< that is stored
    std::string within{};  ///< a column that both must share; empty where the name alone tells
};
/// A column that is not shown in the form.
struct Hidden {};
/// How a column is filled in.
using Widget = std::variant<PlainText, NumberBox, DayBox, ValueList, ValuesFrom, Hidden>;

/// One column of a form.
struct FieldStyle {
    std::string column;        ///< as the book stores its name
    std::string alias;         ///< what people see instead
    Widget widget;             ///< by type and domain of the column
    bool required = false;     ///< may not be left empty
    bool unique = false;       ///< no two rows may share a value
    std::string rule{};        ///< an expression that must hold; empty where anything goes
    std::string rule_words{};  ///< what to tell somebody who breaks it
};

/// One tab of a wide form.
struct FormGroup {
    std::string title;                 ///< on the tab
    std::vector<std::string> columns;  ///< in the order shown
};

/// One layer, as a desktop shows it.
struct LayerStyle {
    std::string table;                                       ///< of the book
    std::string title;                                       ///< in the list of layers
    book::GeometryKind geometry = book::GeometryKind::none;  ///< of its rows; `rules` are empty without one
    bool read_only = false;                                  ///< a result, replaced as a whole
    std::vector<FieldStyle> fields;                          ///< one a column, in the table's order
    std::vector<FormGroup> groups;                           ///< empty for a form without tabs
    std::vector<RuleLook> rules;                             ///< a row is drawn by each that it answers to
    std::string weight{};              ///< a desktop expression; rows of more weight are drawn over others
    std::optional<LabelLook> label{};  ///< nothing where rows carry none
    std::optional<Lasting> lasting{};  ///< nothing where rows are always there
    std::string row_name{};            ///< an expression that names one row
    std::string map_tip{};             ///< HTML with expressions in [% %]; empty for none
};

}  // namespace pipward::style
