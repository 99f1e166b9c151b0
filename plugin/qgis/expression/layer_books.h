// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QHash>
#include <QObject>
#include <QString>
#include <mutex>

class QgsMapLayer;

namespace pipward::desktop {

/// Which file each of the project's layers comes from, for those who are asked in another thread and may not
/// touch the layers themselves.
class LayerBooks : public QObject {
    Q_OBJECT
  public:
    LayerBooks();

    /// Empty for a layer that is not in the project or does not lie in a GeoPackage.
    QString book_of(const QString& layer_id) const;

  private:
    void add(const QList<QgsMapLayer*>& layers);

    mutable std::mutex lock_;
    QHash<QString, QString> books_;
};

}  // namespace pipward::desktop
