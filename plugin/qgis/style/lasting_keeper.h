// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <QSet>

class QgsMapLayer;
class QgsVectorLayer;

namespace pipward::desktop {

/// A layer that is dragged onto the map loses from when until when its rows are there, though its stored
/// style tells it. This puts it back for layers of a book as they are added. Layers that come with a project
/// keep what the project says, and nothing else of a style is touched.
class LastingKeeper : public QObject {
    Q_OBJECT
  public:
    LastingKeeper();

  private:
    void look_at(const QList<QgsMapLayer*>& layers);

    QSet<QString> read_with_project_;
};

/// Puts back what the layer's stored default style says of time; false where there is nothing to put back.
bool restore_lasting(QgsVectorLayer& layer);

}  // namespace pipward::desktop
