// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/task_tree.h"

#include <QLocale>
#include <algorithm>
#include <array>

#include "panel/table_view.h"
#include "text.h"

namespace pipward::desktop {
namespace {

constexpr int label_role = Qt::UserRole;

struct DueTask {
    QString urgency;
    QDate from;
    QDate to;
    QString work;
    QString label;
    QString why;
};

struct Group {
    const char* urgency;  ///< as the tables write it
    QString title;
};

std::array<Group, 4> groups() {
    return {{{"too late", TaskTree::tr("Too late")},
             {"today", TaskTree::tr("Today")},
             {"this week", TaskTree::tr("This week")},
             {"later", TaskTree::tr("Later")}}};
}

QString sentence(const TableView& view, std::size_t row) {
    const QString work = translated(from_qt(view.text(row, "work")));
    const QString donor = view.text(row, "donor");
    const QString seed_parent = view.text(row, "seed_parent");
    const QString who = seed_parent.isEmpty() ? donor : QStringLiteral("%1 × %2").arg(seed_parent, donor);
    const int flowers = static_cast<int>(view.number(row, "flowers"));
    if (flowers == 0) {
        return QStringLiteral("%1: %2").arg(work, who);
    }
    return flowers == 1 ? TaskTree::tr("%1: %2, one flower").arg(work, who)
                        : TaskTree::tr("%1: %2, %3 flowers").arg(work, who).arg(flowers);
}

std::vector<DueTask> due_tasks(const operation::Outcome& outcome) {
    std::vector<DueTask> tasks;
    for (const auto& table : outcome.tables) {
        if (table.shape.name != "pollen_task" && table.shape.name != "field_task") {
            continue;
        }
        const TableView view(table);
        for (std::size_t row = 0; row < view.size(); ++row) {
            tasks.push_back({view.text(row, "urgency").replace('_', ' '), view.day(row, "do_from"),
                             view.day(row, "do_to"), sentence(view, row), view.text(row, "tree"),
                             view.text(row, "why")});
        }
    }
    std::ranges::stable_sort(tasks, {},
                             [](const DueTask& task) { return std::make_pair(task.to, task.from); });
    return tasks;
}

QString days_text(const DueTask& task) {
    if (task.from == task.to) {
        return short_day(task.to);
    }
    const bool one_month = task.from.month() == task.to.month() && task.from.year() == task.to.year();
    return one_month ? QStringLiteral("%1 – %2").arg(task.from.day()).arg(short_day(task.to))
                     : QStringLiteral("%1 – %2").arg(short_day(task.from), short_day(task.to));
}

QString place_text(const QString& label) {
    return label.isEmpty() ? TaskTree::tr("no tree") : label;
}

}  // namespace

TaskTree::TaskTree(QWidget* parent) : QTreeWidget(parent) {
    setObjectName(QStringLiteral("pipward_tasks"));
    setAccessibleName(tr("Work that is due"));
    setHeaderHidden(true);
    setRootIsDecorated(true);
    setIndentation(12);
    setAlternatingRowColors(true);
    connect(this, &QTreeWidget::itemActivated, this, [this](QTreeWidgetItem* item) {
        if (const QString label = item->data(0, label_role).toString(); !label.isEmpty()) {
            emit tree_opened(label);
        }
    });
    connect(this, &QTreeWidget::itemClicked, this, &QTreeWidget::itemActivated);
}

void TaskTree::show_tasks(const operation::Outcome& outcome) {
    clear();
    const auto tasks = due_tasks(outcome);
    for (const auto& [urgency, title] : groups()) {
        QTreeWidgetItem* group = nullptr;
        int count = 0;
        for (const auto& task : tasks) {
            if (task.urgency != urgency) {
                continue;
            }
            if (group == nullptr) {
                group = new QTreeWidgetItem(this);
                QFont bold = font();
                bold.setBold(true);
                group->setFont(0, bold);
            }
            // Two lines: what, then when and where, so that nothing is cut off in a narrow panel.
            auto* item = new QTreeWidgetItem(
                group,
                {QStringLiteral("%1\n%2 · %3").arg(task.work, days_text(task), place_text(task.label))});
            item->setToolTip(0, task.why);
            item->setData(0, label_role, task.label);
            ++count;
        }
        if (group != nullptr) {
            group->setText(0, QStringLiteral("%1 (%2)").arg(title).arg(count));
            group->setExpanded(urgency != groups().back().urgency);
        }
    }
    if (topLevelItemCount() == 1) {
        topLevelItem(0)->setExpanded(true);
    }
    if (topLevelItemCount() == 0) {
        new QTreeWidgetItem(this, {tr("Nothing is due.")});
    }
}

}  // namespace pipward::desktop
