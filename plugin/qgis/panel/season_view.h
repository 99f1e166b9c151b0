// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDate>
#include <QHash>
#include <QString>
#include <string_view>
#include <vector>

#include "panel/bloom_bar.h"
#include "pipward/operation/operation.h"

namespace pipward::desktop {

/// A tree's place on the map, for whoever zooms to it.
struct TreePlace {
    QString label;
    double x = 0;
    double y = 0;
};

/// What the panel shows of a season plan. Made where the plan is made, in the background: an orchard may have
/// a hundred thousand trees, and the window must not wait for them.
struct SeasonView {
    QDate as_of;
    std::vector<BloomBar> bars;
    QHash<QString, TreePlace> places;  ///< by label
    QString crs;                       ///< of the places
    operation::Outcome rest;           ///< without the windows, which are in the bars and places
};

/// Null where the outcome has no such table.
const Table* find_table(const operation::Outcome& outcome, std::string_view name);

SeasonView make_season_view(operation::Outcome plan);

/// The plan that stands in the book since it was planned last; no bars where it never was. Throws Error
/// (access) where the book cannot be read.
SeasonView stored_season(const QString& book);

}  // namespace pipward::desktop
