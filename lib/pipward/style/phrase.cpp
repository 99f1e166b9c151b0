// SPDX-License-Identifier: MIT
#include "pipward/style/detail/phrase.h"

#include <fmt/format.h>

#include <algorithm>

namespace pipward::style::detail {
namespace {

// A character that no text holds parts words from expressions.
constexpr char border = '\x1f';

std::string quoted(std::string_view words) {
    std::string text = "'";
    for (const char c : words) {
        text += c == '\'' ? "''" : std::string(1, c);
    }
    return text + "'";
}

}  // namespace

Sentence computed(const std::string& expression) {
    return verbatim(border + expression + border);
}

std::string column(std::string_view name) {
    return fmt::format("\"{}\"", name);
}

std::string phrase(const Sentence& sentence, const Wording& wording) {
    const auto text = sentence.in(wording);
    std::vector<std::string> parts;
    bool words = true;
    for (std::size_t start = 0; start <= text.size(); words = !words) {
        const auto end = std::min(text.find(border, start), text.size());
        if (end > start) {
            const auto part = text.substr(start, end - start);
            parts.push_back(words ? quoted(part) : part);
        }
        start = end + 1;
    }
    return parts.empty() ? "''" : fmt::format("{}", fmt::join(parts, " || "));
}

std::string day_words(std::string_view name, const Sentence& form, const Wording& wording) {
    return fmt::format("format_date({}, {})", column(name), phrase(form, wording));
}

std::string code_words(std::string_view name, const std::vector<Sentence>& codes, const Wording& wording) {
    std::string cases;
    for (const auto& code : codes) {
        if (code.in(wording) != code.text()) {
            cases += fmt::format("WHEN {} = {} THEN {} ", column(name), quoted(code.text()),
                                 phrase(code, wording));
        }
    }
    return cases.empty() ? column(name) : fmt::format("CASE {}ELSE {} END", cases, column(name));
}

Sentence tip(const std::string& expression) {
    return verbatim("[% " + expression + " %]");
}

}  // namespace pipward::style::detail
