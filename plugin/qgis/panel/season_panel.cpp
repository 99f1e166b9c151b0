// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/season_panel.h"

#include <qgsapplication.h>
#include <qgsfilewidget.h>
#include <qgstaskmanager.h>

#include <QDateEdit>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QTreeWidget>
#include <algorithm>

#include "current_book.h"
#include "panel/bloom_chart.h"
#include "panel/operation_task.h"
#include "panel/table_view.h"
#include "panel/task_tree.h"
#include "record/book_task.h"
#include "text.h"

namespace pipward::desktop {
namespace {

bool is_on_server(const QString& book) {
    return book.startsWith(QStringLiteral("PG:"));
}

/// Never 100: nothing in an orchard is certain.
QString chance_text(double chance) {
    return QStringLiteral("%1 %").arg(std::min(99, qRound(100 * chance)));
}

QString way_text(const TableView& view, std::size_t row) {
    return view.text(row, "verdict") == QStringLiteral("impossible")
               ? SeasonPanel::tr("not possible")
               : translated(from_qt(view.text(row, "way")));
}

QTreeWidget* make_cross_list() {
    auto* list = new QTreeWidget;
    list->setObjectName(QStringLiteral("pipward_crosses"));
    list->setAccessibleName(SeasonPanel::tr("Cross outlook"));
    list->setHeaderLabels({SeasonPanel::tr("Cross"), SeasonPanel::tr("Parents"), SeasonPanel::tr("Best way"),
                           SeasonPanel::tr("Probability")});
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
    set_book(current_book());
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
    as_of_->setDisplayFormat(typed_date_format());
    as_of_->setToolTip(tr("Reference date: nothing observed later is used."));
    refresh_ = new QPushButton(tr("Plan"));
    refresh_->setToolTip(tr("Plans the season again and writes the results into the book."));
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
    play_ = new QPushButton;
    play_->setObjectName(QStringLiteral("pipward_play_bloom"));
    set_playing(false);
    all->addWidget(play_, 0, Qt::AlignLeft);
    connect(play_, &QPushButton::clicked, this, &SeasonPanel::bloom_asked_for);

    connect(book_, &QgsFileWidget::fileChanged, this, &SeasonPanel::take_book);
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

void SeasonPanel::set_playing(bool playing) {
    play_->setText(playing ? tr("Stop") : tr("Play the bloom"));
    play_->setToolTip(playing ? tr("Stops playing and shows the map as it was.")
                              : tr("Plays the bloom on the map, one day per step."));
}

void SeasonPanel::mark_day(const QDate& day) {
    chart_->mark_day(day);
}

void SeasonPanel::take_book(const QString& path) {
    show_season({});
    const bool is_there = QFileInfo(path).isFile();
    summary_->setText(is_there || path.isEmpty() || is_on_server(path)
                          ? tr("Choose a book and a day, then plan.")
                          : tr("There is no such file: %1").arg(QFileInfo(path).fileName()));
    if (is_there) {
        remember_book(path);
        show_stored(path);
    }
    emit book_chosen(path);
}

// In the background, and thrown away where another book was chosen meanwhile.
void SeasonPanel::show_stored(const QString& path) {
    const auto season = std::make_shared<SeasonView>();
    auto* task = new BookTask(tr("Reading the book"), [season, path] { *season = stored_season(path); });
    connect(task, &BookTask::done, this, [this, season, path] {
        if (path == book() && running_ == nullptr && chart_->bars().empty() && !season->bars.empty()) {
            show_season(*season);
            summary_->setText(tr("The plan in the book, as of %1.").arg(short_day(season->as_of)));
        }
    });
    QgsApplication::taskManager()->addTask(task);
}

// What may not be written may still be looked at.
operation::Form SeasonPanel::form() const {
    const QString book = book_->filePath();
    operation::Form form{{"book", from_qt(book)}, {"as-of", from_qt(as_of_->date().toString(Qt::ISODate))}};
    if (const QFileInfo file(book); file.isFile() && !file.isWritable()) {
        form["keep"] = "no";
    }
    return form;
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
    remember_book(book);
    const bool kept = !form().contains("keep");
    const auto season = std::make_shared<SeasonView>();
    running_ = new OperationTask(
        operation::operation_for(operation::Role::plan_season), form(),
        [season](operation::Outcome& plan) { *season = make_season_view(std::move(plan)); });
    set_busy(true);
    connect(running_, &OperationTask::done, this, [this, book, season, kept] {
        running_ = nullptr;
        set_busy(false);
        if (book == this->book()) {
            show_season(*season);
        } else {
            show_stored(this->book());
        }
        if (kept) {
            emit planned(book);
        } else {
            emit trouble(tr("%1 may not be written: the plan is shown here and stands nowhere else.")
                             .arg(QFileInfo(book).fileName()));
        }
    });
    connect(running_, &OperationTask::failed, this, [this](const QString& what) {
        running_ = nullptr;
        set_busy(false);
        summary_->setText(tr("No plan was made."));
        emit trouble(what);
    });
    QgsApplication::taskManager()->addTask(running_);
}

void SeasonPanel::show_season(const SeasonView& season) {
    chart_->show_bars(season.bars, season.as_of.isValid() ? season.as_of : as_of_->date());
    tasks_->show_tasks(season.rest);
    show_crosses(season.rest);
    places_ = season.places;
    crs_ = season.crs;
    summary_->setText(said(season.rest.summary));
}

void SeasonPanel::show_crosses(const operation::Outcome& outcome) {
    crosses_->clear();
    const Table* outlook = find_table(outcome, "cross_outlook");
    if (outlook == nullptr) {
        return;
    }
    const TableView view(*outlook);
    for (std::size_t row = 0; row < view.size(); ++row) {
        if (!view.yes(row, "best")) {
            continue;
        }
        auto* item = new QTreeWidgetItem(
            crosses_, {view.text(row, "cross"),
                       QStringLiteral("%1 × %2").arg(view.text(row, "seed_parent"), view.text(row, "donor")),
                       way_text(view, row), chance_text(view.number(row, "probability"))});
        const QString why = view.text(row, "why");
        for (int column = 0; column < item->columnCount(); ++column) {
            item->setToolTip(column, why);
        }
        item->setTextAlignment(3, Qt::AlignRight | Qt::AlignVCenter);
    }
}

void SeasonPanel::ask_for(const QStringList& labels) {
    std::vector<TreePlace> asked;
    for (const auto& label : labels) {
        if (const auto found = places_.constFind(label); found != places_.constEnd()) {
            asked.push_back(*found);
        }
    }
    if (!asked.empty()) {
        emit trees_asked_for(asked, crs_);
    }
}

}  // namespace pipward::desktop
