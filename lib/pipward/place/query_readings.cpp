// SPDX-License-Identifier: MIT
#include "pipward/place/detail/query_readings.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string_view>
#include <tuple>

namespace pipward::place::detail {
namespace {

constexpr std::size_t longest_query = 12;  // tokens
constexpr int most_steps = 4000;           // of the search; a strange text must not take long
constexpr int at_the_end = 15;             // fillers that one at the end of the text counts for
constexpr int first_year = 1900;
constexpr int last_year = 2200;

bool is_number_word(std::string_view word) {
    static constexpr std::array<std::string_view, 7> words{"no",     "nr", "num",   "number",
                                                           "nummer", "n",  "numero"};
    return std::ranges::find(words, word) != words.end();
}

std::optional<int> figures(const Token& token) {
    int number = 0;
    const auto* end = token.text.data() + token.text.size();
    const auto read = std::from_chars(token.text.data(), end, number);
    return token.number && read.ec == std::errc{} && read.ptr == end ? std::optional{number} : std::nullopt;
}

std::optional<int> number_of(const Token& token) {
    return token.number ? figures(token) : number_in_words(token.text);
}

/// Tries every way to share the tokens out among the fields.
class Reader {
  public:
    Reader(std::span<const Token> tokens, const Vocabulary& vocabulary, Effort effort)
        : tokens_(tokens), vocabulary_(vocabulary), effort_(effort) {
        for (const auto& token : tokens) {
            marks_.push_back(token.number ? Mark::none : mark_of(token.text));
        }
    }

    std::vector<Reading> all() {
        read_from(0);
        int fewest = most_steps;
        for (const auto& reading : found_) {
            fewest = std::min(fewest, reading.passed_over);
        }
        std::erase_if(found_, [&](const Reading& reading) { return reading.passed_over > fewest; });
        return std::move(found_);
    }

  private:
    void read_from(std::size_t at) {
        if (++steps_ > most_steps) {
            return;
        }
        if (at == tokens_.size()) {
            keep();
            return;
        }
        read_marked(at);
        read_number(at);
        read_names(at);
        pass_over(at);
    }

    // With a field's value set, as far as it is not yet, goes on behind it.
    void go_on(Facet facet, Values values, std::size_t next) {
        auto& place = reading_.of[static_cast<std::size_t>(facet)];
        if (!place.empty() || values.empty()) {
            return;
        }
        place = std::move(values);
        read_from(next);
        place.clear();
    }

    std::size_t behind_fillers(std::size_t at, bool numbers_too) const {
        while (at < tokens_.size() && !is_glued(at) &&
               (marks_[at] == Mark::filler || (numbers_too && is_number_word(tokens_[at].text)))) {
            ++at;
        }
        return at;
    }

    // "row 3", "Reihe Nr. 3", "tree 12", "block Upper", "planted in 2019".
    void read_marked(std::size_t at) {
        const auto next = behind_fillers(at + 1, true);
        if (next >= tokens_.size()) {
            return;
        }
        switch (marks_[at]) {
            case Mark::row:
                reading_.row_said = true;
                read_rows(next);
                reading_.row_said = false;
                break;
            case Mark::position:
                go_on(Facet::position, number_value(next), next + 1);
                break;
            case Mark::planted:
                go_on(Facet::year, year_value(next), next + 1);
                break;
            case Mark::block:
                read_name(Facet::block, next);
                break;
            case Mark::rootstock:
                read_name(Facet::rootstock, next);
                break;
            case Mark::accession:
                read_name(Facet::accession, next);
                break;
            default:
                break;
        }
    }

    void read_rows(std::size_t at) {
        constexpr std::size_t longest = 3;
        for (std::size_t size = 1; size <= longest && at + size <= tokens_.size(); ++size) {
            go_on(Facet::row, called(Facet::row, at, size), at + size);
        }
    }

    // "3rd row", "12. Baum", or bare: the row first, then the position.
    void read_number(std::size_t at) {
        if (!number_of(tokens_[at])) {
            return;
        }
        const auto next = behind_fillers(at + 1, false);
        if (next < tokens_.size() && !is_number_word(tokens_[next].text) && !is_glued(next)) {
            if (marks_[next] == Mark::row) {
                reading_.row_said = true;
                go_on(Facet::row, called(Facet::row, at, 1), next + 1);
                reading_.row_said = false;
            } else if (marks_[next] == Mark::position) {
                go_on(Facet::position, number_value(at), next + 1);
            }
        }
        if (reading_.has(Facet::row)) {
            go_on(Facet::position, number_value(at), at + 1);
        }
        go_on(Facet::year, year_value(at), at + 1);
    }

