// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsmaptool.h>
#include <qgspointxy.h>

#include <memory>
#include <optional>

class QgsVectorLayer;
class QgsVertexMarker;

namespace pipward::desktop {

/// A tree under the pointer.
struct FoundTree {
    QString book;
    QString label;
    QgsPointXY at;  ///< in the map's coordinates
};

/// The nearest tree of any book that is shown on the canvas, within `reach` map units of a place.
std::optional<FoundTree> nearest_tree(const QgsMapCanvas& canvas, const QgsPointXY& place, double reach);

/// Lets the user click a tree. The tree stays marked until another is clicked or the tool is put away.
class TreeTool : public QgsMapTool {
    Q_OBJECT
  public:
    explicit TreeTool(QgsMapCanvas* canvas);
    ~TreeTool() override;

    void canvasMoveEvent(QgsMapMouseEvent* event) override;
    void canvasReleaseEvent(QgsMapMouseEvent* event) override;
    void deactivate() override;

  signals:
    void tree_clicked(const QString& book, const QString& label);
    void nothing_there(const QString& why);

  private:
    double reach() const;
    void mark(const QgsPointXY& at);

    std::unique_ptr<QgsVertexMarker> mark_;
    std::unique_ptr<QgsVertexMarker> hint_;
};

}  // namespace pipward::desktop
