// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsprocessingcontext.h>

#include <QString>

#include "pipward/record/table.h"

class QgsVectorLayer;

namespace pipward::desktop {

/// Gives a layer the looks of a result table, wherever its rows lie; false where the table has none.
bool style_result(QgsVectorLayer& layer, const Table& table);

/// A result that Processing will put into the project is styled as it is put there.
void style_on_arrival(QgsProcessingContext& context, const QString& destination, const Table& table);

}  // namespace pipward::desktop
