// SPDX-License-Identifier: MIT
#pragma once

#include <compare>

namespace pipward::paper {

/// A length on paper.
struct Millimetres {
    double value = 0;

    auto operator<=>(const Millimetres&) const = default;
};

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
constexpr double operator/(Millimetres a, Millimetres b) {
    return a.value / b.value;
}

/// A point of print is 1/72 inch, an inch 25.4 mm.
constexpr double to_points(Millimetres length) {
    return length.value * 72.0 / 25.4;
}
constexpr Millimetres from_points(double points) {
    return {points * 25.4 / 72.0};
}

/// A place on a page, from its upper left corner.
struct PaperSpot {
    Millimetres x;
    Millimetres y;
};

constexpr PaperSpot operator+(PaperSpot a, PaperSpot b) {
    return {a.x + b.x, a.y + b.y};
}

struct PageSize {
    Millimetres width;
    Millimetres height;
};

inline constexpr PageSize a4_page{{210}, {297}};
inline constexpr PageSize a3_page{{297}, {420}};
inline constexpr PageSize letter_page{{215.9}, {279.4}};

constexpr PageSize turned(PageSize page) {
    return {page.height, page.width};
}

struct Box {
    Millimetres left;
    Millimetres top;
    Millimetres width;
    Millimetres height;

    constexpr Millimetres right() const { return left + width; }
    constexpr Millimetres bottom() const { return top + height; }
    constexpr PaperSpot middle() const { return {left + width / 2, top + height / 2}; }
};

/// Smaller by `by` on every side.
constexpr Box inset(const Box& box, Millimetres by) {
    return {box.left + by, box.top + by, box.width - by * 2, box.height - by * 2};
}

constexpr bool overlap(const Box& a, const Box& b) {
    return a.left < b.right() && b.left < a.right() && a.top < b.bottom() && b.top < a.bottom();
}

constexpr bool holds(const Box& outer, const Box& inner) {
    return outer.left <= inner.left && outer.top <= inner.top && inner.right() <= outer.right() &&
           inner.bottom() <= outer.bottom();
}

}  // namespace pipward::paper
