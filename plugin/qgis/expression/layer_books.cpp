// SPDX-License-Identifier: GPL-2.0-or-later
#include "expression/layer_books.h"

#include <qgsproject.h>
#include <qgsvectorlayer.h>

namespace pipward::desktop {

LayerBooks::LayerBooks() {
    auto* project = QgsProject::instance();
    connect(project, &QgsProject::layersAdded, this, &LayerBooks::add);
    connect(project, qOverload<const QString&>(&QgsProject::layerRemoved), this, [this](const QString& id) {
        const std::scoped_lock hold(lock_);
        books_.remove(id);
    });
    add(project->mapLayers().values());
}

QString LayerBooks::book_of(const QString& layer_id) const {
    const std::scoped_lock hold(lock_);
    return books_.value(layer_id);
}

void LayerBooks::add(const QList<QgsMapLayer*>& layers) {
    const std::scoped_lock hold(lock_);
    for (const auto* layer : layers) {
        const QString file = layer->source().section('|', 0, 0);
        if (file.endsWith(QStringLiteral(".gpkg"), Qt::CaseInsensitive)) {
            books_.insert(layer->id(), file);
        }
    }
}

}  // namespace pipward::desktop
