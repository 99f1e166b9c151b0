// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/lasting_keeper.h"

#include <qgsproject.h>
#include <qgsreadwritecontext.h>
#include <qgsvectorlayer.h>
#include <qgsvectorlayertemporalproperties.h>

#include "pipward/operation/book/style_book.h"
#include "style/book_layers.h"
#include "text.h"

namespace pipward::desktop {
namespace {

bool may_last(const QgsVectorLayer& layer) {
    const auto map_style = operation::find_style(from_qt(book_table_of(layer)), std::nullopt);
    return map_style && map_style->lasting;
}

}  // namespace

LastingKeeper::LastingKeeper() {
    const auto* project = QgsProject::instance();
    connect(project, &QgsProject::readMapLayer, this,
            [this](const QgsMapLayer* layer, const QDomElement&) { read_with_project_.insert(layer->id()); });
    connect(project, &QgsProject::cleared, this, [this] { read_with_project_.clear(); });
    connect(project, &QgsProject::layersAdded, this, &LastingKeeper::look_at);
}

void LastingKeeper::look_at(const QList<QgsMapLayer*>& layers) {
    for (auto* layer : layers) {
        auto* vector = qobject_cast<QgsVectorLayer*>(layer);
        if (vector != nullptr && !read_with_project_.contains(layer->id()) && may_last(*vector)) {
            restore_lasting(*vector);
        }
    }
}

bool restore_lasting(QgsVectorLayer& layer) {
    auto* time = qobject_cast<QgsVectorLayerTemporalProperties*>(layer.temporalProperties());
    if (time == nullptr || time->isActive()) {
        return false;
    }
    const auto style = stored_style(layer);
    return !style.isNull() && time->readXml(style.documentElement(), QgsReadWriteContext()) &&
           time->isActive();
}

}  // namespace pipward::desktop
