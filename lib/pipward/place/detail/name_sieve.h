// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/place_words.h"

/// Inside of the room: which of a million names a search text can be about, told by each name alone. Never
/// fewer than NamePool finds among the same names, and hardly more.
namespace pipward::place::detail {

/// A name as NamePool compares it, made at the price of a look at each letter.
class ComparedName {
  public:
    void set(std::string_view name);
    std::string_view key() const { return key_; }       ///< as name_key()
    std::string_view parts() const { return parts_; }   ///< as parts_key()
    std::uint64_t letters() const { return letters_; }  ///< as letters_of() of the key

  private:
    void set_plain(std::string_view folded);

    std::string key_;
    std::string parts_;
    std::uint64_t letters_ = 0;
};

class NameSieve {
  public:
    explicit NameSieve(std::string_view query);

    /// The surest way in which a name can be found.
    enum class Fit {
        none,
        like,  ///< with slips
        part,  ///< the search text is a part of it
        named  ///< it is called, but for case, signs, zeros and characters that look alike
    };
    /// Of a label, or a code.
    Fit of_name(const ComparedName& name) const;
    /// Of an accession, whose name the text may also hold among other words, cut short or misspelt.
    Fit of_accession(const ComparedName& name) const;

    /// Which of the two forms of the search text, as it is and without the word for its sort, the name begins
    /// with: as bits.
    unsigned begun_by(const ComparedName& name) const;

    /// Whether the runs of words in the search text have this among them, as labels begin with codes of
    /// blocks.
    bool has_run(std::string_view key) const;
    /// The runs, as far as one name can take.
    const std::vector<std::vector<Token>>& runs() const { return runs_; }

  private:
    struct Form {
        explicit Form(std::string text);

        std::string key;
        std::string parts;
        LettersSought letters;
        std::optional<Likeness> likeness;  // where slips are allowed
        int slips = 0;
    };
    struct Run {
        std::vector<Token> tokens;
        std::string key;
        std::string parts;
        LettersSought letters;
        std::optional<Likeness> likeness;
        int slips = 0;
        bool abbreviates = false;
        bool misspells = false;
    };

    void add_runs(std::string_view folded);
    static bool has_slips(const std::optional<Likeness>& likeness, int slips, std::string_view sought,
                          const LettersSought& letters, const ComparedName& name);

    std::vector<Form> forms_;  // as it is, and without the word for its sort
    std::vector<Run> telling_;
    std::vector<std::vector<Token>> runs_;
};

}  // namespace pipward::place::detail
