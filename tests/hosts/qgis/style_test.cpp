// SPDX-License-Identifier: GPL-2.0-or-later
// A styled book as the desktop itself reads it: styles by default, the stored map, and what the plugin adds.
#include <gtest/gtest.h>
#include <qgsattributeeditorcontainer.h>
#include <qgseditformconfig.h>
#include <qgslayertree.h>
#include <qgsproject.h>
#include <qgsprojecttimesettings.h>
#include <qgsrelationmanager.h>
#include <qgsrulebasedrenderer.h>
#include <qgsvectorlayer.h>
#include <qgsvectorlayertemporalproperties.h>

#include <QFile>
#include <QTemporaryDir>

#include "find/book_layer.h"
#include "paths.h"
#include "pipward/operation/book/style_book.h"
#include "pipward/operation/operation.h"
#include "pipward/style/project_style.h"
#include "style/after_plan.h"
#include "style/bloom_player.h"
#include "style/book_layers.h"
#include "style/book_opener.h"
#include "style/lasting_keeper.h"
#include "style/project_book.h"
#include "style/result_style.h"
#include "text.h"

namespace pipward::desktop {
namespace {

/// The sample with its plan, made once.
QString planned_book() {
    static const QTemporaryDir folder;
    static const QString book = [] {
        const QString path = folder.filePath(QStringLiteral("planned.gpkg"));
        QFile::copy(to_qt(testing::sample_book()), path);
        operation::find_operation("season-plan")
            ->run({{"book", path.toStdString()}, {"as-of", "2026-03-20"}}, {});
        return path;
    }();
    return book;
}

/// A planned book under a name that needs care, and a clean project.
struct StyleDesk {
    QTemporaryDir folder;
    QString book = folder.filePath(QStringLiteral("my orchard & more.gpkg"));

    StyleDesk() {
        QFile::copy(planned_book(), book);
        operation::style_book(book.toStdString());
    }
    ~StyleDesk() { QgsProject::instance()->clear(); }

