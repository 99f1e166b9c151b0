// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/book_layers.h"

#include <qgsproject.h>
#include <qgsproviderregistry.h>
#include <qgsvectorlayer.h>

#include <QFileInfo>

namespace pipward::desktop {
namespace {

QVariantMap parts_of(const QgsVectorLayer& layer) {
    return QgsProviderRegistry::instance()->decodeUri(layer.providerType(), layer.source());
}

QString path_of(const QgsVectorLayer& layer) {
    return parts_of(layer).value(QStringLiteral("path")).toString();
}

}  // namespace

QString book_table_of(const QgsVectorLayer& layer) {
    return path_of(layer).endsWith(QStringLiteral(".gpkg"), Qt::CaseInsensitive)
               ? parts_of(layer).value(QStringLiteral("layerName")).toString()
               : QString();
}

QList<QgsVectorLayer*> layers_of_book(const QString& book) {
    const QString file = QFileInfo(book).canonicalFilePath();
    QList<QgsVectorLayer*> found;
    for (auto* layer : QgsProject::instance()->mapLayers()) {
        auto* vector = qobject_cast<QgsVectorLayer*>(layer);
        if (vector != nullptr && QFileInfo(path_of(*vector)).canonicalFilePath() == file) {
            found << vector;
        }
    }
    return found;
}

QDomDocument stored_style(const QgsVectorLayer& layer) {
    QString trouble;
    QDomDocument style;
    style.setContent(
        QgsProviderRegistry::instance()->loadStyle(layer.providerType(), layer.source(), trouble));
    return style;
}

}  // namespace pipward::desktop
