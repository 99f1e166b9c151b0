// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/recording.h"

#include <qgisinterface.h>
#include <qgsdockwidget.h>
#include <qgsmapcanvas.h>
#include <qgsmessagebar.h>
#include <qgsmessagebaritem.h>

#include <QAction>
#include <QMainWindow>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>

#include "panel/season_dock.h"
#include "record/record_desk.h"
#include "record/record_form.h"
#include "record/tree_tool.h"

namespace pipward::desktop {
namespace {

constexpr int seconds_to_undo = 15;

QString menu() {
    return QStringLiteral("Pipward");
}

class RecordingAtTrees : public Recording {
  public:
    explicit RecordingAtTrees(QgisInterface& desktop)
        : desktop_(desktop),
          form_(new RecordForm),
          desk_(*form_),
          dock_(new QgsDockWidget(RecordDesk::tr("Record at a tree"), desktop.mainWindow())),
          tool_(desktop.mapCanvas()),
          start_(new QAction(QIcon(QStringLiteral(":/pipward/record.svg")),
                             RecordDesk::tr("Record at a tree"), desktop.mainWindow())),
          undo_(new QAction(RecordDesk::tr("Undo the last record"), desktop.mainWindow())),
          redo_(new QAction(RecordDesk::tr("Record it again"), desktop.mainWindow())) {
        add_dock();
        add_actions();
        connect_desk();
    }

    ~RecordingAtTrees() override {
        desktop_.mapCanvas()->unsetMapTool(&tool_);
        for (auto* action : {start_, undo_, redo_}) {
            desktop_.removePluginMenu(menu(), action);
        }
        desktop_.removeToolBarIcon(start_);
        qDeleteAll(std::initializer_list<QAction*>{start_, undo_, redo_});
        if (dock_ != nullptr) {
            desktop_.removeDockWidget(dock_);
            delete dock_;
        }
    }
    RecordingAtTrees(const RecordingAtTrees&) = delete;
    RecordingAtTrees& operator=(const RecordingAtTrees&) = delete;

    void open_tree(const QString& book, const QString& label) override {
        desk_.open_tree(book, label);
        show_dock();
    }

  private:
    void add_dock() {
        dock_->setObjectName(QStringLiteral("pipward_record_dock"));
        scroll_->setWidgetResizable(true);
        scroll_->setFrameShape(QFrame::NoFrame);
        scroll_->setWidget(form_);
        scroll_->setMinimumWidth(form_->minimumSizeHint().width());
        dock_->setWidget(scroll_);
        desktop_.addDockWidget(Qt::RightDockWidgetArea, dock_);
        dock_->hide();
    }

    void add_actions() {
        start_->setObjectName(QStringLiteral("pipward_record_action"));
        start_->setCheckable(true);
        start_->setToolTip(
            RecordDesk::tr("Click a tree on the map and record its bloom, pollination or harvest."));
        tool_.setAction(start_);
        undo_->setObjectName(QStringLiteral("pipward_record_undo"));
        redo_->setObjectName(QStringLiteral("pipward_record_redo"));
        desktop_.addToolBarIcon(start_);
        for (auto* action : {start_, undo_, redo_}) {
            desktop_.addPluginToMenu(menu(), action);
        }
        connect(start_, &QAction::triggered, this, [this] { start(); });
        connect(undo_, &QAction::triggered, &desk_, &RecordDesk::undo);
        connect(redo_, &QAction::triggered, &desk_, &RecordDesk::redo);
        offer_history();
    }

    void connect_desk() {
        connect(&tool_, &TreeTool::tree_clicked, this, &RecordingAtTrees::open_tree);
        connect(&tool_, &TreeTool::nothing_there, this,
                [this](const QString& why) { tell(why, Qgis::MessageLevel::Info); });
        connect(&desk_, &RecordDesk::recorded, this, [this](const QString& what) { tell_with_undo(what); });
        connect(&desk_, &RecordDesk::warned, this,
                [this](const QString& what) { tell(what, Qgis::MessageLevel::Warning); });
        connect(&desk_, &RecordDesk::trouble, this,
                [this](const QString& what) { tell(what, Qgis::MessageLevel::Critical); });
        connect(&desk_, &RecordDesk::refused, this, [this] { show_findings(); });
        connect(&desk_, &RecordDesk::taken_back, this, [this](const QString& what) {
            tell(RecordDesk::tr("Undone: %1").arg(what), Qgis::MessageLevel::Info);
        });
        connect(&desk_, &RecordDesk::book_changed, this, &reload_layers_of);
        connect(&desk_, &RecordDesk::book_changed, this, &Recording::book_changed);
        connect(&desk_, &RecordDesk::history_changed, this, [this] { offer_history(); });
    }

    void start() {
        desktop_.mapCanvas()->setMapTool(&tool_);
        start_->setChecked(true);
        show_dock();
    }

    // Beside the season at first; wherever the user has put it afterwards.
    void show_dock() {
        auto* window = qobject_cast<QMainWindow*>(desktop_.mainWindow());
        auto* season = window->findChild<QDockWidget*>(QStringLiteral("pipward_season_dock"));
        if (!placed_ && season != nullptr && !dock_->isVisible() && !dock_->isFloating() &&
            window->dockWidgetArea(season) == window->dockWidgetArea(dock_)) {
            window->tabifyDockWidget(season, dock_);
        }
        placed_ = true;
        dock_->setUserVisible(true);
    }

    // They stand below the button and may be out of sight in a low dock.
    void show_findings() {
        show_dock();
        QTimer::singleShot(0, this, [this] { scroll_->ensureWidgetVisible(form_->findings_place()); });
    }

    void offer_history() {
        undo_->setEnabled(desk_.can_undo());
        redo_->setEnabled(desk_.can_redo());
    }

    void tell(const QString& what, Qgis::MessageLevel level) {
        desktop_.messageBar()->pushMessage(RecordDesk::tr("Record"), what, level);
    }

    // The button is for this very note: it goes when another is noted or it is taken back otherwise.
    void tell_with_undo(const QString& what) {
        auto* button = new QPushButton(RecordDesk::tr("Undo"));
        button->setObjectName(QStringLiteral("pipward_record_undo_button"));
        auto* item = new QgsMessageBarItem(RecordDesk::tr("Recorded"), what, button,
                                           Qgis::MessageLevel::Success, seconds_to_undo);
        connect(button, &QPushButton::clicked, &desk_, &RecordDesk::undo);
        const auto drop = [this, item = QPointer<QgsMessageBarItem>(item)] {
            if (item != nullptr) {
                desktop_.messageBar()->popWidget(item);
            }
        };
        connect(&desk_, &RecordDesk::taken_back, item, drop);
        connect(&desk_, &RecordDesk::book_changed, item, drop);
        desktop_.messageBar()->pushItem(item);
    }

    QgisInterface& desktop_;
    QScrollArea* scroll_ = new QScrollArea;
    RecordForm* form_;
    RecordDesk desk_;
    bool placed_ = false;
    QPointer<QgsDockWidget> dock_;
    TreeTool tool_;
    QAction* start_;
    QAction* undo_;
    QAction* redo_;
};

}  // namespace

std::unique_ptr<Recording> add_recording(QgisInterface& desktop) {
    return std::make_unique<RecordingAtTrees>(desktop);
}

}  // namespace pipward::desktop
