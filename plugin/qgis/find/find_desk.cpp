// SPDX-License-Identifier: GPL-2.0-or-later
#include "find/find_desk.h"

#include <qgisinterface.h>
#include <qgsapplication.h>
#include <qgscoordinatetransform.h>
#include <qgsdockwidget.h>
#include <qgsexception.h>
#include <qgsgui.h>
#include <qgsmapcanvas.h>
#include <qgsmaplayeractionregistry.h>
#include <qgsmessagebar.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>

#include <QDate>
#include <QMainWindow>
#include <algorithm>

#include "find/book_layer.h"
#include "find/card_action.h"
#include "find/find_box.h"
#include "find/gps_position.h"
#include "find/pedigree_window.h"
#include "find/tree_locator.h"
#include "panel/operation_task.h"
#include "panel/season_dock.h"
#include "text.h"

namespace pipward::desktop {
namespace {

std::optional<place::LonLat> middle_of(const QgsMapCanvas& map) {
    const QgsCoordinateTransform to_earth(map.mapSettings().destinationCrs(),
                                          QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                          QgsProject::instance());
    try {
        const auto middle = to_earth.transform(map.center());
        return place::LonLat{middle.x(), middle.y()};
    } catch (const QgsCsException&) {
        return std::nullopt;  // the map shows a place beyond the earth
    }
}

}  // namespace

FindDesk::FindDesk(QgisInterface* desktop, SeasonPanel* panel, QObject* parent)
    : QObject(parent), desktop_(desktop), action_(new CardAction(this)) {
    QgsGui::mapLayerActionRegistry()->addMapLayerAction(action_);
    connect(action_, &CardAction::asked_for, this, &FindDesk::open_feature);
    connect(&finder_, &TreeFinder::ready, this, [this](const SharedIndex& index) {
        const bool waited_for = waiting_ && waiting_->book == index->book;
        if (waited_for && !open_waiting(index)) {
            give_up_waiting();
        }
        renew_card(index);
    });
    watch_layers();
    if (panel != nullptr) {
        add_find_box(*panel);
    }
    if (desktop_ != nullptr) {
        locator_ = new TreeLocator(&finder_);
        connect(locator_, &TreeLocator::chosen, this, &FindDesk::open);
        desktop_->registerLocatorFilter(locator_);
    }
}

FindDesk::~FindDesk() {
    QgsGui::mapLayerActionRegistry()->removeMapLayerAction(action_);
    if (locator_ != nullptr) {
        desktop_->deregisterLocatorFilter(locator_);
    }
    if (dock_ != nullptr) {
        desktop_->removeDockWidget(dock_);
        delete dock_;
    }
}

void FindDesk::add_find_box(SeasonPanel& panel) {
    auto* box = new FindBox(finder_, [this] {
        const auto from = looking_from();
        return from ? std::optional{from->place} : std::nullopt;
    });
    panel.put_on_top(box);
    connect(box, &FindBox::chosen, this, &FindDesk::open);
    connect(&panel, &SeasonPanel::book_chosen, this,
            [this](const QString& book) { finder_.use_book(plain_book(book)); });
    connect(&panel, &SeasonPanel::planned, this,
            [this](const QString& book) { finder_.index_of(plain_book(book)); });
    finder_.use_book(plain_book(panel.book()));
}

void FindDesk::watch_layers() {
    auto* project = QgsProject::instance();
    for (auto* layer : project->mapLayers()) {
        watch(layer);
    }
    connect(project, &QgsProject::layersAdded, this, [this](const QList<QgsMapLayer*>& layers) {
        for (auto* layer : layers) {
            watch(layer);
        }
    });
}

// A book that is opened on the map is looked in where no other was chosen, and read again after edits.
void FindDesk::watch(QgsMapLayer* layer) {
    const QString book = book_of_trees(layer);
    if (book.isEmpty()) {
        return;
    }
    connect(qobject_cast<QgsVectorLayer*>(layer), &QgsVectorLayer::afterCommitChanges, this,
            [this, book] { finder_.book_changed(book); });
    if (finder_.book().isEmpty()) {
        finder_.use_book(book);
    }
}

void FindDesk::open(const ChosenTree& tree) {
    show_card(tree);
    show_on_map(tree);
}

void FindDesk::open_feature(const QString& book, qlonglong fid) {
    waiting_ = Waiting{book, fid};
    const auto index = finder_.index_of(book);
    if (index != nullptr && open_waiting(index)) {
        return;
    }
    if (!finder_.is_reading(book)) {
        give_up_waiting();
    }
}

bool FindDesk::open_waiting(const SharedIndex& index) {
    if (!waiting_ || waiting_->book != index->book) {
        return false;
    }
    const auto& trees = index->trees.orchard().trees;
    const auto found = std::ranges::find(trees, waiting_->tree, &Tree::fid);
    if (found == trees.end()) {
        return false;
    }
    waiting_.reset();
    show_card({index, static_cast<std::size_t>(found - trees.begin())});
    return true;
}

void FindDesk::give_up_waiting() {
    waiting_.reset();
    if (desktop_ != nullptr) {
        desktop_->messageBar()->pushMessage(tr("Tree record"),
                                            tr("This tree is not in the book yet. Save the edits first."),
                                            Qgis::MessageLevel::Warning);
    }
}

TreeCard& FindDesk::card() {
    if (dock_ == nullptr) {
        dock_ = new QgsDockWidget(tr("Tree"), desktop_->mainWindow());
        dock_->setObjectName(QStringLiteral("pipward_tree_dock"));
        card_ = new TreeCard(dock_);
        dock_->setWidget(card_);
        connect(card_, &TreeCard::asked_for, this, &FindDesk::show_on_map);
        connect(card_, &TreeCard::pedigree_asked_for, this, &FindDesk::draw_pedigree);
        connect(card_, &TreeCard::record_asked_for, this, [this](const ChosenTree& tree) {
            emit record_asked_for(tree.index->book, to_qt(tree.tree().label));
        });
        // Beside the map, opposite the season: both are looked at together.
        desktop_->addDockWidget(Qt::LeftDockWidgetArea, dock_);
    }
    return *card_;
}

void FindDesk::show_card(const ChosenTree& tree) {
    if (desktop_ == nullptr) {
        return;
    }
    card().show_tree(tree, looking_from());
    dock_->setUserVisible(true);
}

void FindDesk::book_changed(const QString& book) {
    finder_.book_changed(plain_book(book));
}

void FindDesk::renew_card(const SharedIndex& index) {
    const auto* shown = card_ == nullptr ? nullptr : card_->shown();
    if (shown == nullptr || shown->index->book != index->book) {
        return;
    }
    const auto& trees = index->trees.orchard().trees;
    const auto found = std::ranges::find(trees, shown->tree().fid, &Tree::fid);
    if (found != trees.end()) {
        card_->show_tree({index, static_cast<std::size_t>(found - trees.begin())}, looking_from());
    }
}

void FindDesk::show_on_map(const ChosenTree& tree) {
    const auto& at = tree.tree().at;
    if (desktop_ != nullptr && at) {
        show_trees(*desktop_, {{to_qt(tree.tree().label), at->x, at->y}},
                   to_qt(tree.index->trees.orchard().crs));
    }
}

void FindDesk::draw_pedigree(const ChosenTree& tree) {
    const auto name = tree.tree().accession.value_or(tree.tree().label);
    const auto today = QDate::currentDate().toString(Qt::ISODate);
    auto* task = new OperationTask(
        operation::operation_for(operation::Role::draw_pedigree),
        {{"book", from_qt(tree.index->book)}, {"accessions", name}, {"as-of", from_qt(today)}});
    connect(task, &OperationTask::done, this,
            [this, name](const std::shared_ptr<const operation::Outcome>& outcome) {
                (new PedigreeWindow(to_qt(name), outcome, desktop_->mainWindow()))->show();
            });
    connect(task, &OperationTask::failed, this, [this](const QString& what) {
        desktop_->messageBar()->pushMessage(tr("Pedigree"), what, Qgis::MessageLevel::Warning);
    });
    QgsApplication::taskManager()->addTask(task);
}

std::optional<LookingFrom> FindDesk::looking_from() const {
    if (const auto position = gps_position()) {
        return LookingFrom{*position, true};
    }
    const auto middle = desktop_ == nullptr ? std::nullopt : middle_of(*desktop_->mapCanvas());
    return middle ? std::optional{LookingFrom{*middle, false}} : std::nullopt;
}

}  // namespace pipward::desktop
