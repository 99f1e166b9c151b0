// SPDX-License-Identifier: MIT
#include "pipward/book/schema_words.h"

#include <algorithm>
#include <map>

namespace pipward::book {
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

// As people read a code or a name; numbers have no words.
std::string plain(std::string code) {
    std::ranges::replace(code, '_', ' ');
    const bool number = code.find_first_not_of("0123456789") == std::string::npos;
    return number ? std::string{} : code;
}

using Labels = std::map<std::string_view, std::string>;

const Labels& labels_inside() {
    static const Labels labels = [] {
        Labels made;
        for (const auto& table : book_tables()) {
            for (const auto& column : table.columns) {
                made.emplace(column.label, inside(column.label));
            }
        }
        return made;
    }();
    return labels;
}

}  // namespace

Sentence inside_label(const BookColumn& column) {
    return filled(labels_inside().at(column.label), {});
}

Sentence meaning_of(const Choice& choice) {
    return filled(choice.meaning, {});
}

std::set<std::string> schema_texts() {
    std::set<std::string> texts;
    for (const auto& [label, inside] : labels_inside()) {
        texts.emplace(label);
        texts.insert(inside);
    }
    for (const auto& table : book_tables()) {
        texts.emplace(table.title);
        texts.insert(plain(std::string(table.name)));
        for (const auto& column : table.columns) {
            texts.emplace(column.unit);
            texts.insert(plain(std::string(column.name)));
            texts.emplace(column.required ? column.description : "");
        }
    }
    for (const auto& domain : field_domains()) {
        for (const auto& choice : domain.choices) {
            texts.insert(choice.meaning);
            texts.insert(plain(choice.value));
        }
    }
    texts.erase("");
    return texts;
}

}  // namespace pipward::book
