// SPDX-License-Identifier: MIT
#include "pipward/book/schema_words.h"

#include <algorithm>

namespace pipward::book {
namespace {

// As people read a code or a name; numbers have no words.
std::string plain(std::string code) {
    std::ranges::replace(code, '_', ' ');
    const bool number = code.find_first_not_of("0123456789") == std::string::npos;
    return number ? std::string{} : code;
}

}  // namespace

Sentence inside_label(const BookColumn& column) {
    return filled(column.label_inside, {});
}

Sentence meaning_of(const Choice& choice) {
    return filled(choice.meaning, {});
}

std::set<std::string> schema_texts() {
    std::set<std::string> texts;
    for (const auto& table : book_tables()) {
        texts.emplace(table.title);
        texts.insert(plain(std::string(table.name)));
        for (const auto& column : table.columns) {
            texts.emplace(column.label);
            texts.insert(column.label_inside);
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
