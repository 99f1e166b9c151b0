// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/book_layer.h"

#include <qgsproviderregistry.h>
#include <qgsvectorlayer.h>

#include <QFileInfo>
#include <algorithm>
#include <array>

namespace pipward::desktop {

QString book_of_trees(const QgsMapLayer* layer) {
    const auto* vector = qobject_cast<const QgsVectorLayer*>(layer);
    if (vector == nullptr || vector->providerType() != QStringLiteral("ogr")) {
        return {};
    }
    const auto source = QgsProviderRegistry::instance()->decodeUri(vector->providerType(), vector->source());
    const bool named = source.value(QStringLiteral("layerName")).toString() == QStringLiteral("tree");
    static constexpr std::array columns{"label", "accession", "purpose"};
    const bool has_columns = std::ranges::all_of(columns, [&](const char* column) {
        return vector->fields().lookupField(QLatin1String(column)) >= 0;
    });
    return named && has_columns ? plain_book(source.value(QStringLiteral("path")).toString()) : QString();
}

QString plain_book(const QString& book) {
    const QString path = QFileInfo(book).canonicalFilePath();
    return path.isEmpty() ? book : path;
}

}  // namespace pipward::desktop
