// SPDX-License-Identifier: GPL-2.0-or-later
// The season panel and its parts, without a desktop around them.
#include <gtest/gtest.h>
#include <qgsapplication.h>
#include <qgstaskmanager.h>
#include <sqlite3.h>

#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QPicture>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeWidget>

#include "panel/bloom_chart.h"
#include "panel/chart_painter.h"
#include "panel/season_panel.h"
#include "panel/task_tree.h"
#include "paths.h"
#include "text.h"

namespace pipward::desktop {
namespace {

BloomBar bar(const char* name, int day, bool wanted) {
    const QDate middle = QDate(2026, 4, 1).addDays(day);
    return {QString::fromUtf8(name),
            middle.addDays(-7),
            middle.addDays(-3),
            middle,
            middle.addDays(4),
            middle.addDays(9),
            wanted,
            {QStringLiteral("T-%1").arg(day)},
            {}};
}

std::unique_ptr<BloomChart> chart_of_three() {
    auto chart = std::make_unique<BloomChart>();
    chart->resize(500, 200);
    chart->show_bars({bar("First", 10, true), bar("Second", 14, true), bar("Third", 20, false)},
                     QDate(2026, 3, 28));
    return chart;
}

operation::Outcome sample_plan(const QString& book) {
    return operation::find_operation("season-plan")
        ->run({{"book", book.toStdString()}, {"as-of", "2026-03-20"}, {"keep", "no"}}, {});
}

const Table& table(const operation::Outcome& outcome, const std::string& name) {
    return *std::ranges::find_if(outcome.tables, [&](const Table& t) { return t.shape.name == name; });
}

struct PanelBook {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("book.gpkg"));

    PanelBook() { QFile::copy(to_qt(testing::sample_book()), path); }
};

TEST(BloomBars, PutParentsOfWantedCrossesFirstThenGoByMedianFullBloom) {
    const PanelBook book;
    const auto plan = sample_plan(book.path);
    const auto bars = bloom_bars(table(plan, "bloom_window"), table(plan, "cross_outlook"));
    ASSERT_GT(bars.size(), 14U);
    EXPECT_TRUE(bars.front().wanted);
    for (std::size_t i = 1; i < bars.size(); ++i) {
        EXPECT_GE(bars[i - 1].wanted, bars[i].wanted);
        if (bars[i - 1].wanted == bars[i].wanted) {
            EXPECT_LE(bars[i - 1].full_p50, bars[i].full_p50);
        }
        EXPECT_LE(bars[i].full_p10, bars[i].full_p50);
        EXPECT_LE(bars[i].full_p50, bars[i].full_p90);
    }
}

TEST(BloomChart, PutsLaterDaysFartherRightAndInsideItself) {
    const auto chart = chart_of_three();
    for (QDate day(2026, 3, 28); day < QDate(2026, 4, 25); day = day.addDays(1)) {
        EXPECT_LT(chart->place_of(day), chart->place_of(day.addDays(1)));
        EXPECT_GE(chart->place_of(day), 0);
        EXPECT_LE(chart->place_of(day), chart->width());
    }
}

TEST(BloomChart, OpensTheBarThatIsClickedOrChosenByKey) {
    const auto chart = chart_of_three();
    const QSignalSpy opened(chart.get(), &BloomChart::bar_opened);
    int middle_of_second = 0;
    while (chart->bar_at({200, middle_of_second}) != std::optional<std::size_t>(1)) {
        ASSERT_LT(++middle_of_second, chart->height());
    }
    QTest::mouseClick(chart.get(), Qt::LeftButton, Qt::NoModifier, {200, middle_of_second + 2});
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.at(0).at(0).toString(), QStringLiteral("Second"));
    QTest::keyClick(chart.get(), Qt::Key_Down);
    QTest::keyClick(chart.get(), Qt::Key_Down);
    QTest::keyClick(chart.get(), Qt::Key_Return);
    ASSERT_EQ(opened.count(), 2);
    EXPECT_EQ(opened.at(1).at(1).toStringList(), QStringList{QStringLiteral("T-20")});
    EXPECT_FALSE(chart->accessibleDescription().isEmpty());
}

TEST(BloomChart, IsDrawnOnLightAndOnDark) {
    const auto chart = chart_of_three();
    const auto drawn_on = [&](const QColor& ground, const QColor& ink) {
        QPalette palette = chart->palette();
        palette.setColor(QPalette::Base, ground);
        palette.setColor(QPalette::Text, ink);
        chart->setPalette(palette);
        return chart->grab().toImage();
    };
    const QImage light = drawn_on(Qt::white, Qt::black);
    const QImage dark = drawn_on(QColor(30, 30, 30), Qt::white);
    EXPECT_NE(light, dark);
    int inked = 0;
    for (int x = 0; x < dark.width(); ++x) {
        for (int y = 0; y < dark.height(); ++y) {
            inked += dark.pixelColor(x, y) != QColor(30, 30, 30) ? 1 : 0;
        }
    }
    EXPECT_GT(inked, 1000);
}

