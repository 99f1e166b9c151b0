// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/value/day.h"

namespace pipward::paper {

/// Says a page's sentences in the words of a host, with days as people read them.
class Speech {
  public:
    /// Days of this year are said without it.
    explicit Speech(const Wording& wording, std::optional<int> year = {});

    /// Of all that the page says.
    const Wording& wording() const { return wording_; }
    /// "Tue 7 Apr", not escaped.
    std::string day(Day day) const;
    /// Plain text, not escaped.
    std::string text(const Sentence& sentence) const { return sentence.in(wording_); }
    /// Markup, of a sentence whose fillings are plain text.
    std::string plain(const Sentence& sentence) const;
    /// Markup, of a sentence whose fillings are markup: verbatim(...) of it.
    std::string around(const Sentence& sentence) const;

  private:
    Wording wording_;
    std::optional<int> year_;
};

}  // namespace pipward::paper
