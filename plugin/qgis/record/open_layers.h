// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <string>

class QgsMapLayer;
class QgsVectorLayer;

namespace pipward::desktop {

/// The table of a book that a layer shows: "tree" of "…/larkfold.gpkg". Empty where it is no layer of a
/// file.
struct BookLayer {
    QString book;
    QString table;
};
BookLayer book_layer(const QgsMapLayer& layer);

/// The layer where it shows the trees of an orchard book, else null.
QgsVectorLayer* tree_layer(QgsMapLayer* layer);

/// Why nothing may be written into this table of the book from outside just now, for people; empty where it
/// may.
QString held_by_edits(const QString& book, const std::string& table);

}  // namespace pipward::desktop
