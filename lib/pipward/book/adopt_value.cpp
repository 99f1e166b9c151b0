// SPDX-License-Identifier: MIT
#include "pipward/book/adopt_value.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "pipward/book/adopt_words.h"
#include "pipward/value/sentence.h"

namespace pipward::book {
namespace {

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    const auto last = text.find_last_not_of(" \t\r\n");
    return first == text.npos ? std::string_view{} : text.substr(first, last - first + 1);
}

std::string as_listed(std::string_view list, std::string_view text) {
    const auto wanted = field_word(text);
    for (const auto& entry : adopt_choices()) {
        if (entry.domain == list && std::ranges::find(entry.also, wanted) != entry.also.end()) {
            return std::string(entry.word);
        }
    }
    return std::string(text);
}

std::string as_choice(const FieldDomain& domain, std::string_view text) {
    const auto wanted = field_word(text);
    for (const auto& choice : domain.choices) {
        if (field_word(choice.value) == wanted) {
            return choice.value;
        }
    }
    return as_listed(domain.name, text);
}

std::string worded(const BookColumn& column, std::string_view text) {
    const auto* domain = find_domain(column.domain);
    const bool is_closed = domain != nullptr && !domain->choices.empty();
    return is_closed                  ? as_choice(*domain, text)
           : column.name == "species" ? as_listed("species", text)
                                      : std::string(text);
}

std::optional<std::int64_t> as_whole(std::string_view text) {
    const auto number = read_number(text);
    const bool whole = number && std::abs(*number) < 1e15 && *number == std::floor(*number);
    return whole ? std::optional{static_cast<std::int64_t>(*number)} : std::nullopt;
}

ReadValue wrong(Sentence why, Sentence remedy) {
    return {{}, Finding{Level::error, {}, {}, {}, {}, std::move(why), std::move(remedy)}};
}

ReadValue read_plain(const BookColumn& column, std::string_view text) {
    switch (column.type) {
        case CellType::whole:
            if (const auto number = as_whole(text)) {
                return {*number};
            }
            return wrong(say("This is no whole number."),
                         say("Correct it in the layer, or let the field go elsewhere with map."));
        case CellType::number:
            if (const auto number = read_number(text, column.unit)) {
                return {*number};
            }
            return wrong(say("This is no number."),
                         say("Correct it in the layer, or let the field go elsewhere with map."));
        case CellType::day:
            if (const auto day = parse_iso_day(text)) {
                return {*day};
            }
            return wrong(say("This is no day."), say("Write it as in 2026-04-12."));
        default:
            return {std::string(text)};
    }
}

}  // namespace

bool says_nothing(std::string_view text) {
    static constexpr std::array<std::string_view, 6> nothings{"n/a", "na", "null", "none", "nan", "<null>"};
    text = trimmed(text);
    std::string small(text);
    std::ranges::transform(small, small.begin(), [](unsigned char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : static_cast<char>(c);
    });
    return text.find_first_not_of("-?.") == text.npos || std::ranges::find(nothings, small) != nothings.end();
}

std::optional<double> read_number(std::string_view text, std::string_view unit) {
    text = trimmed(text);
    if (!unit.empty() && text.size() > unit.size() && text.ends_with(unit)) {
        text = trimmed(text.substr(0, text.size() - unit.size()));
    }
    text.remove_prefix(text.starts_with('+') ? 1 : 0);
    std::string figures(text);
    if (figures.find('.') == std::string::npos && std::ranges::count(figures, ',') == 1) {
        figures[figures.find(',')] = '.';
    }
    double value = 0;
    const auto [end, trouble] = std::from_chars(figures.data(), figures.data() + figures.size(), value);
    const bool whole = trouble == std::errc{} && end == figures.data() + figures.size();
    return whole && std::isfinite(value) ? std::optional{value} : std::nullopt;
}

ReadValue read_value(const BookColumn& column, std::string_view text) {
    text = trimmed(text);
    if (says_nothing(text)) {
        return {};
    }
    auto read = read_plain(column, worded(column, text));
    if (read.wrong) {
        return read;
    }
    auto wrong = check_cell(column, read.cell);
    return wrong ? ReadValue{{}, std::move(wrong)} : read;
}

}  // namespace pipward::book
