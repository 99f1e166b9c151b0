// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QTreeWidget>

#include "pipward/operation/operation.h"

namespace pipward::desktop {

/// The work that is due, grouped by how soon: too late, today, this week, later.
class TaskTree : public QTreeWidget {
    Q_OBJECT
  public:
    explicit TaskTree(QWidget* parent = nullptr);

    void show_tasks(const operation::Outcome& outcome);

  signals:
    void tree_opened(const QString& label);
};

}  // namespace pipward::desktop
