// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/open_layers.h"

#include <qgsproject.h>
#include <qgsproviderregistry.h>
#include <qgsvectordataprovider.h>
#include <qgsvectorlayer.h>

#include "find/book_layer.h"
#include "record/record_desk.h"
#include "text.h"

namespace pipward::desktop {
namespace {

/// Edits that are kept in one open transaction hold the whole book.
bool holds_the_book(const QgsVectorLayer& layer) {
    return layer.isEditable() && layer.dataProvider()->transaction() != nullptr;
}

}  // namespace

BookLayer book_layer(const QgsMapLayer& layer) {
    const auto parts = QgsProviderRegistry::instance()->decodeUri(layer.providerType(), layer.publicSource());
    return {parts.value(QStringLiteral("path")).toString(),
            parts.value(QStringLiteral("layerName")).toString()};
}

QgsVectorLayer* tree_layer(QgsMapLayer* layer) {
    auto* vector = qobject_cast<QgsVectorLayer*>(layer);
    const bool shows_trees = vector != nullptr && vector->isSpatial() &&
                             book_layer(*vector).table == QStringLiteral("tree") &&
                             vector->fields().lookupField(QStringLiteral("label")) >= 0;
    return shows_trees ? vector : nullptr;
}

QString held_by_edits(const QString& book, const std::string& table) {
    for (auto* layer : QgsProject::instance()->mapLayers()) {
        const auto* vector = qobject_cast<const QgsVectorLayer*>(layer);
        if (vector == nullptr || !vector->isEditable() ||
            plain_book(book_layer(*vector).book) != plain_book(book)) {
            continue;
        }
        if (book_layer(*vector).table == to_qt(table) || holds_the_book(*vector)) {
            return RecordDesk::tr(
                       "Nothing was written: the layer “%1” is being edited. Save or cancel its edits, then "
                       "record again.")
                .arg(vector->name());
        }
    }
    return {};
}

}  // namespace pipward::desktop
