// SPDX-License-Identifier: MIT
#pragma once

#include <fmt/format.h>

#include <array>
#include <concepts>
#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pipward/value/spoken.h"

namespace pipward::value {

/// How a host says a form in its language: "{} blooms on {}." gives "{} blüht am {}.". A form it has no words
/// for comes back as it is. "{0}", "{1}" name the fillings where another language turns them round.
using Wording = std::function<std::string(std::string_view form)>;

/// The library's own language: every form as it stands.
std::string in_english(std::string_view form);

/// Words for people, kept as the form and what fills it, so that a host can say them in another language.
/// It reads as its English text wherever a string is wanted.
class Sentence {
  public:
    Sentence();
    // Out of line, as every source makes and drops sentences by the dozen.
    Sentence(const Sentence& other);
    Sentence(Sentence&& other) noexcept;
    Sentence& operator=(const Sentence& other);
    Sentence& operator=(Sentence&& other) noexcept;
    ~Sentence();

    const std::string& text() const { return text_; }  ///< in English
    /// The same, wherever a string is wanted.
    operator const std::string&() const {
        return text_;
    }                                             // NOLINT(google-explicit-constructor): it is a text
    bool empty() const { return text_.empty(); }  ///< it says nothing

    /// The same in the words of a host, its fillings included. Where the host's form asks for a filling that
    /// is not there, the English.
    std::string in(const Wording& wording) const;

    /// Puts words behind, as they are.
    Sentence& operator+=(const Sentence& more);

    friend bool operator==(const Sentence& a, const Sentence& b) { return a.text_ == b.text_; }
    friend bool operator==(const Sentence& a, std::string_view b) { return a.text_ == b; }

  private:
    friend Sentence verbatim(std::string text);
    friend Sentence filled(std::string_view form, std::vector<Sentence> fillings);

    std::string text_;
    std::string_view form_;           // lives as long as the program; empty: verbatim or a row of sentences
    std::vector<Sentence> fillings_;  // by their number in the form
};

/// Words that are the same in every language: a name, a code, a figure, what the user wrote.
Sentence verbatim(std::string text);
/// The form, which must live as long as the program, with its fields filled; say() is the way to call it.
Sentence filled(std::string_view form, std::vector<Sentence> fillings);
/// All of them in their order, `between` each two; empty for none.
Sentence joined(const std::vector<Sentence>& sentences, const Sentence& between);
/// Both in a row; nothing is put between them.
Sentence operator+(Sentence a, const Sentence& b);

/// What fills a form: each filling as fmt takes it, and those that are sentences, in the same order, null for
/// the others. For say().
struct Fillings {
    fmt::format_args all;
    const Sentence* const* sentences = nullptr;
    std::size_t count = 0;
};
/// The form with these fillings, each kept as words of its own.
Sentence with_fillings(std::string_view form, const Fillings& fillings);

/// A value as the field of that number formats it; a sentence stays one, so that it can be translated. For
/// say().
template <class Filling>
const Sentence* sentence_in(const Filling& filling) {
    if constexpr (std::same_as<Filling, Sentence>) {
        return &filling;
    } else {
        return nullptr;
    }
}

/// A sentence from a literal form as fmt::format takes it; a field may be filled by a sentence. The literal
/// stands in the call itself: translators' texts are collected from there. A number of width or precision
/// taken from a filling is not possible, and a filling used twice has one format.
template <class... Fillings>
Sentence say(fmt::format_string<const Fillings&...> form, const Fillings&... fillings) {
    const fmt::string_view text = form;
    const std::array<const Sentence*, sizeof...(fillings)> sentences{sentence_in(fillings)...};
    return with_fillings({text.data(), text.size()},
                         {fmt::make_format_args(fillings...), sentences.data(), sentences.size()});
}

}  // namespace pipward::value

// The reference knows no scope of another library.
/// @cond
template <>
struct fmt::formatter<pipward::Sentence> : fmt::formatter<std::string_view> {
    template <class Context>
    auto format(const pipward::Sentence& sentence, Context& context) const {
        return fmt::formatter<std::string_view>::format(sentence.text(), context);
    }
};
/// @endcond
