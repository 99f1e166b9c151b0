// SPDX-License-Identifier: MIT
#include "pipward/paper/qr_code.h"

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace pipward::paper {
namespace {

using Input = std::unique_ptr<QRinput, decltype(&QRinput_free)>;
using Encoded = std::unique_ptr<QRcode, decltype(&QRcode_free)>;

// The number of UTF-8 among the extended channel interpretations (AIM ITS/04-001).
constexpr unsigned int utf8_channel = 26;

bool is_ascii(const std::string& text) {
    return std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

// Digits and capitals take less room: the library finds the parts.
Encoded encoded_ascii(const std::string& text) {
    return {QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), &QRcode_free};
}

Encoded encoded_utf8(const std::string& text) {
    const Input input(QRinput_new2(0, QR_ECLEVEL_M), &QRinput_free);
    const auto* bytes = reinterpret_cast<const unsigned char*>(text.data());
    const bool taken = input && QRinput_appendECIheader(input.get(), utf8_channel) == 0 &&
                       QRinput_append(input.get(), QR_MODE_8, static_cast<int>(text.size()), bytes) == 0;
    return {taken ? QRcode_encodeInput(input.get()) : nullptr, &QRcode_free};
}

}  // namespace

std::optional<QrCode> qr_code(const std::string& text) {
    constexpr std::size_t most_bytes = 2331;
    if (text.empty() || text.size() > most_bytes || text.find('\0') != std::string::npos) {
        return std::nullopt;
    }
    const auto encoded = is_ascii(text) ? encoded_ascii(text) : encoded_utf8(text);
    if (!encoded) {
        return std::nullopt;
    }
    QrCode code{encoded->width, {}};
    const auto modules = static_cast<std::size_t>(code.size) * static_cast<std::size_t>(code.size);
    for (std::size_t i = 0; i < modules; ++i) {
        code.dark.push_back((encoded->data[i] & 1) != 0);
    }
    return code;
}

Millimetres module_in(const QrCode& code, Millimetres side) {
    return side / (code.size + 2 * qr_free_zone);
}

}  // namespace pipward::paper
