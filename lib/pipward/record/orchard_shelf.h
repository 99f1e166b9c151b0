// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "pipward/record/orchard.h"

namespace pipward::record {

/// What a row holds in one column: one of `values`, or a text from `from` up to, but without, `to` by the
/// order of bytes, or nothing.
struct Held {
    std::string_view column;                                     ///< of the table
    std::set<std::string> values{};                              ///< as texts
    std::optional<std::pair<std::string, std::string>> range{};  ///< from, to; instead of the values
    bool unknown = false;                                        ///< rows that hold nothing there, instead
};

/// A book of which rows are taken as they are needed, because to read all of them would take too long for one
/// question. What is taken comes to what was taken before; no row is taken twice. Tables and columns are
/// named as the book has them. All of it is one state of the book.
class OrchardShelf {
  public:
    virtual ~OrchardShelf() = default;

    /// Every text that a column holds, each at least once, in the order of its bytes.
    virtual void each_name(std::string_view table, std::string_view column,
                           const std::function<void(std::string_view)>& use) = 0;

    /// Takes the rows that hold all of this, every row where it is nothing. How many they are, those taken
    /// before among them; not more than `most` are taken.
    virtual std::size_t take(std::string_view table, std::span<const Held> all_of,
                             std::size_t most = no_limit) = 0;

    /// Of the trees that hold all of this, the first `most`: those that stand on the day come first, then by
    /// label. How many.
    virtual std::size_t take_first_trees(std::span<const Held> all_of, Day as_of, std::size_t most) = 0;

    /// Takes the trees within a box of the map, and may take some just outside. How many.
    virtual std::size_t take_trees_within(const MapPoint& low, const MapPoint& high) = 0;

    /// Whether more than a part worth taking was asked for: then nothing more is taken, and what there is
    /// must not be used.
    virtual bool overfull() const = 0;

    /// All that was taken, in the order of the book. Stands until more is taken.
    virtual const Orchard& taken() = 0;

    static constexpr std::size_t no_limit = static_cast<std::size_t>(-1);
};

}  // namespace pipward::record
