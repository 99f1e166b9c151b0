// SPDX-License-Identifier: GPL-2.0-or-later
// Prints the library's texts in a form that Qt's collector of translatable texts understands.
#include <fmt/format.h>

#include "pipward/cross/plan.h"
#include "pipward/operation/declared_texts.h"

namespace {

std::string as_literal(const std::string& text) {
    std::string literal;
    for (const char c : text) {
        if (c == '"' || c == '\\') {
            literal += '\\';
        }
        literal += c == '\n' ? std::string("\\n") : std::string(1, c);
    }
    return literal;
}

}  // namespace

int main() {
    fmt::print("static const char* texts[] = {{\n");
    for (const auto& text : pipward::declared_texts()) {
        fmt::print("    QT_TRANSLATE_NOOP(\"pipward::library\", \"{}\"),\n", as_literal(text));
    }
    fmt::print("}};\n");
}