TEST(BloomChart, WritesWhatCanBeReadWhateverTheTheme) {
    QPalette palette;
    palette.setColor(QPalette::Base, QColor(34, 34, 34));
    palette.setColor(QPalette::Text, Qt::black);
    EXPECT_EQ(readable_text(palette), QColor(Qt::white));
    palette.setColor(QPalette::Text, QColor(220, 220, 220));
    EXPECT_EQ(readable_text(palette), QColor(220, 220, 220));
    palette.setColor(QPalette::Base, Qt::white);
    palette.setColor(QPalette::Text, QColor(230, 230, 230));
    EXPECT_EQ(readable_text(palette), QColor(Qt::black));
}

TEST(BloomChart, ShowsABorrowedWindowOtherwiseThanOneOfItsOwnObservations) {
    const auto drawn = [](bool borrowed) {
        BloomChart chart;
        chart.resize(500, 200);
        auto only = bar("Only", 10, true);
        only.borrowed = borrowed;
        chart.show_bars({only}, QDate(2026, 3, 28));
        return chart.grab().toImage();
    };
    EXPECT_NE(drawn(true), drawn(false));
    EXPECT_EQ(drawn(true), drawn(true));
}

TEST(BloomChart, PaintsOnlyTheBarsInView) {
    const auto painted = [](int accessions) {
        BloomChart chart;
        std::vector<BloomBar> bars;
        for (int i = 0; i < accessions; ++i) {
            bars.push_back(bar("Some name", i % 40, false));
        }
        chart.show_bars(std::move(bars), QDate(2026, 3, 28));
        chart.resize(500, chart.minimumSizeHint().height());
        QPicture strokes;
        chart.render(&strokes, {}, QRegion(0, 0, 500, 300));
        return strokes.size();
    };
    EXPECT_GT(painted(50), painted(5));
    EXPECT_LT(painted(5000), 1.2 * painted(50));
}

TEST(BloomChart, MarksTheDayThatTheMapShows) {
    const auto chart = chart_of_three();
    const auto without = chart->grab().toImage();
    chart->mark_day(QDate(2026, 4, 14));
    EXPECT_NE(chart->grab().toImage(), without);
    chart->mark_day({});
    EXPECT_EQ(chart->grab().toImage(), without);
}

TEST(TaskTree, GroupsTheWorkAndTellsWhichTreeIsMeant) {
    const PanelBook book;
    TaskTree tasks;
    tasks.show_tasks(sample_plan(book.path));
    ASSERT_GT(tasks.topLevelItemCount(), 0);
    auto* group = tasks.topLevelItem(0);
    ASSERT_GT(group->childCount(), 0);
    const QSignalSpy opened(&tasks, &TaskTree::tree_opened);
    emit tasks.itemActivated(group->child(0), 0);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.at(0).at(0).toString(), group->child(0)->data(0, Qt::UserRole).toString());
    EXPECT_TRUE(group->child(0)->text(0).endsWith(opened.at(0).at(0).toString()));
    EXPECT_FALSE(group->child(0)->text(0).contains('_'));
}

