// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/project_book.h"

#include <qgsproject.h>
#include <qgsproviderregistry.h>
#include <qgsvectorlayer.h>

#include <QFileInfo>
#include <QUrl>

#include "find/book_layer.h"
#include "pipward/style/project_style.h"
#include "text.h"

namespace pipward::desktop {
namespace {

/// Empty for a project that is a file of its own.
QString book_that_stores_the_project() {
    const QUrl address(QgsProject::instance()->fileName());
    return address.scheme() == QStringLiteral("geopackage") ? plain_book(address.path()) : QString();
}

bool looks_elsewhere(const QVariantMap& source, const QString& book) {
    const QString path = source.value(QStringLiteral("path")).toString();
    return !path.isEmpty() && plain_book(path) != book;
}

/// Layers that the user has added to the map keep their source.
bool is_of_the_stored_map(const QgsMapLayer& layer, const QString& table) {
    return layer.id() == to_qt(style::layer_id(from_qt(table)));
}

bool point_at(QgsVectorLayer& layer, const QString& book) {
    auto* registry = QgsProviderRegistry::instance();
    auto source = registry->decodeUri(layer.providerType(), layer.source());
    if (!is_of_the_stored_map(layer, source.value(QStringLiteral("layerName")).toString()) ||
        !looks_elsewhere(source, book)) {
        return false;
    }
    source[QStringLiteral("path")] = book;
    layer.setDataSource(registry->encodeUri(layer.providerType(), source), layer.name(), layer.providerType(),
                        QgsDataProvider::ProviderOptions());
    return true;
}

}  // namespace

QString book_of_project() {
    const QString storing = book_that_stores_the_project();
    QString first;
    for (auto* layer : QgsProject::instance()->mapLayers()) {
        const QString book = book_of_trees(layer);
        if (!book.isEmpty() && book == storing) {
            return book;
        }
        first = first.isEmpty() ? book : first;
    }
    return first;
}

int point_stored_map_at_its_book() {
    const QString book = book_that_stores_the_project();
    int pointed = 0;
    if (book.isEmpty()) {
        return pointed;
    }
    for (auto* layer : QgsProject::instance()->mapLayers()) {
        if (auto* vector = qobject_cast<QgsVectorLayer*>(layer)) {
            pointed += point_at(*vector, book) ? 1 : 0;
        }
    }
    return pointed;
}

}  // namespace pipward::desktop
