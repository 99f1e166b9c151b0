// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pipward/place/detail/hits.h"
#include "pipward/place/detail/key_table.h"
#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/query_readings.h"

/// Inside of the room: every name that leads to trees, end to end in one text, so that a million are looked
/// through in some hundredths of a second.
namespace pipward::place::detail {

/// The names that are most like a search text, of any that it is shown.
class MostLike {
  public:
    MostLike(std::string_view query, std::size_t how_many);
    void show(std::string_view key, std::string_view name);
    /// The most like first; no name twice.
    std::vector<std::string> names() const;

  private:
    Likeness likeness_;
    std::size_t how_many_;
    std::set<std::pair<int, std::string>> best_;  // by slips
};

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
    /// The search text is the whole of a name but for characters that look alike.
    void find_misread(std::string_view query, Hits& hits) const;
    /// The search text is a part of names but for some slips; characters that look alike hardly count.
    void find_like(std::string_view query, Hits& hits) const;
    /// The names that are most like the search text, however far; no name twice.
    std::vector<std::string> most_like(std::string_view query, std::size_t how_many) const;

    /// Accessions that the tokens are the name of, by the number of the name.
    Values accessions_called(std::span<const Token> tokens, Effort effort) const;
    /// Labels that have just these parts.
    Values labels_called(std::span<const Token> tokens) const;
    template <class Use>
    void each_accession(Use use) const {
        for (auto name = accessions_.first; name < accessions_.end; ++name) {
            use(name);
        }
    }

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
    struct Range {
        std::uint32_t first = 0;
        std::uint32_t end = 0;
    };
    struct Like {
        std::uint32_t name = 0;
        int slips = 0;
    };

    void add_hits(std::uint32_t name, Hit hit, Hits& hits) const;
    template <class Names>
    std::vector<Like> like(std::string_view sought, const Names& among) const;
    Values accessions_of_beginnings(std::span<const Token> tokens) const;
    Values accessions_misspelt(std::span<const Token> tokens) const;

    std::vector<Name> names_;
    Range accessions_;
    std::vector<std::uint32_t> worded_;  // accessions with a word in their name, not numbers only
    std::vector<std::uint64_t> letters_;
    std::string text_;  // the keys, each with a line's end
    KeyTable by_key_;
    KeyTable by_parts_;
    Lists trees_;
};

/// How many slips a search text may have, as compared. The more it tells, the more: a digit tells less than a
/// letter, for names have the same digits in other orders; the third of its like in a row hardly
/// anything.
int slips_allowed(std::string_view key);

/// Some letters in a row, as words have and numbers of seedlings do not.
bool has_word(std::string_view key);
/// Whether every token begins a part of its own; numbers are whole ones.
bool begin_words(std::span<const Token> tokens, std::vector<std::string> parts);
/// Several words, of which one may be short, or one long enough to tell something.
bool may_abbreviate(std::span<const Token> tokens);
/// No numbers, and no words such as "row".
bool all_are_words(std::span<const Token> tokens);
/// "up 3 12" as its parts.
std::vector<std::string> split_parts(std::string_view parts_key);

/// The letters and digits of a text, or all of it folded where it has none: what names are compared by.
std::string name_key(std::string_view folded);
/// The parts of a folded name as one text: "up 3 12".
std::string parts_key(std::string_view folded);

}  // namespace pipward::place::detail
