// SPDX-License-Identifier: GPL-2.0-or-later
#include "plugin.h"

#include <qgisinterface.h>
#include <qgsapplication.h>
#include <qgsdockwidget.h>
#include <qgsprocessingregistry.h>

#include "expression/functions.h"
#include "find/find_desk.h"
#include "panel/season_dock.h"
#include "processing/provider.h"
#include "record/recording.h"
#include "style/book_opener.h"
#include "style/lasting_keeper.h"
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
        noting_ = add_noting(*desktop_);
    }
    find_ = new FindDesk(desktop_, dock_ == nullptr ? nullptr : dock_->findChild<SeasonPanel*>(), this);
}

void Plugin::unload() {
    noting_.reset();
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
