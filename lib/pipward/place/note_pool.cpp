// SPDX-License-Identifier: MIT
#include "pipward/place/detail/note_pool.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/place/detail/scrap_text.h"

namespace pipward::place::detail {
namespace {

constexpr float together = 0.55F;    // score of a note that holds the words as one phrase
constexpr float apart = 0.45F;       // and of one that holds them anywhere
constexpr std::size_t shortest = 2;  // of a word worth looking for

bool holds_all(std::string_view note, const std::vector<std::string>& words) {
    return std::ranges::all_of(
        words, [&](const std::string& word) { return note.find(" " + word) != std::string_view::npos; });
}

// The words of a note between single blanks, so that a word's beginning can be told from its middle.
std::string as_words(const std::vector<std::string>& words) {
    return fmt::format(" {}", fmt::join(words, " "));
}

}  // namespace

std::uint32_t NotePool::add(const std::string& shown) {
    const auto words = as_words(folded_words(shown));
    notes_.push_back({&shown, text_.size(), words.size()});
    text_ += words;
    text_ += '\n';
    return static_cast<std::uint32_t>(notes_.size() - 1);
}

void NotePool::find(std::string_view scrap, Hits& hits) const {
    constexpr std::size_t longest_scrap = 1000;
    const auto words = folded_words(scrap.substr(0, longest_scrap));
    const auto longest = std::ranges::max_element(words, {}, &std::string::size);
    if (longest == words.end() || longest->size() < shortest) {
        return;
    }
    const auto rarest = " " + *longest;
    const auto all = as_words(words);
    const std::string_view text = text_;
    for (auto at = text.find(rarest); at != std::string_view::npos; at = text.find(rarest, at)) {
        const auto after = std::ranges::upper_bound(notes_, at, {}, &Note::start);
        const auto note = static_cast<std::uint32_t>(after - notes_.begin() - 1);
        const auto words_of_note = folded(note);
        at = notes_[note].start + notes_[note].size;
        if (!holds_all(words_of_note, words)) {
            continue;
        }
        const bool phrase = words_of_note.find(all) != std::string_view::npos;
        trees_.each(note, [&](std::uint32_t tree) {
            hits.add({.tree = tree,
                      .score = phrase ? together : apart,
                      .kind = MatchKind::note,
                      .extent = Extent::part,
                      .source = note});
        });
    }
}

std::string NotePool::shown(std::uint32_t note) const {
    constexpr std::size_t longest = 80;
    const auto& text = *notes_[note].shown;
    if (text.size() <= longest) {
        return fmt::format("\"{}\"", text);
    }
    // Not in the middle of a letter of several bytes.
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
        --end;
    }
    return fmt::format("\"{} …\"", text.substr(0, end));
}

}  // namespace pipward::place::detail
