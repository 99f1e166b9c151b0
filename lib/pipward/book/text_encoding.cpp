// SPDX-License-Identifier: MIT
#include "pipward/book/text_encoding.h"

#include <cpl_conv.h>
#include <cpl_string.h>

#include <memory>

#include "pipward/book/detail/ogr_session.h"

namespace pipward::book {
namespace {

constexpr std::string_view undefined_in_1252 = "\x81\x8D\x8F\x90\x9D";
constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";

std::optional<std::string> taken(char* recoded, const detail::OgrMessages& messages) {
    const std::unique_ptr<char, decltype(&CPLFree)> owned(recoded, CPLFree);
    return owned == nullptr || messages.failures() > 0 || !messages.warnings().empty()
               ? std::nullopt
               : std::optional{std::string(owned.get())};
}

std::optional<std::string> from_1252(std::string_view bytes) {
    if (bytes.find_first_of(undefined_in_1252) != bytes.npos) {
        return std::nullopt;
    }
    const detail::OgrMessages messages;
    return taken(CPLRecode(std::string(bytes).c_str(), "CP1252", CPL_ENC_UTF8), messages);
}

// The library takes the units of UTF-16 one in each wide character, in the order of this machine.
std::optional<std::string> from_utf16(std::string_view bytes, bool little) {
    std::wstring units;
    for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
        const auto low = static_cast<unsigned char>(bytes[little ? i : i + 1]);
        const auto high = static_cast<unsigned char>(bytes[little ? i + 1 : i]);
        units += static_cast<wchar_t>(low + 256 * high);
    }
    const std::wstring_view text = std::wstring_view(units).substr(units.starts_with(L'\xFEFF') ? 1 : 0);
    if (bytes.size() % 2 != 0 || text.find(L'\0') != text.npos) {
        return std::nullopt;
    }
    const detail::OgrMessages messages;
    return taken(CPLRecodeFromWChar(text.data(), CPL_ENC_UTF16, CPL_ENC_UTF8), messages);
}

}  // namespace

std::optional<std::string> as_utf8(std::string_view bytes, TextEncoding encoding) {
    const bool is_utf16 = encoding == TextEncoding::utf16_little || encoding == TextEncoding::utf16_big;
    if (is_utf16) {
        return from_utf16(bytes, encoding == TextEncoding::utf16_little);
    }
    if (encoding == TextEncoding::utf8) {
        const auto text = utf8_in(bytes);
        return text ? std::optional{std::string(*text)} : std::nullopt;
    }
    return bytes.find('\0') == bytes.npos ? from_1252(bytes) : std::nullopt;
}

std::optional<std::string_view> utf8_in(std::string_view bytes) {
    bytes.remove_prefix(bytes.starts_with(utf8_mark) ? utf8_mark.size() : 0);
    const bool is_utf8 =
        bytes.find('\0') == bytes.npos && CPLIsUTF8(bytes.data(), static_cast<int>(bytes.size())) != 0;
    return is_utf8 ? std::optional{bytes} : std::nullopt;
}

}  // namespace pipward::book
