// SPDX-License-Identifier: MIT
#include "pipward/place/detail/remark_pool.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/misreading.h"
#include "pipward/place/detail/name_pool.h"
#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

constexpr float words_together = 0.55F;  // score of a note that holds the words as one phrase
constexpr float apart = 0.45F;           // and of one that holds them anywhere
constexpr std::size_t shortest = 2;      // of a word worth looking for

bool holds_all(std::string_view remark, const std::vector<std::string>& words) {
    return std::ranges::all_of(
        words, [&](const std::string& word) { return remark.find(" " + word) != std::string_view::npos; });
}

// The words of a note between single blanks, so that a word's beginning can be told from its middle.
std::string as_words(const std::vector<std::string>& words) {
    return fmt::format(" {}", fmt::join(words, " "));
}

constexpr std::size_t longest_words = 1000;
constexpr std::size_t longest_like = 100;

// Empty where nothing can be found by them.
std::vector<std::string> words_sought(std::string_view query) {
    auto words = folded_words(query.substr(0, longest_words));
    const auto longest = std::ranges::max_element(words, {}, &std::string::size);
    return longest == words.end() || longest->size() < shortest ? std::vector<std::string>{} : words;
}

// One word, long enough to be known again; more than one are seldom all in one remark.
std::string word_like(std::string_view query) {
    constexpr std::size_t long_enough = 5;
    const auto words = folded_words(query.substr(0, longest_like));
    const bool tells =
        words.size() == 1 && words.front().size() >= long_enough && slips_allowed(words.front()) > 0;
    return tells ? words.front() : std::string{};
}

}  // namespace

RemarkSieve::RemarkSieve(std::string_view query) : words_(words_sought(query)), like_(word_like(query)) {}

bool RemarkSieve::holds(std::string_view remark) const {
    return !words_.empty() && holds_all(as_words(folded_words(remark)), words_);
}

bool RemarkSieve::holds_like(std::string_view remark) const {
    if (like_.empty()) {
        return false;
    }
    const Likeness likeness(like_, Eye::forgiving);
    return std::ranges::any_of(folded_words(remark), [&](const std::string& word) {
        return likeness.slips_in_all(word) <= slips_allowed(like_);
    });
}

std::uint32_t RemarkPool::add(const std::string& shown) {
    const auto words = as_words(folded_words(shown));
    remarks_.push_back({&shown, text_.size(), words.size()});
    text_ += words;
    text_ += '\n';
    return static_cast<std::uint32_t>(remarks_.size() - 1);
}

void RemarkPool::find(std::string_view query, Hits& hits) const {
    const auto words = words_sought(query);
    if (words.empty()) {
        return;
    }
    const auto rarest = " " + *std::ranges::max_element(words, {}, &std::string::size);
    const auto all = as_words(words);
    const std::string_view text = text_;
    for (auto at = text.find(rarest); at != std::string_view::npos; at = text.find(rarest, at)) {
        const auto after = std::ranges::upper_bound(remarks_, at, {}, &Remark::start);
        const auto remark = static_cast<std::uint32_t>(after - remarks_.begin() - 1);
        const auto words_of_remark = folded(remark);
        at = remarks_[remark].start + remarks_[remark].size;
        if (!holds_all(words_of_remark, words)) {
            continue;
        }
        const bool phrase = words_of_remark.find(all) != std::string_view::npos;
        trees_.each(remark, [&](std::uint32_t tree) {
            hits.add({.tree = tree,
                      .score = phrase ? words_together : apart,
                      .kind = MatchKind::remark,
                      .extent = Extent::part,
                      .source = remark});
        });
    }
}

std::vector<std::string> RemarkPool::vocabulary() const {
    std::set<std::string_view> words;
    const std::string_view text = text_;
    for (std::size_t at = 0; at < text.size();) {
        const auto end = std::min(text.find_first_of(" \n", at), text.size());
        if (end > at) {
            words.insert(text.substr(at, end - at));
        }
        at = end + 1;
    }
    return {words.begin(), words.end()};
}

void RemarkPool::find_like(std::string_view query, Hits& hits) const {
    constexpr float a_slip = 0.04F;
    const auto word = word_like(query);
    if (word.empty()) {
        return;
    }
    const int most = slips_allowed(word);
    const Likeness likeness(word, Eye::forgiving);
    for (const auto& other : vocabulary()) {
        const auto misread =
            likeness.slips_in_all(other) <= most ? misread_whole(word, other) : Misreading{1e3F, 0};
        if (misread.cost > static_cast<float>(most)) {
            continue;
        }
        find_word(other,
                  {.score = apart - a_slip * misread.cost,
                   .kind = MatchKind::remark,
                   .extent = Extent::like,
                   .slips = static_cast<std::uint8_t>(misread.letters)},
                  hits);
    }
}

void RemarkPool::find_word(const std::string& word, Hit hit, Hits& hits) const {
    for (std::uint32_t remark = 0; remark < remarks_.size(); ++remark) {
        const auto at = folded(remark).find(" " + word);
        const auto end = at == std::string_view::npos ? at : at + 1 + word.size();
        if (end == std::string_view::npos || (end < folded(remark).size() && folded(remark)[end] != ' ')) {
            continue;
        }
        hit.source = remark;
        trees_.each(remark, [&](std::uint32_t tree) {
            hit.tree = tree;
            hits.add(hit);
        });
    }
}

std::string RemarkPool::shown(std::uint32_t remark) const {
    constexpr std::size_t longest = 80;
    const auto& text = *remarks_[remark].shown;
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
