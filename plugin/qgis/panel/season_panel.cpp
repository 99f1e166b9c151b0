// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/season_panel.h"

#include <qgsapplication.h>
#include <qgsfilewidget.h>
#include <qgssettings.h>
#include <qgstaskmanager.h>

#include <QDateEdit>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QTreeWidget>
#include <algorithm>

#include "panel/bloom_chart.h"
#include "panel/operation_task.h"
#include "panel/table_view.h"
#include "panel/task_tree.h"
#include "text.h"

namespace pipward::desktop {
namespace {

const QString book_setting = QStringLiteral("pipward/book");

const Table* find_table(const Outcome& outcome, std::string_view name) {
    const auto found =
        std::ranges::find_if(outcome.tables, [&](const Table& table) { return table.shape.name == name; });
    return found == outcome.tables.end() ? nullptr : &*found;
}

QDate day_of_plan(const Table& windows) {
    const TableView view(windows);
    return view.size() > 0 ? view.day(0, "as_of") : QDate();
}

/// Never 100: nothing in an orchard is certain.
QString chance_text(double chance) {
    return QStringLiteral("%1 %").arg(std::min(99, qRound(100 * chance)));
}

QString way_text(const TableView& view, std::size_t row) {
    return view.text(row, "verdict") == QStringLiteral("impossible")
               ? SeasonPanel::tr("cannot work")
               : translated(from_qt(view.text(row, "way")));
}

QTreeWidget* make_cross_list() {
    auto* list = new QTreeWidget;
    list->setObjectName(QStringLiteral("pipward_crosses"));
    list->setAccessibleName(SeasonPanel::tr("Outlook of the crosses"));
    list->setHeaderLabels({SeasonPanel::tr("Cross"), SeasonPanel::tr("Parents"), SeasonPanel::tr("Best way"),
                           SeasonPanel::tr("Chance")});
    list->setRootIsDecorated(false);
    list->setAlternatingRowColors(true);
    list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    list->header()->setSectionResizeMode(1, QHeaderView::Stretch);
    list->header()->setStretchLastSection(false);
    return list;
}

}  // namespace

SeasonPanel::SeasonPanel(QWidget* parent) : QWidget(parent) {
    build();
    set_book(QgsSettings().value(book_setting).toString());
}

SeasonPanel::~SeasonPanel() {
    if (running_ != nullptr) {
        disconnect(running_, nullptr, this, nullptr);
        running_->cancel();
    }
}

void SeasonPanel::build() {
    setObjectName(QStringLiteral("pipward_season_panel"));
    book_ = new QgsFileWidget;
    book_->setFilter(tr("Orchard books (*.gpkg);;All files (*)"));
    book_->setDialogTitle(tr("Choose an orchard book"));
    as_of_ = new QDateEdit(QDate::currentDate());
    as_of_->setCalendarPopup(true);
    as_of_->setToolTip(tr("The day to look from: nothing observed later is used."));
    refresh_ = new QPushButton(tr("Plan"));
    refresh_->setToolTip(tr("Plans the season anew and puts the results into the book."));
    chart_ = new BloomChart;
    tasks_ = new TaskTree;
    crosses_ = make_cross_list();
    summary_ = new QLabel(tr("Choose a book and a day, then plan."));
    summary_->setWordWrap(true);

    auto* day_row = new QHBoxLayout;
    auto* day_label = new QLabel(tr("As of"));
    day_label->setBuddy(as_of_);
    day_row->addWidget(day_label);
    day_row->addWidget(as_of_, 1);
    day_row->addWidget(refresh_);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setWidget(chart_);
    auto* tabs = new QTabWidget;
    tabs->addTab(tasks_, tr("Work"));
    tabs->addTab(crosses_, tr("Crosses"));
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(scroll);
    split->addWidget(tabs);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    auto* all = new QVBoxLayout(this);
    all->addWidget(book_);
    all->addLayout(day_row);
    all->addWidget(split, 1);
    all->addWidget(summary_);

    connect(book_, &QgsFileWidget::fileChanged, this, &SeasonPanel::book_chosen);
    connect(refresh_, &QPushButton::clicked, this, &SeasonPanel::refresh);
    connect(chart_, &BloomChart::bar_opened, this,
            [this](const QString&, const QStringList& trees) { ask_for(trees); });
    connect(tasks_, &TaskTree::tree_opened, this, [this](const QString& label) { ask_for({label}); });
}

void SeasonPanel::set_book(const QString& path) {
    book_->setFilePath(path);
}

QString SeasonPanel::book() const {
    return book_->filePath();
}

void SeasonPanel::put_on_top(QWidget* part) {
    static_cast<QVBoxLayout*>(layout())->insertWidget(0, part);
}

void SeasonPanel::set_as_of(const QDate& day) {
    as_of_->setDate(day);
}

void SeasonPanel::set_busy(bool busy) {
    refresh_->setEnabled(!busy);
    if (busy) {
        summary_->setText(tr("Planning …"));
    }
}

void SeasonPanel::refresh() {
    const QString book = book_->filePath();
    if (book.isEmpty()) {
        emit trouble(tr("No book is chosen. Choose the .gpkg file of your orchard."));
        return;
    }
    QgsSettings().setValue(book_setting, book);
    const Form form{{"book", from_qt(book)}, {"as-of", from_qt(as_of_->date().toString(Qt::ISODate))}};
    running_ = new OperationTask(*find_operation("season-plan"), form);
    set_busy(true);
    connect(running_, &OperationTask::done, this,
            [this, book](const std::shared_ptr<const Outcome>& outcome) {
                running_ = nullptr;
                set_busy(false);
                show_outcome(*outcome);
                emit planned(book);
            });
    connect(running_, &OperationTask::failed, this, [this](const QString& what) {
        running_ = nullptr;
        set_busy(false);
        summary_->setText(tr("No plan was made."));
        emit trouble(what);
    });
    QgsApplication::taskManager()->addTask(running_);
}

void SeasonPanel::show_outcome(const Outcome& outcome) {
    const Table* windows = find_table(outcome, "bloom_window");
    const Table* outlook = find_table(outcome, "cross_outlook");
    if (windows == nullptr || outlook == nullptr) {
        return;
    }
    const QDate day = day_of_plan(*windows);
    chart_->show_bars(bloom_bars(*windows, *outlook), day.isValid() ? day : as_of_->date());
    tasks_->show_tasks(outcome);
    show_crosses(outcome);
    remember_places(outcome);
    summary_->setText(to_qt(outcome.summary));
}

void SeasonPanel::show_crosses(const Outcome& outcome) {
    crosses_->clear();
    const TableView view(*find_table(outcome, "cross_outlook"));
    for (std::size_t row = 0; row < view.size(); ++row) {
        if (!view.yes(row, "best")) {
            continue;
        }
        auto* item = new QTreeWidgetItem(
            crosses_, {view.text(row, "cross"),
                       QStringLiteral("%1 × %2").arg(view.text(row, "seed_parent"), view.text(row, "donor")),
                       way_text(view, row), chance_text(view.number(row, "chance"))});
        const QString why = view.text(row, "why");
        for (int column = 0; column < item->columnCount(); ++column) {
            item->setToolTip(column, why);
        }
        item->setTextAlignment(3, Qt::AlignRight | Qt::AlignVCenter);
    }
}

void SeasonPanel::remember_places(const Outcome& outcome) {
    places_.clear();
    crs_ = to_qt(outcome.crs);
    const TableView view(*find_table(outcome, "bloom_window"));
    for (std::size_t row = 0; row < view.size(); ++row) {
        if (const auto& at = view.at(row)) {
            places_.push_back({view.text(row, "label"), at->x, at->y});
        }
    }
}

void SeasonPanel::ask_for(const QStringList& labels) {
    std::vector<TreePlace> asked;
    for (const auto& place : places_) {
        if (labels.contains(place.label)) {
            asked.push_back(place);
        }
    }
    if (!asked.empty()) {
        emit trees_asked_for(asked, crs_);
    }
}

}  // namespace pipward::desktop
