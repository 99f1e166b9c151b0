// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/season_dock.h"

#include <qgisinterface.h>
#include <qgscoordinatetransform.h>
#include <qgsdockwidget.h>
#include <qgsfeatureiterator.h>
#include <qgsfeaturerequest.h>
#include <qgsgeometry.h>
#include <qgsmapcanvas.h>
#include <qgsmessagebar.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>

#include <QMainWindow>
#include <ranges>

#include "style/after_plan.h"
#include "style/bloom_player.h"
#include "style/book_layers.h"

namespace pipward::desktop {
namespace {

// Around the trees, so that rows and neighbours can be seen.
constexpr double room_around = 1.4;
constexpr double least_span_metres = 25;
// More would be one blot, and long to draw.
constexpr int most_flashes = 500;
constexpr int most_selected = 100;
// Work and days of a task fit beside each other.
constexpr int usual_width = 440;
constexpr int least_width = 360;

QgsRectangle around(const std::vector<TreePlace>& trees) {
    QgsRectangle extent(trees.front().x, trees.front().y, trees.front().x, trees.front().y);
    for (const auto& tree : trees) {
        extent.combineExtentWith(tree.x, tree.y);
    }
    return extent;
}

/// By the layer's spatial index: a look through all labels would take long in a large orchard.
QgsFeatureIds trees_at(const QgsVectorLayer& layer, const TreePlace& tree) {
    constexpr double around_it = 1e-6;
    QgsFeatureRequest request(QgsRectangle::fromCenterAndSize({tree.x, tree.y}, around_it, around_it));
    request.setSubsetOfAttributes(QStringList{QStringLiteral("label")}, layer.fields());
    QgsFeatureIds found;
    QgsFeature feature;
    auto features = layer.getFeatures(request);
    while (features.nextFeature(feature)) {
        if (feature.attribute(QStringLiteral("label")).toString() == tree.label) {
            found.insert(feature.id());
        }
    }
    return found;
}

}  // namespace

void show_trees(QgisInterface& desktop, const std::vector<TreePlace>& trees, const QString& crs) {
    auto* canvas = desktop.mapCanvas();
    const QgsCoordinateReferenceSystem of_trees(crs);
    const QgsCoordinateTransform to_map(of_trees, canvas->mapSettings().destinationCrs(),
                                        QgsProject::instance());
    QgsRectangle extent = to_map.transformBoundingBox(around(trees));
    extent.scale(room_around);
    if (!of_trees.isGeographic() && extent.width() < least_span_metres) {
        extent = QgsRectangle::fromCenterAndSize(extent.center(), least_span_metres, least_span_metres);
    }
    canvas->setExtent(extent);
    canvas->refresh();
    QList<QgsGeometry> points;
    for (const auto& tree : trees | std::views::take(most_flashes)) {
        points << QgsGeometry::fromPointXY({tree.x, tree.y});
    }
    canvas->flashGeometries(points, of_trees);
}

void select_trees(const QString& book, const std::vector<TreePlace>& trees) {
    for (auto* layer : layers_of_book(book)) {
        if (book_table_of(*layer) != QStringLiteral("tree")) {
            continue;
        }
        QgsFeatureIds found;
        for (const auto& tree : trees | std::views::take(most_selected)) {
            found.unite(trees_at(*layer, tree));
        }
        layer->selectByIds(found);
    }
}

void reload_layers_of(const QString& book) {
    for (auto* layer : layers_of_book(book)) {
        if (!layer->isEditable()) {
            layer->reload();
            layer->triggerRepaint();
        }
    }
}

void say_what_is_not_saved(QgisInterface& desktop, const QString& book) {
    QStringList layers;
    for (const auto* layer : layers_of_book(book)) {
        if (layer->isModified()) {
            layers << layer->name();
        }
    }
    if (!layers.isEmpty()) {
        desktop.messageBar()->pushMessage(
            SeasonPanel::tr("Season"),
            SeasonPanel::tr("Unsaved edits are not in this plan (%1). Save them and plan again.")
                .arg(layers.join(QStringLiteral(", "))),
            Qgis::MessageLevel::Info);
    }
}

QgsDockWidget* add_season_dock(QgisInterface& desktop) {
    auto* dock = new QgsDockWidget(SeasonPanel::tr("Season"), desktop.mainWindow());
    dock->setObjectName(QStringLiteral("pipward_season_dock"));
    auto* panel = new SeasonPanel(dock);
    panel->setMinimumWidth(least_width);
    dock->setWidget(panel);
    QObject::connect(panel, &SeasonPanel::trees_asked_for, dock,
                     [&desktop, panel](const std::vector<TreePlace>& trees, const QString& crs) {
                         show_trees(desktop, trees, crs);
                         select_trees(panel->book(), trees);
                     });
    QObject::connect(panel, &SeasonPanel::trouble, dock, [&desktop](const QString& what) {
        desktop.messageBar()->pushMessage(SeasonPanel::tr("Season"), what, Qgis::MessageLevel::Warning);
    });
    QObject::connect(panel, &SeasonPanel::planned, dock, [&desktop](const QString& book) {
        reload_layers_of(book);
        say_what_is_not_saved(desktop, book);
        after_plan(desktop, book);
    });
    auto* player = new BloomPlayer(desktop, dock);
    QObject::connect(panel, &SeasonPanel::bloom_asked_for, player,
                     [player] { player->is_playing() ? player->stop() : player->start(); });
    QObject::connect(player, &BloomPlayer::playing_changed, panel, &SeasonPanel::set_playing);
    QObject::connect(player, &BloomPlayer::day_shown, panel, &SeasonPanel::mark_day);
    desktop.addDockWidget(Qt::RightDockWidgetArea, dock);
    if (auto* window = qobject_cast<QMainWindow*>(desktop.mainWindow()); window != nullptr) {
        window->resizeDocks({dock}, {usual_width}, Qt::Horizontal);
    }
    return dock;
}

}  // namespace pipward::desktop
