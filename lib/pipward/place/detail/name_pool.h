// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/detail/hits.h"
#include "pipward/place/detail/key_table.h"

/// Inside of the room: every name that leads to trees, end to end in one text, so that a million are looked
/// through in some hundredths of a second.
namespace pipward::place::detail {

class NamePool {
  public:
    /// The number of the name. `shown` must outlive the pool.
    std::uint32_t add(MatchKind kind, const std::string& shown);
    void lead(std::uint32_t name, std::uint32_t tree) { trees_.add(name, tree); }
    void finish();

    /// The whole of the search text is the whole of a name, but for case, accents, blanks, dashes and leading
    /// zeros.
    void find_whole(std::string_view query, Hits& hits) const;
    /// The search text is a part of names.
    void find_part(std::string_view query, Hits& hits) const;
    /// The search text is a part of names but for some slips.
    void find_like(std::string_view query, Hits& hits) const;
    /// The names that are most like the search text, however far; no name twice.
    std::vector<std::string> most_like(std::string_view query, std::size_t how_many) const;

    const std::string& shown(std::uint32_t name) const { return *names_[name].shown; }
    template <class Use>
    void each_tree(std::uint32_t name, Use use) const {
        trees_.each(name, use);
    }

  private:
    struct Name {
        const std::string* shown = nullptr;
        std::uint32_t start = 0;  // in text_
        std::uint32_t size = 0;
        MatchKind kind = MatchKind::label;
    };

    std::string_view key(std::uint32_t name) const {
        return std::string_view(text_).substr(names_[name].start, names_[name].size);
    }
    void add_hits(std::uint32_t name, Hit hit, Hits& hits) const;

    std::vector<Name> names_;
    std::vector<std::uint64_t> letters_;
    std::string text_;  // the keys, each with a line's end
    KeyTable by_key_;
    KeyTable by_parts_;
    Lists trees_;
};

/// How many slips a search text of so many letters may have.
int slips_allowed(std::size_t letters);

/// The letters and digits of a text, or all of it folded where it has none: what names are compared by.
std::string name_key(std::string_view folded);
/// The parts of a folded name as one text: "up 3 12".
std::string parts_key(std::string_view folded);

}  // namespace pipward::place::detail
