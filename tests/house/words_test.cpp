// SPDX-License-Identifier: MIT
// One word for one thing: no text that somebody reads has a word that docs/glossary.md leaves aside. The
// texts are the literals of the sources (names, titles, parameters, columns, tables, domain words, menus,
// headings of sheets), the documentation and the German translation.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "paths.h"

namespace {

namespace fs = std::filesystem;

const fs::path top = pipward::testing::project_file("");

std::string content_of(const fs::path& file) {
    std::ifstream stream(file);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<std::string> parts_of(const std::string& text, char joint) {
    std::vector<std::string> parts;
    std::istringstream stream(text);
    for (std::string part; std::getline(stream, part, joint);) {
        parts.push_back(part);
    }
    return parts;
}

/// Lower case, German letters too: the standard library minds ASCII only.
std::string lowered(std::string text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte >= 'A' && byte <= 'Z') {
            text[i] = static_cast<char>(byte + 32);
        } else if (byte == 0xC3 && i + 1 < text.size()) {
            const auto next = static_cast<unsigned char>(text[i + 1]);
            text[i + 1] = static_cast<char>(next >= 0x80 && next <= 0x9E ? next + 0x20 : next);
        }
    }
    return text;
}

struct Rule {
    std::vector<std::string> words;
    std::string instead;
    std::vector<std::string> allowed;
};

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(' ');
    return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::vector<std::string> listed(const std::string& text, char joint) {
    auto parts = parts_of(text, joint);
    for (auto& part : parts) {
        part = trimmed(part);
    }
    return parts;
}

std::vector<Rule> rules_for(const std::string& where) {
    std::vector<Rule> rules;
    for (const auto& line : parts_of(content_of(top / "tests/house/words.txt"), '\n')) {
        const auto cells = parts_of(line, '\t');
        if (!line.starts_with('#') && cells.size() >= 3 && cells[0] == where) {
            rules.push_back({listed(cells[1], ','), cells[2],
                             cells.size() > 3 ? listed(cells[3], ';') : std::vector<std::string>{}});
        }
    }
    return rules;
}

/// A letter of a word; German ones are two bytes above ASCII.
bool is_letter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || static_cast<unsigned char>(c) >= 0x80;
}

/// Whether the word stands in the text as a word of its own.
bool has_word(const std::string& text, const std::string& word) {
    for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        const auto end = at + word.size();
        if ((at == 0 || !is_letter(text[at - 1])) && (end == text.size() || !is_letter(text[end]))) {
            return true;
        }
    }
    return false;
}

std::string without(std::string text, const std::vector<std::string>& parts) {
    for (const auto& part : parts) {
        for (auto at = text.find(part); at != std::string::npos; at = text.find(part)) {
            text.erase(at, part.size());
        }
    }
    return text;
}

void expect_no_banned_word(const std::vector<Rule>& rules, const std::string& text, const fs::path& file) {
    const auto said = lowered(text);
    for (const auto& rule : rules) {
        const auto rest = without(said, rule.allowed);
        for (const auto& word : rule.words) {
            EXPECT_FALSE(has_word(rest, word)) << fs::relative(file, top).string() << ": \"" << text
                                               << "\" has \"" << word << "\"; say: " << rule.instead;
        }
    }
}

/// Reads the literals of a source, those that stand one after the other as one. Comments are passed over, and
/// what people write in files of their own (known_as and its like): that is theirs.
class Literals {
  public:
    explicit Literals(std::string source) : source_(std::move(source)) {}

    std::vector<std::string> read() {
        while (at_ < source_.size()) {
            if (source_.compare(at_, 2, "//") == 0) {
                at_ = std::min(source_.find('\n', at_), source_.size());
            } else if (source_.compare(at_, 3, "R\"(") == 0) {
                const auto end = std::min(source_.find(")\"", at_), source_.size());
                literals_.push_back(source_.substr(at_ + 3, end - at_ - 3));
                at_ = std::min(end + 2, source_.size());
            } else if (is_theirs()) {
                at_ = std::min(source_.find(')', at_), source_.size());
            } else if (source_[at_] == '\'' && at_ > 0 && !is_letter(source_[at_ - 1])) {
                at_ += source_[at_ + 1] == '\\' ? 4 : 3;
            } else if (source_[at_] == '"') {
                read_literal();
            } else {
                is_next_ = is_next_ && std::isspace(static_cast<unsigned char>(source_[at_])) != 0;
                ++at_;
            }
        }
        return std::move(literals_);
    }

