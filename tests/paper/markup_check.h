// SPDX-License-Identifier: MIT
#pragma once

#include <cctype>
#include <set>
#include <string>
#include <string_view>
#include <vector>

/// A small strict reader of markup for the tests: tags nest, attributes are quoted and single, ids are
/// unique, and nothing unescaped stands in text.
namespace pipward::testing {

class MarkupCheck {
  public:
    explicit MarkupCheck(std::string_view markup) : rest_(markup) {
        while (!rest_.empty() && trouble.empty()) {
            rest_.front() == '<' ? take_tag() : take_text();
        }
        if (trouble.empty() && !open_.empty()) {
            trouble = "left open: " + open_.back();
        }
    }

    std::string trouble;  ///< empty when all is well
    std::set<std::string> ids;

  private:
    void fail(std::string_view what) {
        trouble = std::string(what) + " before: " + std::string(rest_.substr(0, 80));
    }

    void take_text() {
        const auto end = std::min(rest_.find('<'), rest_.size());
        const bool is_style = !open_.empty() && open_.back() == "style";
        check_text(rest_.substr(0, end), is_style);
        if (trouble.empty()) {
            rest_.remove_prefix(end);
        }
    }

    void check_text(std::string_view text, bool is_style) {
        for (std::size_t i = 0; i < text.size() && !is_style; ++i) {
            const auto semicolon = text.find(';', i);
            if (text[i] == '&' && (semicolon == text.npos || semicolon - i > 6)) {
                fail("a bare ampersand");
            }
            const auto byte = static_cast<unsigned char>(text[i]);
            if (text[i] == '>' || byte == 0x7F || (byte < 0x20 && byte != '\n')) {
                fail("a character that is not allowed");
            }
        }
    }

    void take_tag() {
        const auto end = rest_.find('>');
        if (end == rest_.npos) {
            return fail("a tag without end");
        }
        auto tag = rest_.substr(1, end - 1);
        if (tag.starts_with('!')) {
        } else if (tag.starts_with('/')) {
            close(tag.substr(1));
        } else {
            open(tag);
        }
        if (trouble.empty()) {
            rest_.remove_prefix(end + 1);
        }
    }

    void close(std::string_view name) {
        if (open_.empty() || open_.back() != name) {
            return fail("a closing tag that closes nothing");
        }
        open_.pop_back();
    }

    void open(std::string_view tag) {
        const bool closes_itself = tag.ends_with('/');
        const auto name_end = std::min(tag.find_first_of(" \n/"), tag.size());
        const std::string name(tag.substr(0, name_end));
        take_attributes(tag.substr(name_end));
        static const std::set<std::string> empty_in_html{"meta", "input", "br"};
        if (!closes_itself && !empty_in_html.count(name)) {
            open_.push_back(name);
        }
    }

    void take_attributes(std::string_view text) {
        std::set<std::string> seen;
        for (auto equals = text.find("=\""); equals != text.npos; equals = text.find("=\"")) {
            const auto begin = text.find_first_not_of(" \n");
            const std::string name(text.substr(begin, equals - begin));
            const auto value_end = text.find('"', equals + 2);
            if (value_end == text.npos || name.find_first_of(" \n\"'") != name.npos ||
                !seen.insert(name).second) {
                return fail("a broken attribute");
            }
            const auto value = text.substr(equals + 2, value_end - equals - 2);
            check_text(value, false);
            if (name == "id" && !ids.insert(std::string(value)).second) {
                fail("an id used twice");
            }
            text.remove_prefix(value_end + 1);
        }
    }

    std::string_view rest_;
    std::vector<std::string> open_;
};

inline int count_of(std::string_view text, std::string_view part) {
    int count = 0;
    for (auto at = text.find(part); at != text.npos; at = text.find(part, at + part.size())) {
        ++count;
    }
    return count;
}

}  // namespace pipward::testing
