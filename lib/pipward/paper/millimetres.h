// SPDX-License-Identifier: MIT
#pragma once

#include <compare>

namespace pipward::paper {

/// A length on paper.
struct Millimetres {
    double value = 0;  ///< a place may be negative, a size not

    auto operator<=>(const Millimetres&) const = default;
};

/// Sums, multiples and parts of lengths are lengths.
constexpr Millimetres operator+(Millimetres a, Millimetres b) {
    return {a.value + b.value};
}
constexpr Millimetres operator-(Millimetres a, Millimetres b) {
    return {a.value - b.value};
}
constexpr Millimetres operator*(Millimetres a, double factor) {
    return {a.value * factor};
}
constexpr Millimetres operator/(Millimetres a, double divisor) {
    return {a.value / divisor};
}
/// How often one length goes into the other; without a unit.
constexpr double operator/(Millimetres a, Millimetres b) {
    return a.value / b.value;
}

/// A point of print is 1/72 inch, an inch 25.4 mm.
constexpr double to_points(Millimetres length) {
    return length.value * 72.0 / 25.4;
}
/// The way back.
constexpr Millimetres from_points(double points) {
    return {points * 25.4 / 72.0};
}

/// A place on a page, from its upper left corner.
struct PaperSpot {
    Millimetres x;  ///< to the right
    Millimetres y;  ///< downwards
};

/// The spot moved by so much.
constexpr PaperSpot operator+(PaperSpot a, PaperSpot b) {
    return {a.x + b.x, a.y + b.y};
}

/// Of a sheet, both above 0.
struct PageSize {
    Millimetres width;   ///< as it is read
    Millimetres height;  ///< as it is read
};

inline constexpr PageSize a4_page{{210}, {297}};          ///< ISO 216, upright
inline constexpr PageSize a3_page{{297}, {420}};          ///< ISO 216, upright
inline constexpr PageSize letter_page{{215.9}, {279.4}};  ///< 8.5 x 11 inches, upright

/// Across instead of upright.
constexpr PageSize turned(PageSize page) {
    return {page.height, page.width};
}

/// A rectangle on a page.
struct Box {
    Millimetres left;    ///< from the page's left edge
    Millimetres top;     ///< from the page's upper edge, downwards
    Millimetres width;   ///< 0 or more
    Millimetres height;  ///< 0 or more

    /// Of its right edge.
    constexpr Millimetres right() const { return left + width; }
    /// Of its lower edge.
    constexpr Millimetres bottom() const { return top + height; }
    /// Of the rectangle.
    constexpr PaperSpot middle() const { return {left + width / 2, top + height / 2}; }
};

/// Smaller by `by` on every side.
constexpr Box inset(const Box& box, Millimetres by) {
    return {box.left + by, box.top + by, box.width - by * 2, box.height - by * 2};
}

/// Edges that touch do not overlap.
constexpr bool overlap(const Box& a, const Box& b) {
    return a.left < b.right() && b.left < a.right() && a.top < b.bottom() && b.top < a.bottom();
}

/// Edges that touch are still inside.
constexpr bool holds(const Box& outer, const Box& inner) {
    return outer.left <= inner.left && outer.top <= inner.top && inner.right() <= outer.right() &&
           inner.bottom() <= outer.bottom();
}

}  // namespace pipward::paper
