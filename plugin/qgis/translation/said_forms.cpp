// SPDX-License-Identifier: GPL-2.0-or-later
#include "translation/said_forms.h"

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <stdexcept>

namespace pipward::desktop {
namespace {

bool is_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

bool is_blank(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
}

void append_utf8(std::string& text, std::uint32_t point) {
    if (point < 0x80) {
        text += static_cast<char>(point);
    } else if (point < 0x800) {
        text += static_cast<char>(0xC0 | (point >> 6));
        text += static_cast<char>(0x80 | (point & 0x3F));
    } else {
        text += static_cast<char>(0xE0 | (point >> 12));
        text += static_cast<char>(0x80 | ((point >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (point & 0x3F));
    }
}

/// Walks over a source and knows what is a comment and what a literal.
class SourceReader {
  public:
    explicit SourceReader(std::string_view source) : source_(source) {}

    std::set<std::string> forms() {
        std::set<std::string> forms;
        while (!at_end()) {
            if (!skip_idle() && !skip_literal() && takes_call()) {
                forms.insert(literal_or_refuse());
            }
        }
        return forms;
    }

  private:
    bool at_end() const { return at_ >= source_.size(); }
    std::string_view rest() const { return source_.substr(std::min(at_, source_.size())); }

    void skip_past(std::string_view end) {
        const auto found = source_.find(end, at_);
        at_ = found == source_.npos ? source_.size() : found + end.size();
    }

    bool skip_idle() {
        const auto begin = at_;
        while (!at_end()) {
            if (is_blank(source_[at_])) {
                ++at_;
            } else if (rest().starts_with("//")) {
                skip_past("\n");
            } else if (rest().starts_with("/*")) {
                skip_past("*/");
            } else {
                break;
            }
        }
        return at_ > begin;
    }

    bool skip_literal() {
        if (rest().starts_with('\'') && (at_ == 0 || !is_word(source_[at_ - 1]))) {
            at_ += rest().substr(1).starts_with('\\') ? 3 : 2;
            skip_past("'");
            return true;
        }
        std::string unused;
        return read_piece(unused);
    }

    /// The word at hand is passed over; true where it is a call of say().
    bool takes_call() {
        const auto begin = at_;
        while (!at_end() && is_word(source_[at_])) {
            ++at_;
        }
        const bool named = source_.substr(begin, at_ - begin) == "say";
        at_ += at_ == begin ? 1 : 0;
        if (!named || !rest().starts_with('(')) {
            return false;
        }
        ++at_;
        return true;
    }

    std::string literal_or_refuse() {
        skip_idle();
        const auto begin = at_;
        std::string form;
        while (read_piece(form)) {
            skip_idle();
        }
        if (at_ == begin) {
            const auto line = 1 + std::count(source_.begin(), source_.begin() + static_cast<long>(at_), '\n');
            throw std::runtime_error("line " + std::to_string(line) + ": say() without a literal form");
        }
        return form;
    }

    bool read_piece(std::string& into) {
        if (rest().starts_with("R\"") && (at_ == 0 || !is_word(source_[at_ - 1]))) {
            read_raw(into);
            return true;
        }
        if (!rest().starts_with('"')) {
            return false;
        }
        for (++at_; !at_end() && source_[at_] != '"';) {
            source_[at_] == '\\' ? read_escape(into) : void(into += source_[at_++]);
        }
        ++at_;
        return true;
    }

    void read_raw(std::string& into) {
        const auto open = source_.find('(', at_);
        const auto end = ")" + std::string(source_.substr(at_ + 2, open - at_ - 2)) + "\"";
        const auto close = source_.find(end, open);
        into += source_.substr(open + 1, close - open - 1);
        at_ = close == source_.npos ? source_.size() : close + end.size();
    }

    void read_escape(std::string& into) {
        const char kind = source_[at_ + 1];
        at_ += 2;
        if (kind == 'u') {
            append_utf8(into, hexadecimal(4));
        } else if (kind == 'x') {
            into += static_cast<char>(hexadecimal(2));
        } else {
            into += kind == 'n' ? '\n' : kind == 't' ? '\t' : kind;
        }
    }

    std::uint32_t hexadecimal(std::size_t digits) {
        std::uint32_t value = 0;
        const auto text = rest().substr(0, digits);
        std::from_chars(text.data(), text.data() + text.size(), value, 16);
        at_ += text.size();
        return value;
    }

    std::string_view source_;
    std::size_t at_ = 0;
};

}  // namespace

std::set<std::string> said_forms(std::string_view source) {
    return SourceReader(source).forms();
}

}  // namespace pipward::desktop
