// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <compare>
#include <cstdint>
#include <string_view>
#include <vector>

namespace pipward::place::detail {

/// Inside of the room: numbers by text, several to a text, in sixteen bytes each. Only a sum of the text is
/// kept: whoever looks up checks what was found where a false one would matter.
class KeyTable {
  public:
    void add(std::string_view key, std::uint32_t number) { entries_.push_back({sum_of(key), number}); }
    void finish() { std::ranges::sort(entries_); }

    template <class Use>
    void each(std::string_view key, Use use) const {
        const auto sum = sum_of(key);
        auto at = std::ranges::lower_bound(entries_, sum, {}, &Entry::sum);
        for (; at != entries_.end() && at->sum == sum; ++at) {
            use(at->number);
        }
    }

  private:
    struct Entry {
        std::uint64_t sum = 0;
        std::uint32_t number = 0;

        auto operator<=>(const Entry&) const = default;
    };

    // FNV-1a, 64 bits (Fowler, Noll, Vo).
    static std::uint64_t sum_of(std::string_view key) {
        std::uint64_t sum = 14695981039346656037U;
        for (const char c : key) {
            sum = (sum ^ static_cast<unsigned char>(c)) * 1099511628211U;
        }
        return sum;
    }

    std::vector<Entry> entries_;
};

/// Inside of the room: lists of numbers by number, end to end in one vector.
class Lists {
  public:
    void add(std::uint32_t list, std::uint32_t number) { entries_.push_back({list, number}); }
    /// Sorts each list and drops doubles.
    void finish(std::size_t lists) {
        std::ranges::sort(entries_);
        entries_.erase(std::unique(entries_.begin(), entries_.end()), entries_.end());
        starts_.assign(lists + 1, 0);
        for (const auto& entry : entries_) {
            numbers_.push_back(entry.number);
            ++starts_[entry.list + 1];
        }
        for (std::size_t i = 0; i < lists; ++i) {
            starts_[i + 1] += starts_[i];
        }
        entries_ = {};
    }

    template <class Use>
    void each(std::uint32_t list, Use use) const {
        for (auto at = starts_[list]; at < starts_[list + 1]; ++at) {
            use(numbers_[at]);
        }
    }
    bool empty(std::uint32_t list) const { return starts_[list] == starts_[list + 1]; }

  private:
    struct Entry {
        std::uint32_t list = 0;
        std::uint32_t number = 0;

        auto operator<=>(const Entry&) const = default;
    };

    std::vector<Entry> entries_;
    std::vector<std::uint32_t> starts_;
    std::vector<std::uint32_t> numbers_;
};

}  // namespace pipward::place::detail
