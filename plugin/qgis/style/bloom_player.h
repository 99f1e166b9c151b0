// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsrange.h>

class QgisInterface;

namespace pipward::desktop {

/// From the earliest first bloom to the latest end of bloom in the project's layers of bloom windows, by
/// their medians; infinite where there is none.
QgsDateTimeRange bloom_time_of_project();

/// Lets the map play through the bloom, a day a step, or tells what is missing for it.
void play_bloom(QgisInterface& desktop);

}  // namespace pipward::desktop
