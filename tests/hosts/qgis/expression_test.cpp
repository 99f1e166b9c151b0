// SPDX-License-Identifier: GPL-2.0-or-later
// What labels, filters and forms may ask of the book.
#include "expression/functions.h"

#include <gtest/gtest.h>
#include <qgsexpression.h>
#include <qgsexpressioncontextutils.h>
#include <qgsproject.h>
#include <qgssettings.h>
#include <qgsvectorlayer.h>

#include <QFile>
#include <QTemporaryDir>
#include <QThread>

#include "paths.h"
#include "pipward/operation/operation.h"
#include "text.h"

namespace pipward::desktop {
namespace {

/// The sample, planned on 20 March 2026, with its trees in the project.
struct Planned {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("book.gpkg"));
    QgsVectorLayer* trees = nullptr;

    Planned() {
        QFile::copy(to_qt(testing::sample_book()), path);
        operation::find_operation("season-plan")
            ->run({{"book", path.toStdString()}, {"as-of", "2026-03-20"}}, {});
        trees = new QgsVectorLayer(path + QStringLiteral("|layername=tree"), QStringLiteral("trees"));
        QgsProject::instance()->addMapLayer(trees);
    }
    ~Planned() { QgsProject::instance()->clear(); }

    QVariant ask(const QString& text, const QString& label = {}) const {
        QgsExpressionContext context(QgsExpressionContextUtils::globalProjectLayerScopes(trees));
        QgsFeature tree;
        if (!label.isEmpty()) {
            trees->getFeatures(QStringLiteral("label = '%1'").arg(label)).nextFeature(tree);
            context.setFeature(tree);
        }
        QgsExpression expression(text);
        expression.prepare(&context);
        const QVariant answer = expression.evaluate(&context);
        trouble = expression.evalErrorString();
        return answer;
    }
    mutable QString trouble;  ///< of the last question
};

/// The window does not wait for a book that takes long to read: ask again, as somebody would who is told so.
QVariant told(const Planned& planned, const QString& text, const QString& label = {}) {
    QVariant answer = planned.ask(text, label);
    for (int tries = 0; tries < 300 && planned.trouble.contains(QStringLiteral("still being read"));
         ++tries) {
        QThread::msleep(100);
        answer = planned.ask(text, label);
    }
    EXPECT_TRUE(planned.trouble.isEmpty()) << planned.trouble.toStdString();
    return answer;
}

TEST(Expressions, TellFullBloomOfATreeByNameOrOfTheFeatureAtHand) {
    const ExpressionFunctions functions;
    const Planned planned;
    const QDate named = told(planned, QStringLiteral("orchard_full_bloom('UP-02-10')")).toDate();
    EXPECT_EQ(named.year(), 2026);
    EXPECT_EQ(told(planned, QStringLiteral("orchard_full_bloom()"), QStringLiteral("UP-02-10")).toDate(),
              named);
    EXPECT_EQ(told(planned, QStringLiteral("orchard_full_bloom('Mossgate Late')")).toDate().year(), 2026);
}

TEST(Expressions, CountTheDaysToBloomFromADay) {
    const ExpressionFunctions functions;
    const Planned planned;
    const QDate day = told(planned, QStringLiteral("orchard_full_bloom('UP-02-10')")).toDate();
    const QString asked = QStringLiteral("orchard_days_to_bloom('UP-02-10', to_date('%1'))")
                              .arg(day.addDays(-9).toString(Qt::ISODate));
    EXPECT_EQ(told(planned, asked).toInt(), 9);
    EXPECT_EQ(told(planned, QStringLiteral("orchard_days_to_bloom('UP-02-10')")).toInt(),
              QDate::currentDate().daysTo(day));
}

TEST(Expressions, TellTheParentsOfATree) {
    const ExpressionFunctions functions;
    const Planned planned;
    const QString lineage = told(planned, QStringLiteral("orchard_lineage('16-01-04')")).toString();
    EXPECT_TRUE(lineage.contains(QStringLiteral(" × "))) << lineage.toStdString();
}

TEST(Expressions, TellWhereATreeStands) {
    const ExpressionFunctions functions;
    const Planned planned;
    EXPECT_EQ(told(planned, QStringLiteral("orchard_address()"), QStringLiteral("UP-02-10")).toString(),
              QStringLiteral("block Upper, row 2, position 10"));
}

TEST(Expressions, AnswerWithAnUnknownWhereNothingIsKnown) {
    const ExpressionFunctions functions;
    const Planned planned;
    ASSERT_FALSE(told(planned, QStringLiteral("orchard_full_bloom('Mossgate Late')")).isNull());
    for (const auto* asked : {"orchard_full_bloom('nobody')", "orchard_days_to_bloom(NULL)",
                              "orchard_address('nobody')", "orchard_lineage('; DROP TABLE tree')"}) {
        EXPECT_TRUE(told(planned, QLatin1String(asked)).isNull()) << asked;
    }
}

/// What cannot be asked is no unknown: it would be written into data as one.
TEST(Expressions, SayThatABookCannotBeRead) {
    const ExpressionFunctions functions;
    const Planned planned;
    ASSERT_FALSE(told(planned, QStringLiteral("orchard_full_bloom('Mossgate Late')")).isNull());
    QFile book(planned.path);
    ASSERT_TRUE(book.open(QIODevice::ReadWrite | QIODevice::Truncate));
    book.write("Dear breeder,");
    book.close();
    QVariant answer;
    for (int tries = 0; tries < 300; ++tries) {
        answer = planned.ask(QStringLiteral("orchard_full_bloom('Mossgate Late')"));
        if (planned.trouble.contains(QStringLiteral("cannot be read"))) {
            break;
        }
        QThread::msleep(100);
    }
    EXPECT_TRUE(answer.isNull());
    EXPECT_TRUE(planned.trouble.contains(QStringLiteral("book.gpkg cannot be read")))
        << planned.trouble.toStdString();
}

TEST(Expressions, SayThatALayerIsOfNoBook) {
    const ExpressionFunctions functions;
    QgsSettings().remove(QStringLiteral("pipward/book"));
    QgsExpressionContext context;
    QgsExpression expression(QStringLiteral("orchard_full_bloom('Mossgate Late')"));
    expression.prepare(&context);
    EXPECT_TRUE(expression.evaluate(&context).isNull());
    EXPECT_TRUE(expression.hasEvalError());
}

TEST(Expressions, SeeTheBookAfterItChanged) {
    const ExpressionFunctions functions;
    const Planned planned;
    const QDate before = told(planned, QStringLiteral("orchard_full_bloom('UP-02-10')")).toDate();
    operation::find_operation("season-plan")
        ->run({{"book", planned.path.toStdString()}, {"as-of", "2025-03-20"}}, {});
    EXPECT_NE(told(planned, QStringLiteral("orchard_full_bloom('UP-02-10')")).toDate(), before);
}

TEST(Expressions, AreGoneWhenTheyAreTakenBack) {
    {
        const ExpressionFunctions functions;
        EXPECT_TRUE(QgsExpression::isFunctionName("orchard_lineage"));
    }
    EXPECT_FALSE(QgsExpression::isFunctionName("orchard_lineage"));
}

}  // namespace
}  // namespace pipward::desktop
