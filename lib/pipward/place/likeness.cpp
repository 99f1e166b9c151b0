// SPDX-License-Identifier: MIT
#include "pipward/place/detail/likeness.h"

#include <algorithm>
#include <bit>

#include "pipward/place/detail/misreading.h"

namespace pipward::place::detail {

Likeness::Likeness(std::string_view query, Eye eye) {
    query = query.substr(0, longest);
    size_ = query.size();
    for (std::size_t i = 0; i < size_; ++i) {
        const auto here = std::uint64_t{1} << i;
        places_[static_cast<unsigned char>(query[i])] |= here;
        for (const char other : eye == Eye::forgiving ? looks_like(query[i]) : std::string_view{}) {
            places_[static_cast<unsigned char>(other)] |= here;
        }
    }
    last_ = size_ == 0 ? 0 : std::uint64_t{1} << (size_ - 1);
}

// The names of the variables are Hyyrö's: which cells of a column of the table of distances are one more (P)
// or one less (N) than their neighbour above (vertical) or to the left (horizontal), and which equal the cell
// on the diagonal (D0).
template <bool whole>
int Likeness::slips(std::string_view name) const {
    std::uint64_t vertical_p = ~std::uint64_t{0};
    std::uint64_t vertical_n = 0;
    std::uint64_t d0 = 0;
    std::uint64_t places_before = 0;
    int distance = static_cast<int>(size_);
    int least = distance;
    for (const char letter : name) {
        const std::uint64_t places = places_[static_cast<unsigned char>(letter)];
        const std::uint64_t swapped = ((~d0 & places) << 1U) & places_before;
        d0 = (((places & vertical_p) + vertical_p) ^ vertical_p) | places | vertical_n | swapped;
        std::uint64_t horizontal_p = vertical_n | ~(d0 | vertical_p);
        std::uint64_t horizontal_n = d0 & vertical_p;
        distance += (horizontal_p & last_) != 0 ? 1 : 0;
        distance -= (horizontal_n & last_) != 0 ? 1 : 0;
        least = std::min(least, distance);
        // A part may begin anywhere in the name at no cost; the whole begins at its beginning.
        horizontal_p = horizontal_p << 1U | (whole ? 1U : 0U);
        horizontal_n <<= 1U;
        vertical_p = horizontal_n | ~(d0 | horizontal_p);
        vertical_n = horizontal_p & d0;
        places_before = places;
    }
    return whole ? distance : least;
}

int Likeness::slips_in_all(std::string_view name) const {
    return size_ == 0 ? static_cast<int>(name.size()) : slips<true>(name);
}

int Likeness::slips_in_part(std::string_view name) const {
    return slips<false>(name);
}

namespace {

// Letters and digits have a bit each, and digits another for all but the first of the kind; everything else
// shares what is left.
unsigned bit_of(char c, std::uint64_t before) {
    c = look_of(c);
    if (c >= 'a' && c <= 'z') {
        return static_cast<unsigned>(c - 'a');
    }
    if (c >= '0' && c <= '9') {
        const auto once = static_cast<unsigned>(26 + c - '0');
        return (before >> once & 1U) != 0 ? once + 10U : once;
    }
    return 46U + static_cast<unsigned char>(c) % 18U;
}

}  // namespace

std::uint64_t letters_of(std::string_view text) {
    std::uint64_t bits = 0;
    for (const char c : text) {
        bits |= std::uint64_t{1} << bit_of(c, bits);
    }
    return bits;
}

LettersSought::LettersSought(std::string_view query) {
    for (const char c : query) {
        const auto bit = bit_of(c, bits_);
        bits_ |= std::uint64_t{1} << bit;
        ++times_[bit];
    }
}

int LettersSought::lacking(std::uint64_t name) const {
    int lacking = 0;
    for (auto missed = bits_ & ~name; missed != 0; missed &= missed - 1) {
        lacking += times_[static_cast<std::size_t>(std::countr_zero(missed))];
    }
    return lacking;
}

}  // namespace pipward::place::detail
