// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QDate>
#include <QString>
#include <QStringList>
#include <vector>

#include "pipward/record/table.h"

namespace pipward::desktop {

/// One accession's bloom this season as the chart draws it.
struct BloomBar {
    QString accession;
    QDate first;  ///< median day of first bloom
    QDate full_p10;
    QDate full_p50;
    QDate full_p90;
    QDate end;            ///< median day of the end of bloom
    bool wanted = false;  ///< a parent of a wanted cross
    QStringList trees;    ///< labels of its trees
    QString warning;
    bool borrowed = false;  ///< no notes of its own stand behind it
};

/// One bar an accession from the table of bloom windows: the middle of its trees' days. Parents of wanted
/// crosses first, then by median full bloom, then by name.
std::vector<BloomBar> bloom_bars(const Table& bloom_window, const Table& cross_outlook);

}  // namespace pipward::desktop
