// SPDX-License-Identifier: MIT
#include "pipward/place/detail/remark_pool.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

constexpr float together = 0.55F;    // score of a note that holds the words as one phrase
constexpr float apart = 0.45F;       // and of one that holds them anywhere
constexpr std::size_t shortest = 2;  // of a word worth looking for

bool holds_all(std::string_view remark, const std::vector<std::string>& words) {
    return std::ranges::all_of(
        words, [&](const std::string& word) { return remark.find(" " + word) != std::string_view::npos; });
}

// The words of a note between single blanks, so that a word's beginning can be told from its middle.
std::string as_words(const std::vector<std::string>& words) {
    return fmt::format(" {}", fmt::join(words, " "));
}

}  // namespace

std::uint32_t RemarkPool::add(const std::string& shown) {
    const auto words = as_words(folded_words(shown));
    remarks_.push_back({&shown, text_.size(), words.size()});
    text_ += words;
    text_ += '\n';
    return static_cast<std::uint32_t>(remarks_.size() - 1);
}

void RemarkPool::find(std::string_view query, Hits& hits) const {
    constexpr std::size_t longest_query = 1000;
    const auto words = folded_words(query.substr(0, longest_query));
    const auto longest = std::ranges::max_element(words, {}, &std::string::size);
    if (longest == words.end() || longest->size() < shortest) {
        return;
    }
    const auto rarest = " " + *longest;
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
                      .score = phrase ? together : apart,
                      .kind = MatchKind::remark,
                      .extent = Extent::part,
                      .source = remark});
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
