// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace pipward::place::detail {

/// Whether characters that are taken for each other (look_of) count as equal.
enum class Eye { sharp, forgiving };

/// How many slips of the hand lie between a search text and a name: letters added, left out, changed, or two
/// neighbours swapped (Damerau 1964; no letter is touched twice). Calculated 64 letters at a time, after
/// Myers 1999, J. ACM 46:395, with the swap of Hyyrö 2003, Nordic J. Comput. 10:29. Letters are bytes.
class Likeness {
  public:
    static constexpr std::size_t longest = 64;

    /// `query` has 1 to 64 bytes; what is longer is cut.
    explicit Likeness(std::string_view query, Eye eye = Eye::sharp);

    /// Slips between the search text and the whole of `name`.
    int slips_in_all(std::string_view name) const;
    /// Slips between the search text and the part of `name` that is most like it.
    int slips_in_part(std::string_view name) const;

    std::size_t size() const { return size_; }

  private:
    template <bool whole>
    int slips(std::string_view name) const;

    std::array<std::uint64_t, 256> places_{};  // of each byte in the search text
    std::uint64_t last_ = 0;
    std::size_t size_ = 0;
};

/// Which letters a text has, as bits; those that look alike share theirs. What a search text has and a name
/// lacks costs a slip each, which lets most names be passed over at a glance.
std::uint64_t letters_of(std::string_view text);

class LettersSought {
  public:
    explicit LettersSought(std::string_view query);
    /// How many letters of the search text a name lacks at the least: never more than slips_in_part().
    int lacking(std::uint64_t name) const;

  private:
    std::uint64_t bits_ = 0;
    std::array<int, 64> times_{};  // how often the search text has the letters of a bit
};

}  // namespace pipward::place::detail