    std::unique_ptr<QgsVectorLayer> layer(const char* table) const {
        return std::make_unique<QgsVectorLayer>(book + QStringLiteral("|layername=") + table,
                                                QString::fromLatin1(table), QStringLiteral("ogr"));
    }
};

bool is_timed(const QgsVectorLayer& layer) {
    return const_cast<QgsVectorLayer&>(layer).temporalProperties()->isActive();
}

QgsVectorLayer* added(std::unique_ptr<QgsVectorLayer> layer) {
    return qobject_cast<QgsVectorLayer*>(QgsProject::instance()->addMapLayer(layer.release()));
}

QString widget(const QgsVectorLayer& layer, const char* column) {
    return layer.editorWidgetSetup(layer.fields().lookupField(QString::fromLatin1(column))).type();
}

QgsVectorLayer* of_map(const char* table) {
    return qobject_cast<QgsVectorLayer*>(
        QgsProject::instance()->mapLayer(QString::fromStdString(style::layer_id(table))));
}

TEST(StyledLayer, OpensWithSymbolsAliasesValueListsAndRules) {
    const StyleDesk desk;
    const auto trees = desk.layer("tree");
    ASSERT_TRUE(trees->isValid());
    EXPECT_EQ(trees->renderer()->type(), QStringLiteral("RuleRenderer"));
    EXPECT_EQ(trees->renderer()->legendSymbolItems().size(), 5);
    EXPECT_TRUE(trees->labelsEnabled());
    EXPECT_EQ(trees->attributeAlias(trees->fields().lookupField(QStringLiteral("planted_on"))),
              QStringLiteral("Planted on"));
    EXPECT_EQ(widget(*trees, "purpose"), QStringLiteral("ValueMap"));
    EXPECT_EQ(widget(*trees, "planted_on"), QStringLiteral("DateTime"));
    EXPECT_EQ(widget(*trees, "fid"), QStringLiteral("Hidden"));
    const int label = trees->fields().lookupField(QStringLiteral("label"));
    EXPECT_FALSE(trees->constraintDescription(label).isEmpty());
    EXPECT_TRUE(trees->fieldConstraints(label) & QgsFieldConstraints::ConstraintUnique);
    EXPECT_FALSE(trees->mapTipTemplate().isEmpty());
}

TEST(StyledLayer, OpensWithoutGeometryToo) {
    const StyleDesk desk;
    const auto remarks = desk.layer("bloom_observation");
    EXPECT_EQ(remarks->attributeAlias(remarks->fields().lookupField(QStringLiteral("bbch"))),
              QStringLiteral("BBCH stage"));
    EXPECT_EQ(widget(*remarks, "bbch"), QStringLiteral("ValueMap"));
    const auto plan = desk.layer("cross_outlook");
    EXPECT_TRUE(plan->readOnly());
    EXPECT_EQ(plan->attributeAlias(plan->fields().lookupField(QStringLiteral("collect_to"))),
              QStringLiteral("Collect to"));
}

TEST(StyledLayer, ShowsEveryTreeThatBloomsInItsWeek) {
    const StyleDesk desk;
    const auto windows = desk.layer("bloom_window");
    auto* root = dynamic_cast<QgsRuleBasedRenderer*>(windows->renderer())->rootRule();
    long long shown = 0;
    for (auto* rule : root->children()) {
        EXPECT_TRUE(rule->label().startsWith(QStringLiteral("week of"))) << rule->label().toStdString();
        QgsFeature row;
        auto rows = windows->getFeatures(QgsFeatureRequest().setFilterExpression(rule->filterExpression()));
        while (rows.nextFeature(row)) {
            ++shown;
        }
    }
    EXPECT_EQ(shown, windows->featureCount());
}

TEST(LastingKeeper, PutsBackTheTimesThatADraggedLayerLoses) {
    const StyleDesk desk;
    EXPECT_FALSE(is_timed(*added(desk.layer("tree")))) << "the desktop keeps them itself by now";
    const LastingKeeper keeper;
    auto* trees = added(desk.layer("tree"));
    ASSERT_TRUE(is_timed(*trees));
    const auto* time = qobject_cast<QgsVectorLayerTemporalProperties*>(trees->temporalProperties());
    EXPECT_EQ(time->startField(), QStringLiteral("planted_on"));
    EXPECT_EQ(time->endField(), QStringLiteral("removed_on"));
    EXPECT_TRUE(is_timed(*added(desk.layer("bloom_window"))));
    EXPECT_FALSE(is_timed(*added(desk.layer("station"))));
}

TEST(LastingKeeper, LeavesALayerOfAProjectAsTheProjectSays) {
    const StyleDesk desk;
    const LastingKeeper keeper;
    const QString file = desk.folder.filePath(QStringLiteral("mine.qgs"));
    added(desk.layer("tree"))->temporalProperties()->setIsActive(false);
    ASSERT_TRUE(QgsProject::instance()->write(file));
    ASSERT_TRUE(QgsProject::instance()->read(file));
    EXPECT_FALSE(is_timed(*qobject_cast<QgsVectorLayer*>(QgsProject::instance()->mapLayers().first())));
}

TEST(StoredMap, OpensWithEveryLayerAndRelationWhole) {
    const StyleDesk desk;
    auto* project = QgsProject::instance();
    ASSERT_TRUE(project->read(stored_map_address(desk.book))) << project->error().toStdString();
    EXPECT_EQ(project->count(), static_cast<int>(book::look_at_book(desk.book.toStdString()).layers.size()));
    for (auto* layer : project->mapLayers()) {
        EXPECT_TRUE(layer->isValid()) << layer->name().toStdString();
    }
    const auto relations = project->relationManager()->relations();
    EXPECT_GT(relations.size(), 15);
    for (const auto& relation : relations) {
        EXPECT_TRUE(relation.isValid()) << relation.id().toStdString();
    }
    EXPECT_EQ(project->crs().authid(), QStringLiteral("EPSG:25832"));
    EXPECT_TRUE(is_timed(*of_map("tree")));
    EXPECT_TRUE(is_timed(*of_map("bloom_window")));
    EXPECT_EQ(project->timeSettings()->temporalRange().begin().date().year(), 2026);
}

TEST(StoredMap, HasItsGroupsInOrder) {
    const StyleDesk desk;
    ASSERT_TRUE(QgsProject::instance()->read(stored_map_address(desk.book)));
    QStringList groups;
    for (auto* node : QgsProject::instance()->layerTreeRoot()->children()) {
        groups << node->name();
    }
    EXPECT_EQ(groups, (QStringList{QStringLiteral("Today's work"), QStringLiteral("Bloom"),
                                   QStringLiteral("Trees"), QStringLiteral("Record tables")}));
}

TEST(StoredMap, PicksNamesFromTheOtherTableAndShowsTheRowsThatReferToOne) {
    const StyleDesk desk;
    ASSERT_TRUE(QgsProject::instance()->read(stored_map_address(desk.book)));
    EXPECT_EQ(widget(*of_map("tree"), "accession"), QStringLiteral("ValueRelation"));
    EXPECT_EQ(widget(*of_map("pollination"), "lot"), QStringLiteral("ValueRelation"));
    QStringList tabs;
    for (const auto* tab : of_map("tree")->editFormConfig().tabs()) {
        tabs << tab->name();
    }
    EXPECT_TRUE(tabs.contains(QStringLiteral("Bloom observations"))) << tabs.join(' ').toStdString();
    EXPECT_TRUE(tabs.contains(QStringLiteral("Pollinations")));
}

TEST(StoredMap, LeavesNoColumnWithoutWords) {
    const StyleDesk desk;
    ASSERT_TRUE(QgsProject::instance()->read(stored_map_address(desk.book)));
    for (auto* layer : QgsProject::instance()->mapLayers()) {
        const auto* vector = qobject_cast<QgsVectorLayer*>(layer);
        for (int field = 0; field < vector->fields().count(); ++field) {
            EXPECT_FALSE(vector->attributeAlias(field).isEmpty() ||
                         vector->attributeAlias(field).contains('_'))
                << layer->name().toStdString() << " " << vector->fields().at(field).name().toStdString();
        }
    }
}

TEST(StoredMap, BelongsToItsBookWhereverThatWasCopied) {
    const StyleDesk desk;
    const QString copy = desk.folder.filePath(QStringLiteral("next year.gpkg"));
    ASSERT_TRUE(QFile::copy(desk.book, copy));
    ASSERT_TRUE(QgsProject::instance()->read(stored_map_address(copy)));
    QgsProject::instance()->addMapLayer(desk.layer("station").release());
    point_stored_map_at_its_book();
    EXPECT_GT(layers_of_book(copy).size(), 20);
    EXPECT_EQ(layers_of_book(desk.book).size(), 1) << "the layer that the user has added";
    ASSERT_NE(of_map("tree"), nullptr);
    EXPECT_TRUE(of_map("tree")->isValid());
    EXPECT_EQ(book_of_project(), plain_book(copy));
    EXPECT_EQ(point_stored_map_at_its_book(), 0) << "nothing is left to be pointed";
}

TEST(StoredMap, ShowsASelectionOnWhite) {
    const StyleDesk desk;
    ASSERT_TRUE(QgsProject::instance()->read(stored_map_address(desk.book)));
    EXPECT_NE(QgsProject::instance()->selectionColor(), QColor(Qt::white));
}

TEST(StyledLayer, DrawsTheMostUrgentWorkLast) {
    const StyleDesk desk;
    for (const auto* table : {"field_task", "pollen_task"}) {
        const auto work = desk.layer(table);
        ASSERT_TRUE(work->renderer()->orderByEnabled()) << table;
        QgsFeatureRequest request;
        request.setOrderBy(work->renderer()->orderBy());
        const QStringList order{QStringLiteral("too late"), QStringLiteral("later"),
                                QStringLiteral("this week"), QStringLiteral("today")};
        qsizetype last = 0;
        QgsFeature task;
        for (auto tasks = work->getFeatures(request); tasks.nextFeature(task);) {
            const auto place = order.indexOf(task.attribute(QStringLiteral("urgency")).toString());
            EXPECT_GE(place, last) << table;
            last = place;
        }
        EXPECT_GT(last, 0) << table;
    }
}

TEST(ResultStyle, StylesATableInMemoryLikeTheOneInTheBook) {
    const StyleDesk desk;
    const auto table = *book::read_result(desk.book.toStdString(), "bloom_window");
    QgsVectorLayer memory(QStringLiteral("Point?crs=EPSG:25832&field=label:string&field=first_p50:date&"
                                         "field=full_p50:date&field=end_p50:date"),
                          QStringLiteral("windows"), QStringLiteral("memory"));
    ASSERT_TRUE(style_result(memory, table));
    EXPECT_EQ(memory.renderer()->type(), QStringLiteral("RuleRenderer"));
    EXPECT_TRUE(is_timed(memory));
    Table other = table;
    other.shape.name = "no_result";
    EXPECT_FALSE(style_result(memory, other));
}

TEST(ResultStyle, WaitsForAResultThatGoesOntoTheMap) {
    const StyleDesk desk;
    const auto table = *book::read_result(desk.book.toStdString(), "bloom_window");
    QgsProcessingContext context;
    style_on_arrival(context, QStringLiteral("elsewhere"), table);
    EXPECT_TRUE(context.layersToLoadOnCompletion().isEmpty());
    context.addLayerToLoadOnCompletion(QStringLiteral("here"),
                                       {QStringLiteral("Windows"), QgsProject::instance()});
    style_on_arrival(context, QStringLiteral("here"), table);
    auto* styler = context.layerToLoadOnCompletionDetails(QStringLiteral("here")).postProcessor();
    ASSERT_NE(styler, nullptr);
    auto memory = std::make_unique<QgsVectorLayer>(QStringLiteral("Point?field=full_p50:date"),
                                                   QStringLiteral("w"), QStringLiteral("memory"));
    styler->postProcessLayer(memory.get(), context, nullptr);
    EXPECT_EQ(memory->renderer()->type(), QStringLiteral("RuleRenderer"));
}

TEST(AfterPlan, TakesTheNewWeeksOnlyWhereTheyHaveMoved) {
    const StyleDesk desk;
    const auto windows = desk.layer("bloom_window");
    EXPECT_FALSE(renew_weeks(*windows));
    auto* root = dynamic_cast<QgsRuleBasedRenderer*>(windows->renderer())->rootRule();
    const auto weeks = root->children().size();
    root->removeChildAt(0);
    EXPECT_TRUE(renew_weeks(*windows));
    EXPECT_EQ(dynamic_cast<QgsRuleBasedRenderer*>(windows->renderer())->rootRule()->children().size(), weeks);
}

TEST(AfterPlan, LeavesLooksThatAreTheUsers) {
    const StyleDesk desk;
    const auto windows = desk.layer("bloom_window");
    windows->setRenderer(new QgsRuleBasedRenderer(new QgsRuleBasedRenderer::Rule(nullptr)));
    EXPECT_FALSE(renew_weeks(*windows));
}

TEST(BloomPlayer, SpansTheBloomOfTheLayersOnTheMap) {
    const StyleDesk desk;
    EXPECT_TRUE(bloom_time_of_project().isInfinite());
    ASSERT_TRUE(QgsProject::instance()->read(stored_map_address(desk.book)));
    const auto time = bloom_time_of_project();
    EXPECT_EQ(time.begin(), QgsProject::instance()->timeSettings()->temporalRange().begin());
    EXPECT_GT(time.begin().daysTo(time.end()), 20);
}

TEST(BookLayers, AreFoundHoweverTheBooksPathIsSpelt) {
    const StyleDesk desk;
    auto* trees = added(desk.layer("tree"));
    EXPECT_EQ(book_table_of(*trees), QStringLiteral("tree"));
    EXPECT_EQ(layers_of_book(desk.folder.path() + QStringLiteral("/./my orchard & more.gpkg")),
              QList<QgsVectorLayer*>{trees});
    EXPECT_TRUE(layers_of_book(QStringLiteral("elsewhere.gpkg")).isEmpty());
}

}  // namespace
}  // namespace pipward::desktop
