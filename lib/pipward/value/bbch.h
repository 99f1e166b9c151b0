// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <optional>
#include <span>
#include <string_view>

#include "pipward/value/spoken.h"

namespace pipward::value {

/// A principal-and-secondary growth stage of pome fruit, 00 to 99, on the BBCH scale
/// (Meier et al. 1994; Meier, Growth stages of mono- and dicotyledonous plants, BBCH Monograph).
struct Bbch {
    int code = 0;  ///< two digits, as the scale writes them; make_bbch() gives only defined ones

    auto operator<=>(const Bbch&) const = default;
};

inline constexpr Bbch balloon_stage{59};  ///< petals form a hollow ball: when pollen is collected
inline constexpr Bbch first_bloom{60};    ///< the first flowers are open
inline constexpr Bbch full_bloom{65};     ///< at least half of the flowers are open
inline constexpr Bbch bloom_end{69};      ///< all petals have fallen

/// A stage with its meaning for people.
struct BbchWords {
    Bbch stage;              ///< a defined one
    std::string_view words;  ///< one line, our own wording
};

/// Every stage the pome-fruit scale defines, in order. 58, 66, 68 and 70 are not defined.
std::span<const BbchWords> bbch_stages();
/// The stage, or nothing for a code that the pome-fruit scale does not define.
std::optional<Bbch> make_bbch(int code);
/// The stage's line of words in English; empty for a code that the scale does not define.
std::string_view words_of(Bbch stage);

}  // namespace pipward::value
