// SPDX-License-Identifier: MIT
#pragma once

/// The rooms whose names every other room speaks: `pipward::Day` is `pipward::value::Day`. They are made
/// inline here and only opened elsewhere, for the desktop's meta-object compiler does not read `namespace
/// pipward::inline value`.
namespace pipward {

inline namespace value {}
inline namespace record {}

}  // namespace pipward
