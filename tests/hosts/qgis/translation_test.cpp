// SPDX-License-Identifier: GPL-2.0-or-later
// German stands for every other language: nothing is left out, and all of it is taken back.
#include "translation/translation.h"

#include <gtest/gtest.h>

#include <QDomDocument>
#include <QFile>

#include "panel/task_tree.h"
#include "pipward/operation/declared_texts.h"
#include "text.h"

namespace pipward::desktop {
namespace {

// Names, code words and words that are the same in both languages.
bool may_be_alike(const std::string& text) {
    return text.size() < 16 && text.find(' ') == std::string::npos;
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
    for (const auto& text : declared_texts()) {
        if (!may_be_alike(text)) {
            EXPECT_NE(translated(text).toStdString(), text);
        }
    }
}

TEST(Translation, LeavesNoTextOfTheHostUnfinished) {
    QFile file(QStringLiteral(PIPWARD_TEXTS));
    QDomDocument texts;
    ASSERT_TRUE(file.open(QIODevice::ReadOnly) && texts.setContent(&file));
    const auto entries = texts.elementsByTagName(QStringLiteral("translation"));
    EXPECT_GT(entries.count(), 300);
    for (int i = 0; i < entries.count(); ++i) {
        const auto entry = entries.at(i).toElement();
        EXPECT_FALSE(entry.hasAttribute(QStringLiteral("type")))
            << entry.parentNode().firstChildElement(QStringLiteral("source")).text().toStdString();
    }
}

}  // namespace
}  // namespace pipward::desktop
