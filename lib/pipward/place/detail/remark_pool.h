// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/detail/hits.h"
#include "pipward/place/detail/key_table.h"

/// Inside of the room: the words of every note, and the trees that each is about.
namespace pipward::place::detail {

/// What a search text asks of remarks, told by each alone: never fewer than RemarkPool finds.
class RemarkSieve {
  public:
    explicit RemarkSieve(std::string_view query);
    /// As find() of the pool.
    bool holds(std::string_view remark) const;
    /// As find_like().
    bool holds_like(std::string_view remark) const;

  private:
    std::vector<std::string> words_;
    std::string like_;  // the one word that may have slips; empty where none may
};

class RemarkPool {
  public:
    /// The number of the note. `shown` must outlive the pool.
    std::uint32_t add(const std::string& shown);
    void lead(std::uint32_t remark, std::uint32_t tree) { trees_.add(remark, tree); }
    void finish() { trees_.finish(remarks_.size()); }

    /// Notes that hold every word of the search text, or its beginning of one; better where they stand
    /// together.
    void find(std::string_view query, Hits& hits) const;

    /// Remarks that hold a word like the search text, which is a single one.
    void find_like(std::string_view query, Hits& hits) const;

    /// The note in quotes, cut where it is long.
    std::string shown(std::uint32_t remark) const;

  private:
    std::vector<std::string> vocabulary() const;
    void find_word(const std::string& word, Hit hit, Hits& hits) const;

    struct Remark {
        const std::string* shown = nullptr;
        std::size_t start = 0;  // in text_
        std::size_t size = 0;
    };
    std::string_view folded(std::size_t remark) const {
        return std::string_view(text_).substr(remarks_[remark].start, remarks_[remark].size);
    }

    std::vector<Remark> remarks_;
    std::string text_;
    Lists trees_;
};

}  // namespace pipward::place::detail
