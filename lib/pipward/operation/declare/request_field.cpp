// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/detail/request_field.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "pipward/operation/declare/parameter_text.h"

namespace pipward::operation::detail {

ParameterKind kind_of(bool) {
    return YesNoKind{};
}
ParameterKind kind_of(int) {
    return WholeKind{};
}
ParameterKind kind_of(double) {
    return NumberKind{};
}
ParameterKind kind_of(const std::vector<int>&) {
    return WholeListKind{};
}
ParameterKind kind_of(Celsius) {
    return NumberKind{.unit = "°C", .least = {}, .most = {}};
}
ParameterKind kind_of(CelsiusStep) {
    return NumberKind{.unit = "kelvin", .least = {}, .most = {}};
}
ParameterKind kind_of(Share) {
    return NumberKind{.unit = std::string(share_unit), .least = 0, .most = 1};
}
ParameterKind kind_of(Metres) {
    return NumberKind{.unit = "m", .least = {}, .most = {}};
}
ParameterKind kind_of(Milligrams) {
    return NumberKind{.unit = "mg", .least = {}, .most = {}};
}
ParameterKind kind_of(Day) {
    return DayKind{};
}
ParameterKind kind_of(const std::string&) {
    return TextKind{};
}
ParameterKind kind_of(const BookName&) {
    return BookKind{};
}
ParameterKind kind_of(const NewBookName&) {
    return NewBookKind{};
}
ParameterKind kind_of(const InputFile&) {
    return FileKind{};
}

void read_field(const std::string& text, bool& field) {
    field = *yes_no_from(text);
}
void read_field(const std::string& text, int& field) {
    field = *whole_from(text);
}
void read_field(const std::string& text, double& field) {
    field = *number_from(text);
}
void read_field(const std::string& text, std::vector<int>& field) {
    field = *wholes_from(text);
}
void read_field(const std::string& text, Celsius& field) {
    field.degrees = *number_from(text);
}
void read_field(const std::string& text, CelsiusStep& field) {
    field.degrees = *number_from(text);
}
void read_field(const std::string& text, Share& field) {
    field.value = *number_from(text);
}
void read_field(const std::string& text, Metres& field) {
    field.value = *number_from(text);
}
void read_field(const std::string& text, Milligrams& field) {
    field.value = *number_from(text);
}
void read_field(const std::string& text, Day& field) {
    field = *parse_iso_day(text);
}
void read_field(const std::string& text, std::string& field) {
    field = text;
}
void read_field(const std::string& text, BookName& field) {
    field.location = text;
}
void read_field(const std::string& text, NewBookName& field) {
    field.path = text;
}
void read_field(const std::string& text, InputFile& field) {
    field.path = text;
}

std::string show_field(bool field) {
    return field ? "yes" : "no";
}
std::string show_field(int field) {
    return fmt::format("{}", field);
}
std::string show_field(double field) {
    return fmt::format("{}", field);
}
std::string show_field(const std::vector<int>& field) {
    return fmt::format("{}", fmt::join(field, ","));
}
std::string show_field(Celsius field) {
    return show_field(field.degrees);
}
std::string show_field(CelsiusStep field) {
    return show_field(field.degrees);
}
std::string show_field(Share field) {
    return show_field(field.value);
}
std::string show_field(Metres field) {
    return show_field(field.value);
}
std::string show_field(Milligrams field) {
    return show_field(field.value);
}
std::string show_field(Day field) {
    return to_iso(field);
}
std::string show_field(const std::string& field) {
    return field;
}
std::string show_field(const BookName& field) {
    return field.location;
}
std::string show_field(const NewBookName& field) {
    return field.path;
}
std::string show_field(const InputFile& field) {
    return field.path;
}

}  // namespace pipward::operation::detail
