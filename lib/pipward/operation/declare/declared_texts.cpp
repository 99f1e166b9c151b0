// SPDX-License-Identifier: MIT
#include "pipward/operation/declare/declared_texts.h"

#include "pipward/book/schema_words.h"
#include "pipward/operation/operation.h"

namespace pipward::operation {
namespace {

using Texts = std::set<std::string>;

void add(Texts& texts, const std::string& text) {
    if (!text.empty()) {
        texts.insert(text);
    }
}

void add_unit(Texts& texts, const ParameterKind& kind) {
    std::visit(
        [&](const auto& of_kind) {
            if constexpr (requires { of_kind.unit; }) {
                add(texts, of_kind.unit);
            }
        },
        kind);
}

void add(Texts& texts, const Parameter& parameter) {
    add(texts, parameter.label);
    add(texts, parameter.help);
    add_unit(texts, parameter.kind);
    if (const auto* choice = std::get_if<ChoiceKind>(&parameter.kind)) {
        for (const auto& option : choice->options) {
            add(texts, option.meaning);
        }
    }
}

void add(Texts& texts, const TableShape& shape) {
    add(texts, shape.title);
    add(texts, shape.description);
    for (const auto& column : shape.columns) {
        add(texts, column.label);
        add(texts, column.description);
        add(texts, column.unit);
        for (const auto& word : column.words) {
            add(texts, word.plain);
        }
    }
}

}  // namespace

std::set<std::string> declared_texts() {
    auto texts = book::schema_texts();
    for (const auto& operation : operations()) {
        add(texts, operation->about().title);
        add(texts, operation->about().group);
        add(texts, operation->about().help);
        for (const auto& parameter : operation->parameters()) {
            add(texts, parameter);
        }
        for (const auto& shape : operation->results()) {
            add(texts, shape);
        }
    }
    return texts;
}

}  // namespace pipward::operation
