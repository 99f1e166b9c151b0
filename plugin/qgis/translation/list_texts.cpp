// SPDX-License-Identifier: GPL-2.0-or-later
// list_texts LIB: prints the library's texts, those it declares and those its sources under LIB say, in a
// form that Qt's collector of translatable texts understands.
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <vector>

#include "pipward/cross/plan.h"
#include "pipward/operation/declare/declared_texts.h"
#include "translation/said_forms.h"

namespace {

using Path = std::filesystem::path;

std::vector<Path> sources_under(const Path& folder) {
    std::vector<Path> sources;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        const auto ending = entry.path().extension();
        // Where say() itself stands its form is a parameter.
        if ((ending == ".cpp" || ending == ".h") && entry.path().filename() != "sentence.h") {
            sources.push_back(entry.path());
        }
    }
    std::ranges::sort(sources);
    return sources;
}

std::string content_of(const Path& file) {
    std::ostringstream content;
    content << std::ifstream(file).rdbuf();
    return content.str();
}

void add_said(std::set<std::string>& texts, const Path& file) {
    try {
        texts.merge(pipward::desktop::said_forms(content_of(file)));
    } catch (const std::runtime_error& error) {
        throw std::runtime_error(fmt::format("{}, {}", file.string(), error.what()));
    }
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

// Words that stand in the cells of results and that the host shows.
template <class Word>
void add_words(std::set<std::string>& texts, std::initializer_list<Word> words) {
    for (const auto word : words) {
        texts.emplace(to_text(word));
    }
}

std::set<std::string> declared_and_shown() {
    using namespace pipward;
    auto texts = operation::declared_texts();
    add_words(texts, {cross::PollenWay::same_day, cross::PollenWay::kept_this_spring,
                      cross::PollenWay::kept_from_last_year, cross::PollenWay::forced_branch});
    add_words(texts, {cross::Verdict::good, cross::Verdict::fair, cross::Verdict::doubtful,
                      cross::Verdict::unlikely, cross::Verdict::impossible});
    add_words(texts,
              {cross::PollenWork::collect, cross::PollenWork::cut_branch, cross::PollenWork::test_lot});
    add_words(texts, {cross::FieldWork::bag, cross::FieldWork::pollinate, cross::FieldWork::unbag});
    return texts;
}

void print_texts(const Path& library) {
    auto texts = declared_and_shown();
    for (const auto& file : sources_under(library)) {
        add_said(texts, file);
    }
    texts.erase("");
    fmt::print("static const char* texts[] = {{\n");
    for (const auto& text : texts) {
        fmt::print("    QT_TRANSLATE_NOOP(\"pipward::library\", \"{}\"),\n", as_literal(text));
    }
    fmt::print("}};\n");
}

}  // namespace

int main(int count, char** words) {
    try {
        if (count != 2) {
            throw std::runtime_error("list_texts needs one argument: the folder of the library's sources");
        }
        print_texts(words[1]);
        return 0;
    } catch (const std::exception& error) {
        fmt::print(stderr, "{}\n", error.what());
        return 1;
    }
}
