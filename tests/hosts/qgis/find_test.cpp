// SPDX-License-Identifier: GPL-2.0-or-later
// Finding trees in the desktop, without a desktop around it.
#include <gtest/gtest.h>
#include <qgsapplication.h>
#include <qgsfeedback.h>
#include <qgsgui.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>

#include <QClipboard>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <functional>

#include "find/book_layer.h"
#include "find/card_action.h"
#include "find/find_box.h"
#include "find/find_desk.h"
#include "find/gps_position.h"
#include "find/tree_card.h"
#include "find/tree_locator.h"
#include "paths.h"
#include "pipward/book/book.h"
#include "text.h"

namespace pipward::desktop {
namespace {

struct Book {
    QTemporaryDir folder;
    QString path = plain_book(copied());

  private:
    QString copied() const {
        const QString copy = folder.filePath(QStringLiteral("book.gpkg"));
        QFile::copy(to_qt(testing::sample_book()), copy);
        return copy;
    }
};

bool came_true(const std::function<bool()>& condition) {
    QElapsedTimer clock;
    clock.start();
    while (!condition() && clock.elapsed() < 20000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return condition();
}

SharedIndex index_of(TreeFinder& finder, const QString& book) {
    finder.use_book(book);
    EXPECT_TRUE(came_true([&] { return finder.index_of(book) != nullptr && !finder.is_reading(book); }));
    return finder.index_of(book);
}

ChosenTree tree_named(const SharedIndex& index, const std::string& label) {
    return {index, index->trees.find(label, 1).at(0).tree};
}

void add_tree(const QString& book, const std::string& label) {
    const Table trees{{"tree", "", "", true, {{"label", CellType::text, "", "", ""}}},
                      {{{label}, MapPoint{522400, 5331300, {}}}}};
    book::append_rows(book.toStdString(), trees);
}

QString all_words(const QWidget& widget) {
    QString words;
    for (const auto* label : widget.findChildren<QLabel*>()) {
        words += label->text() + '\n';
    }
    for (const auto* button : widget.findChildren<QPushButton*>()) {
        words += button->text() + '\n';
    }
    return words;
}

TEST(TreeFinder, ReadsTheBookInTheBackground) {
    const Book book;
    TreeFinder finder;
    const QSignalSpy ready(&finder, &TreeFinder::ready);
    finder.use_book(book.path);
    EXPECT_EQ(finder.index_of(book.path), nullptr) << "it must not wait";
    ASSERT_TRUE(came_true([&] { return ready.count() == 1; }));
    EXPECT_GT(finder.index_of(book.path)->trees.orchard().trees.size(), 100U);
}

TEST(TreeFinder, ReadsTheBookAgainWhenItHasChanged) {
    const Book book;
    TreeFinder finder;
    const auto before = index_of(finder, book.path);
    QTest::qWait(20);  // so that the file's time is another
    add_tree(book.path, "NEW-01");
    EXPECT_EQ(finder.index_of(book.path), before) << "the old one serves until the new one is there";
    ASSERT_TRUE(came_true([&] { return finder.index_of(book.path) != before; }));
    EXPECT_EQ(finder.index_of(book.path)->trees.find("NEW-01", 1).at(0).score, 1.0);
}

TEST(TreeFinder, TellsWhyABookCannotBeReadAndDoesNotTryForEver) {
    TreeFinder finder;
    const QSignalSpy failed(&finder, &TreeFinder::failed);
    const QString book = QStringLiteral("nowhere.gpkg");
    finder.use_book(book);
    EXPECT_FALSE(finder.is_reading(book));
    finder.index_of(book);
    ASSERT_TRUE(came_true([&] { return failed.count() == 1; }));
    EXPECT_TRUE(finder.failure_of(book).contains(QStringLiteral("There is no such file")));
    finder.index_of(book);
    EXPECT_FALSE(finder.is_reading(book));
}

struct Box {
    Book book;
    TreeFinder finder;
    FindBox box{finder};
    QLineEdit* line = box.findChild<QLineEdit*>();
    QListWidget* list = box.findChild<QListWidget*>();

    Box() { index_of(finder, book.path); }

    bool shows(const QString& words) {
        return came_true([&] { return list->count() > 0 && list->item(0)->text().contains(words); });
    }
};

TEST(FindBox, ShowsWhatIsFoundAsOneTypes) {
    Box desk;
    QTest::keyClicks(desk.line, QStringLiteral("up-05-0"));
    EXPECT_TRUE(desk.shows(QStringLiteral("UP-05-0")));
    const int many = desk.list->count();
    EXPECT_GT(many, 5);
    QTest::keyClicks(desk.line, QStringLiteral("4"));
    ASSERT_TRUE(came_true([&] { return desk.list->count() == 1; }));
    EXPECT_TRUE(desk.list->item(0)->text().startsWith(
        QStringLiteral("UP-05-04, 17-01-04\nblock Upper, row 5, position 4")))
        << desk.list->item(0)->text().toStdString();
}

TEST(FindBox, GoesToTheFirstTreeOnEnterEvenBeforeTheAnswerIsThere) {
    Box desk;
    const QSignalSpy chosen(&desk.box, &FindBox::chosen);
    desk.line->setText(QStringLiteral("Tansy Lane × Wrenlea no. 4"));
    QTest::keyClick(desk.line, Qt::Key_Return);
    ASSERT_TRUE(came_true([&] { return chosen.count() == 1; }));
    EXPECT_EQ(chosen.at(0).at(0).value<ChosenTree>().tree().label, "UP-04-04");
}

TEST(FindBox, GoesToTheTreeThatTheArrowKeysChose) {
    Box desk;
    const QSignalSpy chosen(&desk.box, &FindBox::chosen);
    desk.line->setText(QStringLiteral("Kettlefen"));
    ASSERT_TRUE(desk.shows(QStringLiteral("Kettlefen")));
    const QString second = desk.list->item(1)->text();
    QTest::keyClick(desk.line, Qt::Key_Down);
    QTest::keyClick(desk.line, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_TRUE(second.startsWith(to_qt(chosen.at(0).at(0).value<ChosenTree>().tree().label)));
}

TEST(FindBox, OffersTheNearestNamesWhereNothingIsLikeTheQuery) {
    Box desk;
    desk.line->setText(QStringLiteral("Greyfriars"));
    EXPECT_TRUE(desk.shows(QStringLiteral("Greywether")));
    const QSignalSpy chosen(&desk.box, &FindBox::chosen);
    QTest::keyClick(desk.line, Qt::Key_Return);
    EXPECT_EQ(chosen.count(), 0);
    desk.line->clear();
    EXPECT_TRUE(desk.list->isHidden());
}

TEST(FindBox, SaysThatABookMustBeChosenOrWhyItCannotBeRead) {
    TreeFinder finder;
    FindBox box(finder);
    auto* list = box.findChild<QListWidget*>();
    box.look_for(QStringLiteral("A"));
    ASSERT_EQ(list->count(), 1);
    EXPECT_EQ(list->item(0)->text(), QStringLiteral("Choose an orchard book first."));
    finder.use_book(QStringLiteral("nowhere.gpkg"));
    box.look_for(QStringLiteral("AB"));
    EXPECT_TRUE(
        came_true([&] { return list->item(0)->text().contains(QStringLiteral("There is no such file")); }));
}

TEST(FindBox, TakesAnyTextAndGoesAwayInTheMiddleOfALookUp) {
    Box desk;
    for (const auto* query : {"🍎", "'; DROP TABLE tree; --", "\"", "%", "\t"}) {
        desk.line->setText(QString::fromUtf8(query));
    }
    desk.line->setText(QString(10000, 'x'));
    QCoreApplication::processEvents();
}

TEST(TreeCard, TellsAllThatIsKnownInPlainWords) {
    const Book book;
    TreeFinder finder;
    const auto index = index_of(finder, book.path);
    TreeCard card;
    card.show_tree(tree_named(index, "UP-05-03"), LookingFrom{{9.3, 48.135}, false});
    const QString words = all_words(card);
    for (const auto* part :
         {"UP-05-03", "block Upper, row 5, position 3", "17-01-03", "Larkfold Red × Larkfold Mix",
          "Culled: scab every year.", "own roots", "north of the map's middle", "taste"}) {
        EXPECT_TRUE(words.contains(QString::fromUtf8(part))) << part << "\n" << words.toStdString();
    }
    EXPECT_FALSE(words.contains('_')) << words.toStdString();
}

TEST(TreeCard, TellsTheLastBloomObservationsAndPollinations) {
    const Book book;
    TreeFinder finder;
    TreeCard card;
    card.show_tree(tree_named(index_of(finder, book.path), "LO-02-08"), {});
    EXPECT_TRUE(all_words(card).contains(QStringLiteral("BBCH")));
    EXPECT_FALSE(all_words(card).contains(QStringLiteral("of the map's"))) << "nobody looks from anywhere";
}

TEST(TreeCard, CopiesThePlaceAsAGeoUri) {
    const Book book;
    TreeFinder finder;
    TreeCard card;
    card.show_tree(tree_named(index_of(finder, book.path), "UP-05-04"), {});
    EXPECT_TRUE(card.geo_uri().startsWith(QStringLiteral("geo:48.13")));
    for (auto* button : card.findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("Copy"))) {
            button->click();
        }
    }
    EXPECT_EQ(QGuiApplication::clipboard()->text(), card.geo_uri());
}

/// Runs the filter as the search bar does: a clone prepared here and asked in another thread.
QList<QgsLocatorResult> located(TreeLocator& locator, const QString& query, bool with_prefix) {
    const std::unique_ptr<TreeLocator> clone(locator.clone());
    QgsLocatorContext context;
    context.usingPrefix = with_prefix;
    clone->prepare(query, context);
    QList<QgsLocatorResult> results;
    QObject::connect(
        clone.get(), &QgsLocatorFilter::resultFetched, clone.get(),
        [&](const QgsLocatorResult& result) { results << result; }, Qt::DirectConnection);
    QgsFeedback feedback;
    const std::unique_ptr<QThread> other(
        QThread::create([&] { clone->fetchResults(query, context, &feedback); }));
    other->start();
    other->wait();
    return results;
}

TEST(TreeLocator, FindsTreesInAnotherThreadAndOpensTheOneTaken) {
    const Book book;
    TreeFinder finder;
    index_of(finder, book.path);
    TreeLocator locator(&finder);
    EXPECT_GE(locator.prefix().size(), 3) << "shorter ones are passed over without a word";
    const auto results = located(locator, QStringLiteral("17-01-04"), true);
    ASSERT_FALSE(results.isEmpty());
    EXPECT_EQ(results.first().displayString, QStringLiteral("UP-05-04, 17-01-04"));
    const QSignalSpy chosen(&locator, &TreeLocator::chosen);
    locator.triggerResult(results.first());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.at(0).at(0).value<ChosenTree>().tree().label, "UP-05-04");
}

TEST(TreeLocator, KeepsStillForShortWordsWithoutItsPrefixAndWithoutABook) {
    const Book book;
    TreeFinder finder;
    TreeLocator locator(&finder);
    EXPECT_TRUE(located(locator, QStringLiteral("UP-05"), true).isEmpty());
    index_of(finder, book.path);
    EXPECT_TRUE(located(locator, QStringLiteral("UP"), false).isEmpty());
    EXPECT_FALSE(located(locator, QStringLiteral("UP"), true).isEmpty());
    EXPECT_FALSE(located(locator, QStringLiteral("UP-"), false).isEmpty());
}

TEST(CardAction, IsForTheTreeLayerOfAnyBookOnly) {
    const Book book;
    QgsVectorLayer trees(book.path + QStringLiteral("|layername=tree"), QStringLiteral("whatever"),
                         QStringLiteral("ogr"));
    QgsVectorLayer rows(book.path + QStringLiteral("|layername=tree_row"), QStringLiteral("tree"),
                        QStringLiteral("ogr"));
    QgsVectorLayer loose(QStringLiteral("Point?field=label:string"), QStringLiteral("tree"),
                         QStringLiteral("memory"));
    EXPECT_EQ(book_of_trees(&trees), book.path);
    EXPECT_EQ(book_of_trees(&rows), QString());
    EXPECT_EQ(book_of_trees(&loose), QString());
    EXPECT_EQ(book_of_trees(nullptr), QString());
}

TEST(FindDesk, WithoutADesktopAddsTheActionAndTakesItBack) {
    const Book book;
    QgsVectorLayer trees(book.path + QStringLiteral("|layername=tree"), QStringLiteral("trees"),
                         QStringLiteral("ogr"));
    const auto offered = [&] { return QgsGui::mapLayerActionRegistry()->mapLayerActions(&trees).size(); };
    const auto before = offered();
    {
        FindDesk desk(nullptr, nullptr);
        EXPECT_EQ(offered(), before + 1);
    }
    EXPECT_EQ(offered(), before);
}

TEST(FindDesk, LooksInTheBookWhoseTreesAreOnTheMapAndReadsItAgainAfterEdits) {
    const Book book;
    FindDesk desk(nullptr, nullptr);
    auto* layer = new QgsVectorLayer(book.path + QStringLiteral("|layername=tree"), QStringLiteral("trees"),
                                     QStringLiteral("ogr"));
    QgsProject::instance()->addMapLayer(layer);
    EXPECT_EQ(desk.finder().book(), book.path);
    const auto before = index_of(desk.finder(), book.path);
    layer->startEditing();
    QgsFeature first;
    ASSERT_TRUE(layer->getFeatures().nextFeature(first));
    layer->changeAttributeValue(first.id(), layer->fields().lookupField(QStringLiteral("label")),
                                QStringLiteral("RENAMED"));
    ASSERT_TRUE(layer->commitChanges());
    ASSERT_TRUE(came_true([&] { return desk.finder().index_of(book.path) != before; }));
    EXPECT_EQ(desk.finder().index_of(book.path)->trees.find("RENAMED", 1).at(0).score, 1.0);
    QgsProject::instance()->clear();
}

TEST(GpsPosition, IsNothingWhereNoneIsConnected) {
    EXPECT_FALSE(gps_position());
}

}  // namespace
}  // namespace pipward::desktop
