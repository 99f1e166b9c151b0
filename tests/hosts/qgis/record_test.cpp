// SPDX-License-Identifier: GPL-2.0-or-later
// Recording at a tree, without a desktop around it: the choices, the form, the way into the book and back.
#include <gtest/gtest.h>
#include <qgsapplication.h>
#include <qgsmapcanvas.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>

#include <QComboBox>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTabWidget>
#include <QTemporaryDir>

#include "paths.h"
#include "record/finding_text.h"
#include "record/open_layers.h"
#include "record/record_desk.h"
#include "record/record_form.h"
#include "record/tree_choices.h"
#include "record/tree_tool.h"
#include "text.h"

namespace pipward::desktop {
namespace {

const Day in_bloom = *parse_iso_day("2026-05-12");

template <class Condition>
bool wait_for(const Condition& condition) {
    QElapsedTimer clock;
    clock.start();
    while (!condition() && clock.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return condition();
}

class RecordingAtATree : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(QFile::copy(to_qt(testing::sample_book()), book));
        form.set_day(QDate(2026, 5, 12));
    }
    void TearDown() override { QgsProject::instance()->clear(); }

    void open(const char* label) {
        desk.open_tree(book, QString::fromLatin1(label));
        ASSERT_TRUE(wait_for([&] { return button()->isEnabled(); }));
    }
    QPushButton* button() { return form.findChild<QPushButton*>(QStringLiteral("pipward_record_button")); }
    void show_page(int page) {
        form.findChild<QTabWidget*>(QStringLiteral("pipward_record_pages"))->setCurrentIndex(page);
    }
    template <class Field>
    Field* field(const char* name) {
        return form.findChild<Field*>(QString::fromLatin1(name));
    }
    void choose(const char* list, const QVariant& value) {
        auto* box = field<QComboBox>(list);
        ASSERT_GE(box->findData(value), 0) << list;
        box->setCurrentIndex(box->findData(value));
    }
    /// Presses the button and waits until the note is in the book or refused.
    void press() {
        const QSignalSpy recorded(&desk, &RecordDesk::recorded);
        const QSignalSpy refused(&desk, &RecordDesk::refused);
        button()->click();
        ASSERT_TRUE(wait_for([&] { return recorded.count() + refused.count() > 0; }));
    }
    QString findings() { return field<QLabel>("pipward_record_findings")->text(); }
    Orchard orchard() { return book::read_book(book.toStdString()).orchard; }
    QgsVectorLayer* add_layer(const char* table) {
        auto* layer = new QgsVectorLayer(QStringLiteral("%1|layername=%2").arg(book, table),
                                         QString::fromLatin1(table), QStringLiteral("ogr"));
        QgsProject::instance()->addMapLayer(layer);
        return layer;
    }

