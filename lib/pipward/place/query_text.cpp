// SPDX-License-Identifier: MIT
#include "pipward/place/detail/query_text.h"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <utility>

#include "pipward/value/plain_text.h"

namespace pipward::place::detail {
namespace {

struct Letter {
    std::uint32_t code = 0;
    std::size_t bytes = 1;
};

bool goes_on(std::string_view text, std::size_t at) {
    return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
}

std::uint32_t low_bits(char byte, unsigned mask) {
    return static_cast<unsigned char>(byte) & mask;
}

// The letter at the front; two and three bytes only, which is as far as folding goes. Anything else is taken
// byte by byte.
Letter front_letter(std::string_view text) {
    const auto first = static_cast<unsigned char>(text.front());
    if (first >= 0xC2 && first <= 0xDF && goes_on(text, 1)) {
        return {low_bits(text[0], 0x1F) << 6U | low_bits(text[1], 0x3F), 2};
    }
    if (first >= 0xE0 && first <= 0xEF && goes_on(text, 1) && goes_on(text, 2)) {
        return {low_bits(text[0], 0x0F) << 12U | low_bits(text[1], 0x3F) << 6U | low_bits(text[2], 0x3F), 3};
    }
    return {first, 1};
}

// Of U+00C0 to U+017F, one character each; the capitals stand for two letters, below.
constexpr std::string_view plain_latin =
    "aaaaaaAceeeeiiiidnoooooxouuuuyTSaaaaaaAceeeeiiiidnooooo/ouuuuyTy"
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiIIjjkkklllllll"
    "lllnnnnnnnnnooooooOOrrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";
constexpr std::uint32_t latin_first = 0xC0;

std::string_view two_letters(char capital) {
    switch (capital) {
        case 'A':
            return "ae";
        case 'I':
            return "ij";
        case 'O':
            return "oe";
        case 'S':
            return "ss";
        default:
            return "th";
    }
}

void add_latin(std::string& folded, std::uint32_t code) {
    const char plain = plain_latin[code - latin_first];
    if (plain >= 'A' && plain <= 'Z') {
        folded += two_letters(plain);
    } else {
        folded += plain;
    }
}

void add_two_bytes(std::string& folded, std::uint32_t code) {
    folded += static_cast<char>(0xC0U | code >> 6U);
    folded += static_cast<char>(0x80U | (code & 0x3FU));
}

bool within(std::uint32_t code, std::uint32_t first, std::uint32_t last) {
    return code >= first && code <= last;
}

bool is_blank(std::uint32_t code) {
    return code <= 0x20 || code == 0xA0 || within(code, 0x2000, 0x200A) || within(code, 0x2028, 0x2029) ||
           code == 0x202F || code == 0x3000;
}
// Marks that stand on the letter before them, and signs without width.
bool is_unseen(std::uint32_t code) {
    return within(code, 0x300, 0x36F) || within(code, 0x200B, 0x200D) || code == 0xFEFF || code == 0xAD;
}
bool is_dash(std::uint32_t code) {
    return within(code, 0x2010, 0x2015) || code == 0x2212;
}
bool is_quote(std::uint32_t code) {
    return within(code, 0x2018, 0x201F) || code == 0xAB || code == 0xBB;
}
bool is_capital_with_small_32_on(std::uint32_t code) {
    return within(code, 0x391, 0x3A9) || within(code, 0x410, 0x42F);
}

void add_letter(std::string& folded, Letter letter, std::string_view as_written) {
    const auto code = letter.code;
    if (letter.bytes == 1) {
        const char c = as_written.front();
        folded += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (within(code, latin_first, 0x17F)) {
        add_latin(folded, code);
    } else if (is_capital_with_small_32_on(code)) {
        add_two_bytes(folded, code + 32);
    } else if (within(code, 0x400, 0x40F)) {
        add_two_bytes(folded, code + 80);
    } else if (is_dash(code)) {
        folded += '-';
    } else if (is_quote(code)) {
        folded += '\'';
    } else if (code == 0x2116) {
        folded += "no";
    } else {
        folded += as_written;
    }
}

// Bytes beyond ASCII are parts of letters that are not folded.
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

}  // namespace

std::string folded_text(std::string_view text) {
    std::string folded;
    bool blank_before = false;
    while (!text.empty()) {
        const auto letter = front_letter(text);
        const auto as_written = text.substr(0, letter.bytes);
        text.remove_prefix(letter.bytes);
        if (is_blank(letter.code)) {
            blank_before = !folded.empty();
        } else if (letter.bytes == 1 || !is_unseen(letter.code)) {
            folded += blank_before ? " " : "";
            blank_before = false;
            add_letter(folded, letter, as_written);
        }
    }
    return folded;
}

std::string squeezed(std::string_view folded) {
    std::string kept;
    std::ranges::copy_if(folded, std::back_inserter(kept),
                         [](char c) { return is_digit(c) || is_letter(c); });
    return kept;
}

std::vector<std::string> name_parts(std::string_view folded) {
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < folded.size();) {
        const auto belongs = is_digit(folded[at]) ? is_digit : is_letter;
        std::size_t end = at;
        while (end < folded.size() && belongs(folded[end])) {
            ++end;
        }
        if (end == at) {
            ++at;
            continue;
        }
        auto part = folded.substr(at, end - at);
        while (part.size() > 1 && part.front() == '0') {
            part.remove_prefix(1);
        }
        parts.emplace_back(part);
        at = end;
    }
    return parts;
}

std::vector<std::string> folded_words(std::string_view text) {
    const auto folded = folded_text(text);
    std::vector<std::string> words;
    std::string word;
    for (const char c : folded + " ") {
        if (is_digit(c) || is_letter(c)) {
            word += c;
        } else if (!word.empty()) {
            words.push_back(std::exchange(word, {}));
        }
    }
    return words;
}

bool is_number(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, is_digit);
}

}  // namespace pipward::place::detail
