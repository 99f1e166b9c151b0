// SPDX-License-Identifier: GPL-2.0-or-later
// German stands for every other language: nothing is left out, and all of it is taken back.
#include "translation/translation.h"

#include <gtest/gtest.h>

#include <QDomDocument>
#include <QFile>
#include <regex>
#include <set>
#include <vector>

#include "panel/task_tree.h"
#include "paths.h"
#include "pipward/operation/declare/declared_texts.h"
#include "text.h"

namespace pipward::desktop {
namespace {

// Names, code words, units and words that are the same in both languages.
bool may_be_alike(const std::string& text) {
    return text.starts_with("°C ") || (text.size() < 16 && text.find(' ') == std::string::npos);
}

TEST(Translation, SpeaksGermanForAsLongAsItLives) {
    EXPECT_EQ(TaskTree::tr("Today"), QStringLiteral("Today"));
    {
        const Translation german(QStringLiteral("de_AT"));
        ASSERT_TRUE(german.found());
        EXPECT_EQ(TaskTree::tr("Today"), QStringLiteral("Heute"));
    }
    EXPECT_EQ(TaskTree::tr("Today"), QStringLiteral("Today"));
}

TEST(Translation, LeavesEnglishWhereItKnowsNoOther) {
    EXPECT_FALSE(Translation(QStringLiteral("en_GB")).found());
    EXPECT_FALSE(Translation(QStringLiteral("xx")).found());
}

TEST(Translation, KnowsEveryTextThatTheOperationsDeclare) {
    const Translation german(QStringLiteral("de"));
    for (const auto& text : operation::declared_texts()) {
        if (!may_be_alike(text)) {
            EXPECT_NE(translated(text).toStdString(), text);
        }
    }
}

struct Entry {
    std::string source;
    QDomElement translation;
};

std::vector<Entry> all_entries() {
    QFile file(to_qt(testing::project_file("plugin/qgis/translation/pipward_de.ts")));
    QDomDocument texts;
    if (!file.open(QIODevice::ReadOnly) || !texts.setContent(&file)) {
        return {};
    }
    std::vector<Entry> entries;
    const auto elements = texts.elementsByTagName(QStringLiteral("translation"));
    for (int i = 0; i < elements.count(); ++i) {
        const auto element = elements.at(i).toElement();
        const auto source = element.parentNode().firstChildElement(QStringLiteral("source"));
        entries.push_back({source.text().toStdString(), element});
    }
    return entries;
}

/// Which fillings a form asks for; "{{" is a brace.
std::set<int> placeholders_of(const std::string& form) {
    static const std::regex field(R"(\{\{|\}\}|\{(\d*)(:[^{}]*)?\})");
    std::set<int> numbers;
    int next = 0;
    for (std::sregex_iterator at(form.begin(), form.end(), field), end; at != end; ++at) {
        if (at->str().size() != 2 || at->str() == "{}") {
            numbers.insert((*at)[1].length() > 0 ? std::stoi((*at)[1]) : next++);
        }
    }
    return numbers;
}

TEST(Translation, LeavesNoTextUnfinished) {
    const auto entries = all_entries();
    EXPECT_GT(entries.size(), 300U);
    for (const auto& entry : entries) {
        EXPECT_FALSE(entry.translation.hasAttribute(QStringLiteral("type"))) << entry.source;
    }
}

TEST(Translation, UsesThePlaceholdersOfItsForm) {
    EXPECT_EQ(placeholders_of("{{}} {:.1f} {1} {}"), (std::set<int>{0, 1}));
    int forms = 0;
    for (const auto& entry : all_entries()) {
        const auto wanted = placeholders_of(entry.source);
        forms += wanted.empty() ? 0 : 1;
        EXPECT_EQ(placeholders_of(entry.translation.text().toStdString()), wanted) << entry.source;
    }
    EXPECT_GT(forms, 100);
}

}  // namespace
}  // namespace pipward::desktop
