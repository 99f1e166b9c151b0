// SPDX-License-Identifier: MIT
#include "pipward/book/detail/bind.h"

#include <algorithm>

namespace pipward::book::detail {

void add_usual(std::vector<UsualValue>& usual, std::string_view value, Language language,
               const std::vector<std::string_view>& words) {
    auto known = std::ranges::find(usual, value, &UsualValue::value);
    if (known == usual.end()) {
        known = usual.insert(known, {std::string(value)});
    }
    add_words(known->known_as, language, words);
}

namespace {

// "Noted on" is "noted on", but "BBCH stage" stays.
std::string inside(std::string_view label) {
    std::string text(label);
    const bool is_word = text.size() > 1 && text[1] >= 'a' && text[1] <= 'z';
    if (is_word && text[0] >= 'A' && text[0] <= 'Z') {
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    }
    return text;
}

}  // namespace

BookTable finished(BookTable table) {
    for (auto& column : table.columns) {
        column.label_inside = inside(column.label);
        const bool in_key = std::ranges::find(table.key, column.name) != table.key.end();
        if (in_key && column.role == ColumnRole::text) {
            column.role = ColumnRole::name;
        }
        if (table.day_column.empty() && column.role == ColumnRole::day && column.required) {
            table.day_column = column.name;
        }
    }
    return table;
}

}  // namespace pipward::book::detail
