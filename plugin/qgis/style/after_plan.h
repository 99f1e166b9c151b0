// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>

class QgisInterface;
class QgsVectorLayer;

namespace pipward::desktop {

/// A layer of bloom windows is coloured by weeks: when a new plan has moved them, it takes the weeks of its
/// stored style. Layers whose looks are not ours, or whose weeks still hold, stay as they are.
bool renew_weeks(QgsVectorLayer& layer);

/// After a plan: the weeks on the map are renewed; where the results are on no map, it is offered.
void after_plan(QgisInterface& desktop, const QString& book);

}  // namespace pipward::desktop
