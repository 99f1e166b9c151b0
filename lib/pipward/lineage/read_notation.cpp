// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>
#include <optional>
#include <span>

#include "pipward/lineage/cross_notation.h"
#include "pipward/value/plain_text.h"

namespace pipward::lineage {
namespace {

constexpr int most_doses = 20;  // more backcrosses than anybody lives to make
constexpr int most_crosses = 99;

struct Token {
    int cross = 0;  // its number; 0 for a name
    std::string name{};
    int doses = 1;
};
using Tokens = std::span<const Token>;

bool is_number(std::string_view text) {
    return !text.empty() && text.size() <= 2 &&
           std::ranges::all_of(text, [](unsigned char c) { return std::isdigit(c) != 0; });
}

int number_of(std::string_view text) {
    int number = 0;
    for (const char digit : text) {
        number = 10 * number + (digit - '0');
    }
    return number;
}

struct CrossSign {
    int number = 0;
    std::size_t length = 0;
};

// The cross that begins at a slash and how many letters it takes: "/", "//", "///", "/4/".
CrossSign cross_at(std::string_view text) {
    const auto slashes = std::min(text.find_first_not_of('/'), text.size());
    if (slashes == 1) {
        const auto end = text.find('/', 1);
        if (end != text.npos && is_number(trimmed(text.substr(1, end - 1)))) {
            return {number_of(trimmed(text.substr(1, end - 1))), end + 1};
        }
    }
    return {static_cast<int>(slashes), slashes};
}

class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text) {
        while (!text_.empty() && trouble.empty()) {
            text_.front() == '/' ? take_cross() : take_operand();
        }
    }

    std::vector<Token> tokens;
    SlashStyle style = SlashStyle::doubled;
    Sentence trouble;

  private:
    void take_cross() {
        const auto [cross, length] = cross_at(text_);
        if (cross == 0 || cross > most_crosses) {
            trouble = say("A cross cannot have the number {}.", cross);
        }
        if (cross == 2 && length > 2) {
            style = SlashStyle::numbered;
        }
        tokens.push_back({cross});
        text_.remove_prefix(length);
    }

    // A name up to the next slash, its doses before or behind it.
    void take_operand() {
        Token token;
        std::string_view plain = quoted(token.name);
        const bool has_name = !token.name.empty();
        const auto star = plain.find('*');
        if (star == plain.npos) {
            token.name += has_name ? "" : std::string(trimmed(plain));
        } else {
            take_doses(trimmed(plain.substr(0, star)), trimmed(plain.substr(star + 1)), has_name, token);
        }
        if (token.name.empty()) {
            trouble = trouble.empty() ? say("A parent has no name.") : trouble;
        }
        tokens.push_back(std::move(token));
    }

    void take_doses(std::string_view before, std::string_view behind, bool has_name, Token& token) {
        const bool first = is_number(before);
        const auto doses = first ? before : behind;
        token.name = has_name ? token.name : std::string(first ? behind : before);
        token.doses = is_number(doses) ? number_of(doses) : 0;
        if (token.doses < 1 || token.doses > most_doses) {
            trouble = say("The doses of {} cannot be read.", token.name);
        }
    }

    // What stands outside of quotes up to the next slash; the quoted name goes to `name`.
    std::string_view quoted(std::string& name) {
        const auto open = text_.find_first_not_of(" \t0123456789*");
        if (open == text_.npos || text_[open] != '"') {
            const auto plain = text_.substr(0, text_.find('/'));
            text_.remove_prefix(plain.size());
            return plain;
        }
        std::size_t at = open + 1;
        for (; at < text_.size(); ++at) {
            const bool doubled = text_[at] == '"' && at + 1 < text_.size() && text_[at + 1] == '"';
            if (text_[at] == '"' && !doubled) {
                break;
            }
            name += text_[at];
            at += doubled ? 1 : 0;
        }
        const auto before = text_.substr(0, open);
        text_.remove_prefix(std::min(at + 1, text_.size()));
        const auto behind = text_.substr(0, text_.find('/'));
        text_.remove_prefix(behind.size());
        return trimmed(before).empty() ? behind : before;
    }

