// SPDX-License-Identifier: MIT
#include "pipward/paper/speech.h"

#include "pipward/paper/text.h"
#include "pipward/record/reader_days.h"

namespace pipward::paper {
namespace {

// A form is the project's or a translator's: its quotation marks are left as they stand.
std::string form_markup(std::string_view form) {
    std::string markup;
    for (const char c : form) {
        if (c == '&') {
            markup += "&amp;";
        } else if (c == '<') {
            markup += "&lt;";
        } else if (c == '>') {
            markup += "&gt;";
        } else {
            markup += c;
        }
    }
    return markup;
}

}  // namespace

Speech::Speech(const Wording& wording, std::optional<int> year)
    : wording_(with_reader_days(wording, year)), year_(year) {}

std::string Speech::day(Day day) const {
    return text(reader_day(day, year_));
}

std::string Speech::plain(const Sentence& sentence) const {
    return escape_markup(text(sentence));
}

std::string Speech::around(const Sentence& sentence) const {
    return sentence.in([this](std::string_view form) { return form_markup(wording_(form)); });
}

}  // namespace pipward::paper