    void read_names(std::size_t at) {
        read_rows_named(at);
        for (const auto facet : {Facet::label, Facet::block, Facet::rootstock, Facet::accession}) {
            read_name(facet, at);
        }
    }

    void read_rows_named(std::size_t at) {
        if (!reading_.has(Facet::position) || reading_.row_said) {
            read_rows(at);
        }
    }

    void read_name(Facet facet, std::size_t at) {
        constexpr std::size_t longest = 5;
        for (std::size_t size = 1; size <= longest && at + size <= tokens_.size(); ++size) {
            if (!reading_.has(facet)) {
                go_on(facet, called(facet, at, size), at + size);
            }
        }
    }

    // A single letter at a number is a part of what is written there: "l3" is no "3".
    bool is_glued(std::size_t at) const {
        const auto together = [&](std::size_t a, std::size_t b) {
            return tokens_[a].word == tokens_[b].word;
        };
        const bool ordinal = tokens_[at].text == "e";  // "3e rang"
        return tokens_[at].text.size() == 1 && !tokens_[at].number && !ordinal &&
               ((at > 0 && together(at, at - 1)) || (at + 1 < tokens_.size() && together(at, at + 1)));
    }

    void pass_over(std::size_t at) {
        const auto mark = marks_[at];
        const bool of_place = mark == Mark::row || mark == Mark::position;
        if (mark == Mark::none || is_glued(at) || (of_place && tokens_[at].text.size() == 1)) {
            return;
        }
        const int counts = of_place && !is_number_word(tokens_[at].text) ? 1 : 0;
        // Nothing follows that the last word could belong to.
        const int fills = mark != Mark::filler ? 0 : at + 1 == tokens_.size() ? at_the_end : 1;
        reading_.passed_over += counts;
        reading_.fillers += fills;
        read_from(at + 1);
        reading_.passed_over -= counts;
        reading_.fillers -= fills;
    }

    Values number_value(std::size_t at) const {
        const auto number = number_of(tokens_[at]);
        return number ? Values{{static_cast<std::uint32_t>(*number), 1.0F}} : Values{};
    }

    Values year_value(std::size_t at) const {
        const auto number = figures(tokens_[at]);
        return number && *number >= first_year && *number <= last_year ? number_value(at) : Values{};
    }

    // Names are asked for many times over.
    const Values& called(Facet facet, std::size_t at, std::size_t size) {
        const auto [entry, fresh] = asked_.try_emplace({facet, at, size});
        if (fresh) {
            entry->second = vocabulary_.called(facet, tokens_.subspan(at, size), effort_);
        }
        return entry->second;
    }

    void keep() {
        const bool names_something =
            reading_.fields() >= 2 || reading_.has(Facet::block) || reading_.has(Facet::rootstock) ||
            reading_.has(Facet::year) || reading_.has(Facet::label) || reading_.has(Facet::accession) ||
            (reading_.has(Facet::row) && std::ranges::find(marks_, Mark::row) != marks_.end());
        if (names_something) {
            found_.push_back(reading_);
            found_.back().row_said = std::ranges::find(marks_, Mark::row) != marks_.end();
        }
    }

    std::span<const Token> tokens_;
    const Vocabulary& vocabulary_;
    Effort effort_;
    std::vector<Mark> marks_;
    std::map<std::tuple<Facet, std::size_t, std::size_t>, Values> asked_;
    Reading reading_;
    std::vector<Reading> found_;
    int steps_ = 0;
};

}  // namespace

int Reading::fields() const {
    return static_cast<int>(std::ranges::count_if(of, [](const Values& values) { return !values.empty(); }));
}

std::vector<Reading> readings_of(std::span<const Token> tokens, const Vocabulary& vocabulary, Effort effort) {
    return tokens.empty() || tokens.size() > longest_query ? std::vector<Reading>{}
                                                           : Reader(tokens, vocabulary, effort).all();
}

}  // namespace pipward::place::detail
