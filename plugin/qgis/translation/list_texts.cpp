// SPDX-License-Identifier: GPL-2.0-or-later
// Prints the library's texts in a form that Qt's collector of translatable texts understands.
#include <fmt/format.h>

#include "pipward/cross/plan.h"
#include "pipward/operation/declared_texts.h"
#include "pipward/place/earth.h"

namespace {

// Words that stand in the cells of results and that the host shows.
template <class Word>
void add_words(std::set<std::string>& texts, std::initializer_list<Word> words) {
    for (const auto word : words) {
        texts.emplace(pipward::to_text(word));
    }
}

std::set<std::string> all_texts() {
    using namespace pipward;
    auto texts = declared_texts();
    add_words(texts, {PollenWay::same_day, PollenWay::kept_this_spring, PollenWay::kept_from_last_year,
                      PollenWay::forced_branch});
    add_words(texts,
              {Verdict::good, Verdict::fair, Verdict::doubtful, Verdict::unlikely, Verdict::impossible});
    add_words(texts, {PollenWork::gather, PollenWork::cut_branch, PollenWork::test_lot});
    add_words(texts, {FieldWork::bag, FieldWork::pollinate, FieldWork::unbag});
    for (int bearing = 0; bearing < 360; bearing += 45) {
        texts.emplace(compass_words(bearing));
    }
    return texts;
}

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
    for (const auto& text : all_texts()) {
        fmt::print("    QT_TRANSLATE_NOOP(\"pipward::library\", \"{}\"),\n", as_literal(text));
    }
    fmt::print("}};\n");
}
