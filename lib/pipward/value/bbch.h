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
    int code = 0;

    auto operator<=>(const Bbch&) const = default;
};

inline constexpr Bbch balloon_stage{59};
inline constexpr Bbch first_bloom{60};
inline constexpr Bbch full_bloom{65};
inline constexpr Bbch bloom_end{69};

struct BbchWords {
    Bbch stage;
    std::string_view words;  ///< one line, our own wording
};

/// Every stage the pome-fruit scale defines, in order. 58, 66, 68 and 70 are not defined.
std::span<const BbchWords> bbch_stages();
/// The stage, or nothing for a code that the pome-fruit scale does not define.
std::optional<Bbch> make_bbch(int code);
std::string_view words_of(Bbch stage);

}  // namespace pipward::value