TEST(SeasonPanel, PlansInTheBackgroundAndShowsWhatCameOut) {
    const PanelBook book;
    SeasonPanel panel;
    panel.set_book(book.path);
    panel.set_as_of(QDate(2026, 3, 20));
    const QSignalSpy planned(&panel, &SeasonPanel::planned);
    QElapsedTimer clock;
    clock.start();
    panel.refresh();
    EXPECT_EQ(planned.count(), 0) << "refresh() must not wait";
    while (planned.count() == 0 && clock.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    ASSERT_EQ(planned.count(), 1);
    EXPECT_GT(panel.findChild<BloomChart*>()->bars().size(), 14U);
    EXPECT_GT(panel.findChild<QTreeWidget*>(QStringLiteral("pipward_crosses"))->topLevelItemCount(), 10);
}

bool shows_bars(const SeasonPanel& panel, bool any) {
    QElapsedTimer clock;
    clock.start();
    const auto* chart = panel.findChild<BloomChart*>();
    while (chart->bars().empty() == any && clock.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    return !chart->bars().empty();
}

TEST(SeasonPanel, ShowsThePlanThatStandsInTheBookAndNoOther) {
    const PanelBook book;
    operation::find_operation("season-plan")
        ->run({{"book", book.path.toStdString()}, {"as-of", "2026-03-20"}}, {});
    SeasonPanel panel;
    panel.set_book(book.path);
    ASSERT_TRUE(shows_bars(panel, true));
    EXPECT_GT(panel.findChild<QTreeWidget*>(QStringLiteral("pipward_crosses"))->topLevelItemCount(), 10);
    EXPECT_GT(panel.findChild<TaskTree*>()->topLevelItemCount(), 0);
    panel.set_book(book.folder.filePath(QStringLiteral("nowhere.gpkg")));
    EXPECT_TRUE(panel.findChild<BloomChart*>()->bars().empty()) << "the bars of the book before";
    EXPECT_EQ(panel.findChild<QTreeWidget*>(QStringLiteral("pipward_crosses"))->topLevelItemCount(), 0);
}

/// What the panel says of a book that it cannot plan with; empty where it planned.
QString trouble_with(const QString& book) {
    SeasonPanel panel;
    panel.set_book(book);
    panel.set_as_of(QDate(2026, 3, 20));
    const QSignalSpy trouble(&panel, &SeasonPanel::trouble);
    const QSignalSpy planned(&panel, &SeasonPanel::planned);
    QElapsedTimer clock;
    clock.start();
    panel.refresh();
    while (trouble.count() + planned.count() == 0 && clock.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    EXPECT_EQ(trouble.count() + planned.count(), 1);
    return trouble.count() == 0 ? QString() : trouble.at(0).at(0).toString();
}

void write_file(const QString& path, const QByteArray& content) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(content);
}

TEST(SeasonPanel, LetsABookBeLookedAtThatMayNotBeWritten) {
    const PanelBook book;
    QFile file(book.path);
    ASSERT_TRUE(file.setPermissions(QFileDevice::ReadOwner));
    if (QFileInfo(book.path).isWritable()) {
        GTEST_SKIP() << "this user may write whatever the permissions say";
    }
    const QString said = trouble_with(book.path);
    EXPECT_TRUE(said.contains(QStringLiteral("may not be written"))) << said.toStdString();
}

TEST(SeasonPanel, TellsWhatIsWrongWithABookThatIsNotThere) {
    EXPECT_TRUE(
        trouble_with(QStringLiteral("nowhere.gpkg")).contains(QStringLiteral("There is no such file")));
}

TEST(SeasonPanel, TellsWhatIsWrongWithAFileThatIsNoBook) {
    const PanelBook book;
    const QString text = book.folder.filePath(QStringLiteral("letter.gpkg"));
    write_file(text, "Dear breeder,");
    const QString empty = book.folder.filePath(QStringLiteral("empty.gpkg"));
    write_file(empty, {});
    for (const auto& path : {text, empty, book.folder.path()}) {
        const QString said = trouble_with(path);
        EXPECT_FALSE(said.isEmpty()) << path.toStdString();
        EXPECT_TRUE(said.contains(QFileInfo(path).fileName())) << said.toStdString();
    }
}

TEST(SeasonPanel, TellsThatSomebodyElseIsWritingTheBook) {
    const PanelBook book;
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(book.path.toUtf8().constData(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "BEGIN EXCLUSIVE", nullptr, nullptr, nullptr), SQLITE_OK);
    const QString said = trouble_with(book.path);
    sqlite3_exec(other, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(other);
    EXPECT_TRUE(said.contains(QStringLiteral("Another program is writing this book"))) << said.toStdString();
    EXPECT_TRUE(trouble_with(book.path).isEmpty()) << "after the lock is gone";
}

TEST(SeasonPanel, PlansAgainWithABookThatWasMoved) {
    const PanelBook book;
    EXPECT_TRUE(trouble_with(book.path).isEmpty());
    const QString elsewhere = book.folder.filePath(QStringLiteral("elsewhere.gpkg"));
    ASSERT_TRUE(QFile::rename(book.path, elsewhere));
    EXPECT_TRUE(trouble_with(book.path).contains(QStringLiteral("There is no such file")));
    EXPECT_TRUE(trouble_with(elsewhere).isEmpty());
}

TEST(SeasonPanel, MayBeClosedWhileItPlans) {
    const PanelBook book;
    auto panel = std::make_unique<SeasonPanel>();
    panel->set_book(book.path);
    panel->set_as_of(QDate(2026, 3, 20));
    panel->refresh();
    panel.reset();
    QElapsedTimer clock;
    clock.start();
    while (QgsApplication::taskManager()->countActiveTasks() > 0 && clock.elapsed() < 30000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 50);
    }
    EXPECT_EQ(QgsApplication::taskManager()->countActiveTasks(), 0);
}

}  // namespace
}  // namespace pipward::desktop
