// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/paper/millimetres.h"

namespace pipward::paper {

/// A QR code as ISO/IEC 18004 has it, without the free zone around it.
struct QrCode {
    int size = 0;            ///< modules a side: 21, 25 ... 177
    std::vector<bool> dark;  ///< row by row from the upper left

    /// Both from 0, below `size`.
    bool is_dark(int row, int column) const { return dark[static_cast<std::size_t>(row * size + column)]; }
};

/// The free zone that a reader needs on every side, in modules.
inline constexpr int qr_free_zone = 4;

/// The smallest module worth printing: four dots of a printer with 300 dots an inch (DENSO WAVE, "Point for
/// setting the module size", qrcode.com, looked up).
inline constexpr Millimetres least_qr_module{0.33};

/// The code of a text, which it carries byte for byte; what is not ASCII is marked as UTF-8. Error correction
/// M: some 15 % of the picture may be lost to dirt and scratches. Nothing where the text is empty, holds a
/// NUL or is too long (2331 bytes).
std::optional<QrCode> qr_code(const std::string& text);

/// The side of a module when the code and its free zone fill a square.
Millimetres module_in(const QrCode& code, Millimetres side);

}  // namespace pipward::paper
