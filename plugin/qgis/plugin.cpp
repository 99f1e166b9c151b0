// SPDX-License-Identifier: GPL-2.0-or-later
#include "plugin.h"

#include <qgisinterface.h>
#include <qgsapplication.h>
#include <qgsdockwidget.h>
#include <qgsprocessingregistry.h>
#include <qgsproject.h>

#include "expression/functions.h"
#include "find/book_layer.h"
#include "find/find_desk.h"
#include "panel/season_dock.h"
#include "processing/provider.h"
#include "record/recording.h"
#include "style/book_opener.h"
#include "style/lasting_keeper.h"
#include "style/project_book.h"
#include "translation/translation.h"

namespace pipward::desktop {

QString plugin_name() {
    return QStringLiteral("Pipward");
}

QString plugin_description() {
    return Plugin::tr("Orchard map and bloom planner for a fruit breeder");
}

int register_provider() {
    auto* registry = QgsApplication::processingRegistry();
    auto provider = std::make_unique<Provider>();
    if (registry->providerById(provider->id()) != nullptr) {
        return 1;
    }
    return registry->addProvider(provider.release()) ? 0 : 2;
}

void unregister_provider() {
    QgsApplication::processingRegistry()->removeProvider(QStringLiteral("pipward"));
}

Plugin::Plugin(QgisInterface* desktop)
    : QgisPlugin(plugin_name(), plugin_description(), tr("Orchard"), QStringLiteral(PIPWARD_VERSION),
                 QgisPlugin::UI),
      desktop_(desktop) {
    setObjectName(QStringLiteral("pipward_plugin"));
}

Plugin::~Plugin() = default;

void Plugin::initGui() {
    translation_ = std::make_unique<Translation>(QgsApplication::locale());
    register_provider();
    functions_ = std::make_unique<ExpressionFunctions>();
    lasting_ = std::make_unique<LastingKeeper>();
    if (desktop_ != nullptr) {
        opener_ = new BookOpener(*desktop_);
        dock_ = add_season_dock(*desktop_);
        connect(opener_, &BookOpener::opened, dock_->findChild<SeasonPanel*>(), &SeasonPanel::set_book);
        recording_ = add_recording(*desktop_);
    }
    auto* panel = dock_ == nullptr ? nullptr : dock_->findChild<SeasonPanel*>();
    find_ = new FindDesk(desktop_, panel, this);
    if (desktop_ != nullptr) {
        connect(recording_.get(), &Recording::book_changed, find_, &FindDesk::book_changed);
        connect(find_, &FindDesk::record_asked_for, recording_.get(), &Recording::open_tree);
        follow_project(*panel);
    }
}

// One book at a time: panel, search and recording go with the map that is open.
void Plugin::follow_project(SeasonPanel& panel) {
    connect(QgsProject::instance(), &QgsProject::readProject, &panel, [&panel](const QDomDocument&) {
        point_stored_map_at_its_book();
        if (const QString book = book_of_project(); !book.isEmpty() && book != plain_book(panel.book())) {
            panel.set_book(book);
        }
    });
}

void Plugin::unload() {
    recording_.reset();
    delete find_;
    if (dock_ != nullptr) {
        desktop_->removeDockWidget(dock_);
        delete dock_;
    }
    delete opener_;
    lasting_.reset();
    functions_.reset();
    unregister_provider();
    translation_.reset();
}

}  // namespace pipward::desktop
