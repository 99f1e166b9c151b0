// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

class QgsMapLayer;

namespace pipward::desktop {

/// The book whose trees the layer shows: the path of its file as one writes it; empty for any other layer.
QString book_of_trees(const QgsMapLayer* layer);

/// The same file by the same path, however it was given; a server's name stays as it is. Only the name
/// is looked at: opening the file here would let go of the database's locks.
QString plain_book(const QString& book);

}  // namespace pipward::desktop
