// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "panel/season_panel.h"

class QgisInterface;
class QgsDockWidget;

namespace pipward::desktop {

/// Puts a season panel into the desktop and does on the map what the panel asks for. Owned by the main
/// window.
QgsDockWidget* add_season_dock(QgisInterface& desktop);

/// Zooms the map to the trees and lets them flash.
void show_trees(QgisInterface& desktop, const std::vector<TreePlace>& trees, const QString& crs);

/// Selects them in the layers of the book's trees that are in the project.
void select_trees(const QString& book, const std::vector<TreePlace>& trees);

/// Layers of this book show what was written into it; those being edited are left alone.
void reload_layers_of(const QString& book);

}  // namespace pipward::desktop
