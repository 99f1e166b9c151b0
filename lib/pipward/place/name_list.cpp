// SPDX-License-Identifier: MIT
#include "pipward/place/detail/name_list.h"

#include <algorithm>

#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/misreading.h"
#include "pipward/place/detail/name_pool.h"
#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

// "Row 3" and "3" are the same row, "Block Upper" and "Upper" the same block; "Mill Field" keeps its field.
std::span<const Token> without_marks(std::span<const Token> tokens) {
    while (tokens.size() > 1 && !tokens.front().number && tokens.front().text.size() > 1) {
        const auto mark = mark_of(tokens.front().text);
        if (mark != Mark::row && mark != Mark::position && mark != Mark::block) {
            break;
        }
        tokens = tokens.subspan(1);
    }
    return tokens;
}

std::string initials_of(std::span<const Token> tokens) {
    std::string initials;
    for (const auto& token : tokens) {
        initials += token.number ? token.text : token.text.substr(0, 1);
    }
    return initials;
}

}  // namespace

std::string parts_of_tokens(std::span<const Token> tokens, std::string_view between) {
    std::string text;
    for (const auto& token : tokens) {
        text += text.empty() ? "" : between;
        text += token.text;
    }
    return text;
}

std::uint32_t NameList::add(const std::string& name) {
    const auto [entry, fresh] = by_name_.try_emplace(name, static_cast<std::uint32_t>(names_.size() + 1));
    if (!fresh) {
        return entry->second;
    }
    const auto all = tokens_of(folded_text(name));
    const auto tokens = without_marks(all);
    auto parts = parts_of_tokens(tokens);
    // Names that differ in nothing but signs are one.
    const auto [same, other] = by_parts_.try_emplace(parts, static_cast<std::uint32_t>(names_.size() + 1));
    if (!other) {
        entry->second = same->second;
        return entry->second;
    }
    names_.push_back({std::move(parts), parts_of_tokens(tokens, ""), initials_of(tokens)});
    return entry->second;
}

void NameList::add_code(std::uint32_t name, const std::string& code) {
    names_[name - 1].code = code;
}

std::set<std::string> NameList::written(std::uint32_t name) const {
    std::set<std::string> ways;
    for (const auto& [way, number] : by_name_) {
        if (number == name) {
            ways.insert(way);
        }
    }
    return ways;
}

// Our own figures: they put the surer reading first.
float NameList::likeness(const Name& name, std::string_view key, Effort effort) const {
    constexpr float code = 0.985F;
    constexpr float beginning = 0.97F;
    constexpr float one_letter = 0.93F;
    constexpr float initials = 0.96F;
    constexpr float a_word = 0.9F;
    constexpr float a_slip = 0.08F;
    if (name.key == key) {
        return 1.0F;
    }
    if (effort == Effort::whole) {
        return 0;
    }
    if (!name.code.empty() && name.code == key) {
        return code;
    }
    if (name.key.starts_with(key)) {
        return key.size() == 1 ? one_letter : beginning;
    }
    if (name.initials.size() > 1 && name.initials == key) {
        return initials;
    }
    if (key.size() > 2 && (" " + name.parts).find(" " + std::string(key)) != std::string::npos) {
        return a_word;
    }
    const int most = slips_allowed(key);
    if (effort == Effort::misspelt && most > 0) {
        const auto misread = misread_whole(key, name.key);
        return misread.cost <= static_cast<float>(most) + 0.5F ? 1.0F - a_slip - a_slip * misread.cost : 0;
    }
    return 0;
}

Values NameList::called(std::span<const Token> tokens, Effort effort) const {
    const auto key = parts_of_tokens(tokens, "");
    Values values;
    for (std::uint32_t i = 0; i < names_.size(); ++i) {
        if (const float like = likeness(names_[i], key, effort); like > 0) {
            values.push_back({i + 1, like});
        }
    }
    return values;
}

Values NameList::called_exactly(std::span<const Token> tokens) const {
    const auto found = [&](const std::string& parts) {
        const auto entry = by_parts_.find(parts);
        return entry == by_parts_.end() ? 0U : entry->second;
    };
    constexpr float other_figures = 0.98F;
    Values values;
    if (const auto same = found(parts_of_tokens(tokens)); same > 0) {
        values.push_back({same, 1.0F});
    }
    if (tokens.size() == 1 && !tokens[0].number) {
        const auto number = number_in_words(tokens[0].text);
        const auto other = number ? found(std::to_string(*number)) : 0U;
        if (other > 0) {
            values.push_back({other, other_figures});
        }
    }
    return values;
}

}  // namespace pipward::place::detail