    std::string_view text_;
};

CrossTree read_tokens(Tokens tokens, Sentence& trouble);

CrossTree with_doses(const Tokens& seed, const Tokens& pollen, Sentence& trouble) {
    auto a = read_tokens(seed, trouble);
    auto b = read_tokens(pollen, trouble);
    const int of_seed = seed.size() == 1 ? seed.front().doses : 1;
    const int of_pollen = pollen.size() == 1 ? pollen.front().doses : 1;
    if (of_seed > 1 && of_pollen > 1) {
        trouble = say("Both parents of a cross have doses: only one can be the recurrent parent.");
    }
    auto tree = crossed(a, b);
    for (int dose = 1; dose < of_seed; ++dose) {
        tree = crossed(a, std::move(tree));
    }
    for (int dose = 1; dose < of_pollen; ++dose) {
        tree = crossed(std::move(tree), b);
    }
    return tree;
}

CrossTree read_tokens(Tokens tokens, Sentence& trouble) {
    if (tokens.empty()) {
        trouble = say("A parent has no name.");
        return {};
    }
    if (tokens.size() == 1) {
        trouble = tokens.front().cross > 0 ? say("A parent has no name.") : trouble;
        return {tokens.front().name, {}};
    }
    const auto last = std::ranges::max_element(tokens, {}, &Token::cross);
    if (last->cross == 0) {
        trouble = say("Two names without a cross between them.");
        return {};
    }
    if (std::ranges::count(tokens, last->cross, &Token::cross) > 1) {
        trouble = say("Cross {} stands more than once, so that it cannot be seen which was made first.",
                      last->cross);
        return {};
    }
    const auto at = static_cast<std::size_t>(last - tokens.begin());
    return with_doses(tokens.first(at), tokens.subspan(at + 1), trouble);
}

struct TimesSign {
    std::size_t at = 0;
    std::size_t length = 0;
};

// Where "×", or an x between blanks, stands outside of parentheses.
std::vector<TimesSign> times_in(std::string_view text) {
    constexpr std::string_view sign = "×";
    std::vector<TimesSign> found;
    int depth = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        depth += text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
        const bool blank = i > 0 && text[i - 1] == ' ' && i + 1 < text.size() && text[i + 1] == ' ';
        if (depth == 0 && text.substr(i).starts_with(sign)) {
            found.push_back({i, sign.size()});
        } else if (depth == 0 && blank && (text[i] == 'x' || text[i] == 'X')) {
            found.push_back({i, 1});
        }
    }
    return found;
}

CrossTree read_times(std::string_view text, Sentence& trouble);

// "(A × B)" is a cross, "A (C × D)" the name A with what is known of it.
CrossTree read_side(std::string_view text, Sentence& trouble) {
    text = trimmed(text);
    if (text.starts_with('(') && text.ends_with(')')) {
        return read_times(text.substr(1, text.size() - 2), trouble);
    }
    if (const auto open = text.find(" ("); open != text.npos && text.ends_with(')')) {
        text = trimmed(text.substr(0, open));
    }
    trouble = text.empty() ? say("A parent has no name.") : trouble;
    return {std::string(text), {}};
}

CrossTree read_times(std::string_view text, Sentence& trouble) {
    const auto signs = times_in(text);
    if (signs.size() > 1) {
        trouble = say("Three parents stand in one cross: put the first cross in parentheses.");
        return {};
    }
    if (signs.empty()) {
        return read_side(text, trouble);
    }
    const auto [at, length] = signs.front();
    return crossed(read_side(text.substr(0, at), trouble), read_side(text.substr(at + length), trouble));
}

}  // namespace

ReadCross read_purdy(std::string_view text) {
    const Reader reader(trimmed(text));
    ReadCross read{{}, reader.style, reader.trouble};
    if (read.trouble.empty()) {
        read.tree = read_tokens(reader.tokens, read.trouble);
    }
    return read;
}

ReadCross read_cross(std::string_view text) {
    if (times_in(text).empty()) {
        return read_purdy(text);
    }
    ReadCross read;
    read.tree = read_times(trimmed(text), read.trouble);
    return read;
}

}  // namespace pipward::lineage
