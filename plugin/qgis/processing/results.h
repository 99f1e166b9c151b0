// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsfeature.h>
#include <qgsfields.h>

#include <QString>

#include "pipward/record/table.h"

namespace pipward::desktop {

/// "bloom_window" becomes "BLOOM_WINDOW".
QString result_name(const TableShape& shape);
QgsFields fields_of(const TableShape& shape);
QgsFeature feature_of(const Row& row, const TableShape& shape, const QgsFields& fields);

}  // namespace pipward::desktop
