// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QObject>
#include <memory>

class QgisInterface;

namespace pipward::desktop {

/// Puts noting into the desktop: the map tool, the dock with the form, the menu's entries. What is returned
/// owns them all; deleting it takes them back.
std::unique_ptr<QObject> add_noting(QgisInterface& desktop);

}  // namespace pipward::desktop
