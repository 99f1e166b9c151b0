// SPDX-License-Identifier: MIT
#pragma once

#include <concepts>
#include <optional>
#include <type_traits>

#include "pipward/value/spoken.h"
#include "pipward/value/word.h"

/// What a field of a struct is like, for those who bind fields to columns and parameters.
namespace pipward::value {

/// An enum with a table words(Enum).
template <class Field>
concept Worded = std::is_enum_v<Field> && requires(Field field) {
    words(field).front().meaning;
};

/// Whether a field is an optional, and of what: of any other type, it is not.
template <class Field>
struct OptionalOf : std::false_type {
    using Value = Field;  ///< the type as it is
};
/// Of an optional: true, and the type that it may hold.
template <class Inner>
struct OptionalOf<std::optional<Inner>> : std::true_type {
    using Value = Inner;  ///< without the optional
};

/// The type itself, or what an optional of it may hold.
template <class Field>
using ValueOf = typename OptionalOf<Field>::Value;

/// Exactly one of these types: no conversion sneaks a float or a long in.
template <class Field, class... Allowed>
concept OneOf = (std::same_as<Field, Allowed> || ...);

}  // namespace pipward::value
