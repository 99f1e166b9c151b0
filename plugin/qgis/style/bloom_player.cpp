// SPDX-License-Identifier: GPL-2.0-or-later
#include "style/bloom_player.h"

#include <qgisinterface.h>
#include <qgsinterval.h>
#include <qgsmapcanvas.h>
#include <qgsmessagebar.h>
#include <qgsproject.h>
#include <qgstemporalnavigationobject.h>
#include <qgsvectorlayer.h>
#include <qgsvectorlayertemporalproperties.h>

#include <QCoreApplication>
#include <QDockWidget>
#include <QMainWindow>

#include "compat.h"

namespace pipward::desktop {
namespace {

constexpr double days_a_second = 4;

QDate day_in(const QgsVectorLayer& layer, const char* column, bool last) {
    const int field = layer.fields().lookupField(QString::fromLatin1(column));
    if (field < 0) {
        return {};
    }
    return (last ? layer.maximumValue(field) : layer.minimumValue(field)).toDate();
}

bool is_shown_by_time(QgsVectorLayer& layer) {
    return layer.temporalProperties()->isActive();
}

/// The desktop's own controller, which it lends as something to look at only.
QgsTemporalNavigationObject* controller_of(QgisInterface& desktop) {
    auto* lent = const_cast<QgsTemporalController*>(desktop.mapCanvas()->temporalController());
    return qobject_cast<QgsTemporalNavigationObject*>(lent);
}

// The dock with the buttons to stop, wind and look at a single day.
void show_controls(QgisInterface& desktop) {
    if (auto* dock = desktop.mainWindow()->findChild<QDockWidget*>(QStringLiteral("Temporal Controller"))) {
        dock->show();
    }
}

}  // namespace

QgsDateTimeRange bloom_time_of_project() {
    QDate first;
    QDate last;
    for (auto* layer : QgsProject::instance()->mapLayers()) {
        auto* vector = qobject_cast<QgsVectorLayer*>(layer);
        if (vector == nullptr || !is_shown_by_time(*vector)) {
            continue;
        }
        const QDate from = day_in(*vector, "first_p50", false);
        const QDate to = day_in(*vector, "end_p50", true);
        if (from.isValid() && to.isValid()) {
            first = first.isValid() ? std::min(first, from) : from;
            last = last.isValid() ? std::max(last, to) : to;
        }
    }
    if (!first.isValid()) {
        return {};
    }
    return {midnight_utc(first), midnight_utc(last.addDays(1)), true, false};
}

void play_bloom(QgisInterface& desktop) {
    const auto time = bloom_time_of_project();
    auto* controller = controller_of(desktop);
    if (time.isInfinite() || controller == nullptr) {
        desktop.messageBar()->pushMessage(
            QCoreApplication::translate("pipward::desktop", "Season"),
            QCoreApplication::translate("pipward::desktop",
                                        "No layer of bloom windows is on the map. Plan the season, then open "
                                        "the orchard book from the menu."),
            Qgis::MessageLevel::Info);
        return;
    }
    show_controls(desktop);
    controller->setNavigationMode(animated_time);
    controller->setTemporalExtents(time);
    controller->setFrameDuration(QgsInterval(0, 0, 0, 1, 0, 0, 0));
    controller->setFramesPerSecond(days_a_second);
    controller->rewindToStart();
    controller->playForward();
}

}  // namespace pipward::desktop
