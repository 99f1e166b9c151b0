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
namespace pipward::dress {

struct Ink {
    int red = 0;
    int green = 0;
    int blue = 0;
    int opacity = 255;  ///< 0 (clear) to 255
};

enum class MarkerShape { circle, square, triangle, diamond, star, pentagon, cross };

/// A length that grows with the map between two bounds.
struct GrowingSize {
    double metres = 1;
    double least_mm = 1;
    double most_mm = 3;
};

struct MarkerLook {
    MarkerShape shape = MarkerShape::circle;
    Ink fill{};
    Ink edge{};
    GrowingSize size{};
    GrowingSize edge_width{.metres = 0.1, .least_mm = 0.15, .most_mm = 0.3};
    double aside_mm = 0;  ///< to the right of the point
    double above_mm = 0;
};
struct LineLook {
    Ink ink{};
    double width_mm = 0.3;
    bool arrow = false;  ///< at the line's end
};
struct AreaLook {
    Ink fill{};
    Ink edge{};
    double edge_mm = 0.4;
};
using Look = std::variant<MarkerLook, LineLook, AreaLook>;

/// The rows that answer to `filter`, a desktop expression; all rows where it is empty.
struct RuleLook {
    std::string words;  ///< in the legend
    std::string filter;
    Look look;
    int farthest = 0;  ///< drawn only while the map is nearer than 1 : this; 0 for always
};

enum class LabelPlace { around_point, below_point, at_start_of_line, inside_area };

/// Labels that are drawn while the map's scale is 1 : `nearest` to 1 : `farthest`.
struct LabelLook {
    std::string expression;
    double points = 7;
    Ink ink{};
    bool bold = false;
    LabelPlace place = LabelPlace::around_point;
    double distance_mm = 1;
    int nearest = 1;
    int farthest = 1000;
    int priority = 5;  ///< 0 to 10: who stays where two have no room
};

/// From which day until which a row is there, by its columns.
struct Lasting {
    std::string from;
    std::string to;
};

struct PlainText {
    bool long_text = false;
    bool offers_known = false;  ///< completes to what stands in the column already
};
struct NumberBox {
    double low = 0;
    double high = 0;
    bool whole = false;
    std::string unit{};
};
struct DayBox {};
struct PickList {
    std::vector<book::Choice> choices;  ///< `meaning` is what people see
};
/// A pick list of another table's names.
struct PickFrom {
    std::string table;
    std::string column;
    std::string within{};  ///< a column that both must share; empty where the name alone tells
};
struct Hidden {};
using Widget = std::variant<PlainText, NumberBox, DayBox, PickList, PickFrom, Hidden>;

struct FieldDress {
    std::string column;
    std::string alias;
    Widget widget;
    bool required = false;
    bool unique = false;
    std::string rule{};        ///< an expression that must hold; empty where anything goes
    std::string rule_words{};  ///< what to tell somebody who breaks it
};

struct FormGroup {
    std::string title;
    std::vector<std::string> columns;
};

struct LayerDress {
    std::string table;
    std::string title;
    book::GeometryKind geometry = book::GeometryKind::none;
    bool read_only = false;  ///< a result, replaced as a whole
    std::vector<FieldDress> fields;
    std::vector<FormGroup> groups;
    std::vector<RuleLook> rules;
    std::optional<LabelLook> label{};
    std::optional<Lasting> lasting{};
    std::string row_name{};  ///< an expression that names one row
    std::string map_tip{};   ///< HTML with expressions in [% %]; empty for none
};

}  // namespace pipward::dress
