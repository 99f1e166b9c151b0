// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/tree_tool.h"

#include <qgsapplication.h>
#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsmapcanvas.h>
#include <qgsmapmouseevent.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>
#include <qgsvertexmarker.h>

#include <algorithm>

#include "current_book.h"
#include "find/book_layer.h"
#include "record/open_layers.h"

namespace pipward::desktop {
namespace {

constexpr double reach_mm = 4;  // a fingertip's aim
constexpr double mm_per_inch = 25.4;
constexpr int mark_size = 22;

std::vector<QgsVectorLayer*> shown_trees(const QgsMapCanvas& canvas) {
    std::vector<QgsVectorLayer*> layers;
    for (auto* layer : canvas.layers()) {
        if (auto* trees = tree_layer(layer)) {
            layers.push_back(trees);
        }
    }
    return layers;
}

// Where trees of two books lie on each other, those of the book at work are meant, whichever lies above.
std::vector<QgsVectorLayer*> meant_trees(const QgsMapCanvas& canvas) {
    auto layers = shown_trees(canvas);
    const QString book = plain_book(current_book());
    const auto others = std::ranges::stable_partition(layers, [&](const QgsVectorLayer* layer) {
        return !book.isEmpty() && plain_book(book_layer(*layer).book) == book;
    });
    if (others.begin() != layers.begin()) {
        layers.erase(others.begin(), layers.end());
    }
    return layers;
}

struct Nearest {
    double distance;
    FoundTree tree;
};

void look_into(QgsVectorLayer& layer, const QgsMapCanvas& canvas, const QgsPointXY& place, double reach,
               std::optional<Nearest>& nearest) {
    const QgsCoordinateTransform to_map(layer.crs(), canvas.mapSettings().destinationCrs(),
                                        QgsProject::instance());
    const QgsRectangle around(place.x() - reach, place.y() - reach, place.x() + reach, place.y() + reach);
    QgsFeatureRequest request(to_map.transformBoundingBox(around, Qgis::TransformDirection::Reverse));
    QgsFeature tree;
    for (auto trees = layer.getFeatures(request); trees.nextFeature(tree);) {
        const QString label = tree.attribute(QStringLiteral("label")).toString();
        if (label.isEmpty() || !tree.hasGeometry()) {
            continue;
        }
        const QgsPointXY at = to_map.transform(tree.geometry().asPoint());
        const double distance = at.distance(place);
        if (distance <= reach && (!nearest || distance < nearest->distance)) {
            nearest = Nearest{distance, {book_layer(layer).book, label, at}};
        }
    }
}

std::unique_ptr<QgsVertexMarker> make_mark(QgsMapCanvas* canvas, int width) {
    auto mark = std::make_unique<QgsVertexMarker>(canvas);
    mark->setIconType(QgsVertexMarker::ICON_CIRCLE);
    mark->setIconSize(mark_size);
    mark->setPenWidth(width);
    mark->setColor(QColor(200, 60, 20));
    mark->hide();
    return mark;
}

}  // namespace

std::optional<FoundTree> nearest_tree(const QgsMapCanvas& canvas, const QgsPointXY& place, double reach) {
    std::optional<Nearest> nearest;
    for (auto* layer : meant_trees(canvas)) {
        try {
            look_into(*layer, canvas, place, reach, nearest);
        } catch (const QgsCsException&) {
            continue;  // outside what the layer's coordinate system knows: no tree can be there
        }
    }
    return nearest ? std::optional{nearest->tree} : std::nullopt;
}

TreeTool::TreeTool(QgsMapCanvas* canvas)
    : QgsMapTool(canvas), mark_(make_mark(canvas, 3)), hint_(make_mark(canvas, 1)) {
    setCursor(Qt::CrossCursor);
}

TreeTool::~TreeTool() = default;

double TreeTool::reach() const {
    return reach_mm / mm_per_inch * canvas()->logicalDpiX() * canvas()->mapUnitsPerPixel();
}

void TreeTool::canvasMoveEvent(QgsMapMouseEvent* event) {
    const auto tree = nearest_tree(*canvas(), toMapCoordinates(event->pos()), reach());
    hint_->setVisible(tree.has_value());
    if (tree) {
        hint_->setCenter(tree->at);
    }
}

void TreeTool::canvasReleaseEvent(QgsMapMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        return;
    }
    if (shown_trees(*canvas()).empty()) {
        emit nothing_there(
            tr("The map shows no trees of an orchard book. Add the layer “tree” of your book."));
    } else if (const auto tree = nearest_tree(*canvas(), toMapCoordinates(event->pos()), reach())) {
        mark(tree->at);
        emit tree_clicked(tree->book, tree->label);
    } else {
        emit nothing_there(tr("There is no tree here. Click nearer to one, or zoom in."));
    }
}

void TreeTool::mark(const QgsPointXY& at) {
    mark_->setCenter(at);
    mark_->show();
}

void TreeTool::deactivate() {
    mark_->hide();
    hint_->hide();
    QgsMapTool::deactivate();
}

}  // namespace pipward::desktop
