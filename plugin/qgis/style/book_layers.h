// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDomDocument>
#include <QList>
#include <QString>

class QgsVectorLayer;

namespace pipward::desktop {

/// The table of a book that the layer shows; empty for layers of other files.
QString book_table_of(const QgsVectorLayer& layer);
/// The project's layers that lie in the book, however its path is spelt.
QList<QgsVectorLayer*> layers_of_book(const QString& book);
/// The default style that is stored beside the layer's rows; null where there is none.
QDomDocument stored_style(const QgsVectorLayer& layer);

}  // namespace pipward::desktop
