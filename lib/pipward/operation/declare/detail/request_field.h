// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/book/book_at.h"
#include "pipward/operation/operation.h"
#include "pipward/record/words.h"
#include "pipward/value/day.h"
#include "pipward/value/field_type.h"
#include "pipward/value/quantity.h"

/// The types that a field of a request may have. Each has three overloads: the parameter kind it makes, how a
/// text that passed the kind's check is read into it, and how its value is shown as a default.
namespace pipward::operation::detail {

/// An orchard book to work on: a file path or "PG:...".
struct BookName : book::BookAt {};
/// A path for a book that does not exist yet.
struct NewBookName {
    std::string path;
};
struct InputFile {
    std::string path;
};

ParameterKind kind_of(bool);
ParameterKind kind_of(int);
ParameterKind kind_of(double);
ParameterKind kind_of(const std::vector<int>&);
ParameterKind kind_of(Celsius);
ParameterKind kind_of(CelsiusStep);
ParameterKind kind_of(Share);
ParameterKind kind_of(Metres);
ParameterKind kind_of(Milligrams);
ParameterKind kind_of(Day);
ParameterKind kind_of(const std::string&);
ParameterKind kind_of(const BookName&);
ParameterKind kind_of(const NewBookName&);
ParameterKind kind_of(const InputFile&);

void read_field(const std::string& text, bool& field);
void read_field(const std::string& text, int& field);
void read_field(const std::string& text, double& field);
void read_field(const std::string& text, std::vector<int>& field);
void read_field(const std::string& text, Celsius& field);
void read_field(const std::string& text, CelsiusStep& field);
void read_field(const std::string& text, Share& field);
void read_field(const std::string& text, Metres& field);
void read_field(const std::string& text, Milligrams& field);
void read_field(const std::string& text, Day& field);
void read_field(const std::string& text, std::string& field);
void read_field(const std::string& text, BookName& field);
void read_field(const std::string& text, NewBookName& field);
void read_field(const std::string& text, InputFile& field);

std::string show_field(bool field);
std::string show_field(int field);
std::string show_field(double field);
std::string show_field(const std::vector<int>& field);
std::string show_field(Celsius field);
std::string show_field(CelsiusStep field);
std::string show_field(Share field);
std::string show_field(Metres field);
std::string show_field(Milligrams field);
std::string show_field(Day field);
std::string show_field(const std::string& field);
std::string show_field(const BookName& field);
std::string show_field(const NewBookName& field);
std::string show_field(const InputFile& field);

template <class Field>
concept PlainField = OneOf<Field, bool, int, double, std::vector<int>, Celsius, CelsiusStep, Share, Metres,
                           Milligrams, Day, std::string, BookName, NewBookName, InputFile>;
template <class Field>
concept RequestField = PlainField<ValueOf<Field>> || Worded<ValueOf<Field>>;
template <class Field>
concept WholeField = (OneOf<ValueOf<Field>, int, std::vector<int>>);
template <class Field>
concept NumberField = (OneOf<ValueOf<Field>, double, Celsius, CelsiusStep, Share, Metres, Milligrams>);

template <RequestField Field>
ParameterKind field_kind() {
    using Value = ValueOf<Field>;
    if constexpr (Worded<Value>) {
        ChoiceKind kind;
        for (const auto& entry : words(Value{})) {
            kind.options.push_back({std::string(entry.word), std::string(entry.meaning)});
        }
        return kind;
    } else {
        return kind_of(Value{});
    }
}

/// `text` has passed the kind's check.
template <RequestField Field>
void fill_field(const std::string& text, Field& field) {
    if constexpr (OptionalOf<Field>::value) {
        fill_field(text, field.emplace());
    } else if constexpr (Worded<Field>) {
        field = *from_word<Field>(text);
    } else {
        read_field(text, field);
    }
}

template <RequestField Field>
std::string default_of(const Field& field) {
    if constexpr (OptionalOf<Field>::value) {
        return field ? default_of(*field) : std::string{};
    } else if constexpr (Worded<Field>) {
        return std::string(to_word(field));
    } else {
        return show_field(field);
    }
}

}  // namespace pipward::operation::detail