    QTemporaryDir folder;
    QString book = folder.filePath(QStringLiteral("book.gpkg"));
    RecordForm form;
    RecordDesk desk{form};
};

TEST_F(RecordingAtATree, OffersTheCrossesOfTheSeasonThatTheTreeBears) {
    const auto choices = choices_for(orchard(), "LO-01-01", in_bloom);
    EXPECT_EQ(choices.accession, QStringLiteral("Larkfold Early"));
    ASSERT_EQ(choices.crosses.size(), 2U);
    EXPECT_EQ(choices.crosses[0].value, QStringLiteral("26-04"));
    EXPECT_TRUE(choices_for(orchard(), "LO-01-01", *parse_iso_day("2022-05-12")).crosses.empty() ||
                choices_for(orchard(), "LO-01-01", *parse_iso_day("2022-05-12")).crosses[0].value !=
                    QStringLiteral("26-04"));
    EXPECT_EQ(next_tag(orchard(), "26-04"), QStringLiteral("26-04-a"));
    EXPECT_EQ(next_tag(orchard(), "25-03"), QStringLiteral("25-03-c"));
}

TEST_F(RecordingAtATree, OffersPollenInHandThatOfTheWantedDonorFirst) {
    const auto lots = lots_for(orchard(), "26-04", in_bloom);  // of Ridgewhistle
    ASSERT_FALSE(lots.empty());
    EXPECT_EQ(lots[0].value, QStringLiteral("P-25-02"));
    for (const auto& lot : lots) {
        EXPECT_NE(lot.value, QStringLiteral("P-24-01")) << "it was used up in May 2025";
    }
}

TEST_F(RecordingAtATree, ABloomObservationGoesIntoTheBookAndUndoTakesItBack) {
    const auto before = orchard().bloom_observations.size();
    open("LO-04-07");
    choose("pipward_record_stage", 61);
    press();
    ASSERT_EQ(orchard().bloom_observations.size(), before + 1);
    EXPECT_EQ(orchard().bloom_observations.back().tree, "LO-04-07");
    EXPECT_EQ(orchard().bloom_observations.back().bbch, Bbch{61});
    EXPECT_TRUE(desk.can_undo());

    const QSignalSpy back(&desk, &RecordDesk::taken_back);
    desk.undo();
    ASSERT_TRUE(wait_for([&] { return back.count() == 1; }));
    EXPECT_TRUE(back.at(0).at(0).toString().contains(QStringLiteral("LO-04-07, BBCH 61")));
    EXPECT_EQ(orchard().bloom_observations.size(), before);
    EXPECT_FALSE(desk.can_undo());

    const QSignalSpy recorded(&desk, &RecordDesk::recorded);
    desk.redo();
    ASSERT_TRUE(wait_for([&] { return recorded.count() == 1; }));
    EXPECT_EQ(orchard().bloom_observations.size(), before + 1);
    EXPECT_FALSE(desk.can_redo());
}

TEST_F(RecordingAtATree, APollinationTakesTheProposedTagAndTheChosenPollen) {
    open("LO-01-01");
    show_page(1);
    choose("pipward_record_cross", QStringLiteral("26-04"));
    EXPECT_EQ(field<QLineEdit>("pipward_record_tag")->text(), QStringLiteral("26-04-a"));
    choose("pipward_record_lot", QStringLiteral("P-25-02"));
    field<QSpinBox>("pipward_record_flowers")->setValue(40);
    press();
    const auto work = orchard().pollinations.back();
    EXPECT_EQ(work.tag, "26-04-a");
    EXPECT_EQ(work.flowers, 40);
    EXPECT_EQ(work.lot, "P-25-02");
    EXPECT_TRUE(wait_for([&] {
        return field<QLineEdit>("pipward_record_tag")->text() == QStringLiteral("26-04-b");
    })) << "the next tag is proposed";
}

TEST_F(RecordingAtATree, AHarvestIsOfATagOnTheTree) {
    open("LO-05-08");
    show_page(2);
    form.set_day(QDate(2025, 10, 2));
    choose("pipward_record_harvested_tag", QStringLiteral("25-03-b"));
    field<QSpinBox>("pipward_record_fruits")->setValue(3);
    press();
    EXPECT_EQ(orchard().fruits.back().tag, "25-03-b");
    EXPECT_EQ(orchard().fruits.back().fruits, 3);
    EXPECT_FALSE(orchard().fruits.back().seeds_sound) << "not counted is unknown, not nought";
}

TEST_F(RecordingAtATree, WhatIsWrongIsShownWithItsRemedyAndNotWritten) {
    open("LO-05-08");
    show_page(2);
    form.set_day(QDate(2025, 5, 1));
    choose("pipward_record_harvested_tag", QStringLiteral("25-03-b"));
    const auto before = orchard().fruits.size();
    press();
    EXPECT_TRUE(findings().contains(QStringLiteral("before the flowers were pollinated")))
        << findings().toStdString();
    EXPECT_TRUE(findings().contains(QStringLiteral("Correct one of the two days.")));
    EXPECT_TRUE(findings().contains(QStringLiteral("Harvested on")));
    EXPECT_FALSE(findings().contains('_')) << findings().toStdString();
    EXPECT_EQ(orchard().fruits.size(), before);
    EXPECT_FALSE(desk.can_undo());
}

TEST_F(RecordingAtATree, AWarningIsToldButDoesNotStopTheRecord) {
    const QSignalSpy warned(&desk, &RecordDesk::warned);
    open("LO-04-07");
    form.set_day(QDate(2026, 9, 1));
    press();
    ASSERT_EQ(warned.count(), 1);
    EXPECT_TRUE(
        warned.at(0).at(0).toString().contains(QStringLiteral("after the book's other bloom observations")));
    EXPECT_TRUE(desk.can_undo());
}

TEST_F(RecordingAtATree, ATableThatIsBeingEditedHereIsLeftAlone) {
    auto* remarks = add_layer("bloom_observation");
    open("LO-04-07");
    const auto before = orchard().bloom_observations.size();
    ASSERT_TRUE(remarks->startEditing());
    const QSignalSpy trouble(&desk, &RecordDesk::trouble);
    button()->click();
    ASSERT_EQ(trouble.count(), 1);
    EXPECT_TRUE(findings().contains(QStringLiteral("is being edited")));
    EXPECT_EQ(orchard().bloom_observations.size(), before);
    remarks->rollBack();
    press();
    EXPECT_EQ(orchard().bloom_observations.size(), before + 1);
}

TEST_F(RecordingAtATree, EditsOfAnotherTableDoNotStandInTheWay) {
    auto* trees = add_layer("tree");
    open("LO-04-07");
    ASSERT_TRUE(trees->startEditing());
    const auto before = orchard().bloom_observations.size();
    press();
    EXPECT_EQ(orchard().bloom_observations.size(), before + 1);
    trees->rollBack();
}

TEST_F(RecordingAtATree, EditsInOneOpenTransactionHoldTheWholeBook) {
    QgsProject::instance()->setAutoTransaction(true);
    auto* trees = add_layer("tree");
    ASSERT_TRUE(trees->startEditing());
    EXPECT_FALSE(held_by_edits(book, "bloom_observation").isEmpty());
    trees->rollBack();
    EXPECT_TRUE(held_by_edits(book, "bloom_observation").isEmpty());
    QgsProject::instance()->setAutoTransaction(false);
}

TEST_F(RecordingAtATree, ARowChangedSinceIsKeptAndTheOneBeforeCanStillBeTakenBack) {
    open("LO-04-07");
    choose("pipward_record_stage", 60);
    press();
    choose("pipward_record_stage", 61);
    press();
    auto* remarks = add_layer("bloom_observation");
    const auto last = orchard().bloom_observations.back().fid;
    ASSERT_TRUE(remarks->startEditing());
    remarks->changeAttributeValue(last, remarks->fields().lookupField(QStringLiteral("bbch")), 62);
    ASSERT_TRUE(remarks->commitChanges());
    const QSignalSpy trouble(&desk, &RecordDesk::trouble);
    desk.undo();
    ASSERT_TRUE(wait_for([&] { return trouble.count() == 1; }));
    EXPECT_TRUE(trouble.at(0).at(0).toString().contains(QStringLiteral("changed after")));
    const QSignalSpy back(&desk, &RecordDesk::taken_back);
    desk.undo();
    ASSERT_TRUE(wait_for([&] { return back.count() == 1; }));
    EXPECT_EQ(orchard().bloom_observations.back().bbch, Bbch{62});
}

TEST_F(RecordingAtATree, TheNearestTreeWithinReachIsFoundOnTheMap) {
    auto* trees = add_layer("tree");
    QgsMapCanvas canvas;
    canvas.resize(600, 400);
    canvas.setDestinationCrs(trees->crs());
    canvas.setLayers({trees});
    canvas.setExtent(trees->extent());
    QgsFeature first;
    trees->getFeatures().nextFeature(first);
    const auto at = first.geometry().asPoint();
    const auto found = nearest_tree(canvas, QgsPointXY(at.x() + 0.3, at.y()), 1.0);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->label, first.attribute(QStringLiteral("label")).toString());
    EXPECT_EQ(QFileInfo(found->book).canonicalFilePath(), QFileInfo(book).canonicalFilePath());
    EXPECT_FALSE(nearest_tree(canvas, QgsPointXY(at.x() + 5000, at.y()), 1.0));
    canvas.setLayers({});
    EXPECT_FALSE(nearest_tree(canvas, at, 1.0)) << "no tree is shown";
}

}  // namespace
}  // namespace pipward::desktop
