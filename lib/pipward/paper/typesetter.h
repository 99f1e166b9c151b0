// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "pipward/paper/page.h"

/// How much room text takes, as it will be printed.
namespace pipward::paper {

/// The face of every page, whose widths the layouts are made for. Characters that it lacks come from other
/// fonts of the machine.
inline constexpr const char* print_font = "DejaVu Sans";
/// The height of its small letters, in em (read off the font: 1120 of 2048 units).
inline constexpr double print_font_x_height = 0.547;

/// The height of print_font's small letters at this size.
constexpr Millimetres small_letters(double points) {
    return from_points(points * print_font_x_height);
}

/// The room that a text takes.
struct TextSize {
    Millimetres width;   ///< of its longest line
    Millimetres height;  ///< of all lines
    int lines = 1;       ///< 1 or more
};

/// The size of a text in a face; wrapped at words, then anywhere, where a width is given.
using TextRuler =
    std::function<TextSize(const std::string& text, const Face& face, std::optional<Millimetres> wrap)>;

/// Measures with the machine's fonts. Not for two threads at once.
class Typesetter {
  public:
    /// Looks at the fonts that the machine has.
    Typesetter();
    ~Typesetter();
    /// Holds the drawing library's own objects: neither copied nor moved.
    Typesetter(const Typesetter&) = delete;
    Typesetter& operator=(const Typesetter&) = delete;

    /// As TextRuler tells it; nothing is drawn.
    TextSize measure(const std::string& text, const Face& face, std::optional<Millimetres> wrap) const;
    /// As a ruler; this must outlive it.
    TextRuler ruler() const;
    /// Whether print_font is on this machine.
    bool has_print_font() const;
    /// Whether some font of this machine has every character of the text.
    bool can_show(const std::string& text) const;

    struct Parts;
    /// For the writers of this room.
    const Parts& parts() const { return *parts_; }

  private:
    std::unique_ptr<Parts> parts_;
};

}  // namespace pipward::paper
