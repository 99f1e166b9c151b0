// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/style/layer_style.h"

/// The colours of the map. Distinguished by people who see colours otherwise too: Okabe & Ito (2008), "Color
/// Universal Design"; shapes and legend words always tell the same as colours do.
namespace pipward::style::ink {

inline constexpr Ink orange{230, 159, 0};
inline constexpr Ink sky_blue{86, 180, 233};
inline constexpr Ink green{0, 158, 115};
inline constexpr Ink yellow{240, 228, 66};
inline constexpr Ink blue{0, 114, 178};
inline constexpr Ink vermilion{213, 94, 0};
inline constexpr Ink purple{204, 121, 167};
inline constexpr Ink dark{40, 40, 40};
inline constexpr Ink grey{140, 140, 140};
inline constexpr Ink white{255, 255, 255};
inline constexpr Ink clear{255, 255, 255, 0};

/// A colour of an ordered scale, 0 (dark) to 1 (light), between the anchor colours of "viridis" (Smith and
/// van der Walt 2015, public domain).
Ink ordered(double share);

}  // namespace pipward::style::ink