  private:
    bool is_theirs() const {
        for (const auto* name : {"known_as(", "called(", "usual("}) {
            if (source_.compare(at_, std::strlen(name), name) == 0) {
                return true;
            }
        }
        return false;
    }

    void read_literal() {
        std::string text;
        for (++at_; at_ < source_.size() && source_[at_] != '"'; ++at_) {
            at_ += source_[at_] == '\\' ? 1 : 0;
            text += source_[at_];
        }
        ++at_;
        if (is_next_) {
            literals_.back() += text;
        } else {
            literals_.push_back(text);
        }
        is_next_ = true;
    }

    std::string source_;
    std::vector<std::string> literals_;
    std::size_t at_ = 0;
    bool is_next_ = false;
};

std::vector<fs::path> files_below(const fs::path& folder, const std::set<std::string>& endings) {
    std::vector<fs::path> found;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (endings.contains(entry.path().extension().string())) {
            found.push_back(entry.path());
        }
    }
    return found;
}

TEST(Words, TextsInTheSourcesUseTheGlossary) {
    const auto rules = rules_for("en");
    ASSERT_GT(rules.size(), 25U);
    std::size_t seen = 0;
    for (const auto* folder : {"lib", "plugin"}) {
        for (const auto& file : files_below(top / folder, {".cpp", ".h"})) {
            for (const auto& text : Literals(content_of(file)).read()) {
                ++seen;
                expect_no_banned_word(rules, text, file);
            }
        }
    }
    EXPECT_GT(seen, 5000U);
}

TEST(Words, TheDocumentationUsesTheGlossary) {
    const auto rules = rules_for("en");
    auto pages = files_below(top / "docs", {".md"});
    for (const auto* more : {"README.md", "DEVELOPERS.md", "sample-gpkg/README.md"}) {
        pages.push_back(top / more);
    }
    for (const auto& page : pages) {
        // They tell the words that are not used any more.
        if (page.filename() == "glossary.md" || page.filename() == "CHANGELOG.md") {
            continue;
        }
        for (const auto& line : parts_of(content_of(page), '\n')) {
            expect_no_banned_word(rules, line, page);
        }
    }
    EXPECT_GT(pages.size(), 8U);
}

TEST(Words, TheGermanTranslationUsesTheGlossaryAndIsImpersonal) {
    const auto rules = rules_for("de");
    ASSERT_GT(rules.size(), 8U);
    const fs::path file = top / "plugin/qgis/translation/pipward_de.ts";
    const auto texts = content_of(file);
    std::size_t seen = 0;
    for (auto at = texts.find("<translation"); at != std::string::npos;
         at = texts.find("<translation", at + 1)) {
        const auto begin = texts.find('>', at) + 1;
        ++seen;
        expect_no_banned_word(rules, texts.substr(begin, texts.find("</translation>", begin) - begin), file);
    }
    EXPECT_GT(seen, 3000U);
}

TEST(Words, NamesFollow) {
    const auto rules = rules_for("name");
    ASSERT_FALSE(rules.empty());
    for (const auto* folder : {"lib", "plugin", "tests", "sample-gpkg"}) {
        for (const auto& file : files_below(top / folder, {".cpp", ".h", ".py", ".sh"})) {
            const auto name = lowered(fs::relative(file, top).string());
            for (const auto& rule : rules) {
                const auto bare = without(name, {"address"});  // another word
                EXPECT_EQ(bare.find(rule.words.front()), std::string::npos)
                    << name << "; say: " << rule.instead;
            }
        }
    }
}

TEST(Glossary, HasATermARowWithGermanMeaningAndSource) {
    std::set<std::string> terms;
    for (const auto& line : parts_of(content_of(top / "docs/glossary.md"), '\n')) {
        if (line.starts_with("## ")) {
            break;
        }
        const auto cells = parts_of(line, '|');
        if (!line.starts_with("| ") || line.starts_with("| term")) {
            continue;
        }
        ASSERT_EQ(cells.size(), 5U) << line;
        for (std::size_t i = 1; i < cells.size(); ++i) {
            EXPECT_NE(cells[i].find_first_not_of(' '), std::string::npos) << line;
        }
        EXPECT_TRUE(terms.insert(cells[1]).second) << line;
    }
    EXPECT_GE(terms.size(), 80U);
}

}  // namespace
