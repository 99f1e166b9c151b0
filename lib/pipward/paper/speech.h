// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/value/sentence.h"

namespace pipward::paper {

/// Says a page's sentences in the words of a host. Lives no longer than the wording it was made from.
class Speech {
  public:
    /// Keeps a reference to it.
    explicit Speech(const Wording& wording) : wording_(wording) {}

    /// The one it was made from.
    const Wording& wording() const { return wording_; }
    /// Plain text, not escaped.
    std::string text(const Sentence& sentence) const { return sentence.in(wording_); }
    /// Markup, of a sentence whose fillings are plain text.
    std::string plain(const Sentence& sentence) const;
    /// Markup, of a sentence whose fillings are markup: verbatim(...) of it.
    std::string around(const Sentence& sentence) const;

  private:
    const Wording& wording_;
};

}  // namespace pipward::paper
