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
#include <QLabel>
#include <QLocale>
#include <QMainWindow>
#include <utility>

namespace pipward::desktop {
namespace {

constexpr double days_a_second = 4;
constexpr int label_margin = 10;
constexpr double label_growth = 1.8;

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

// The dock with the buttons to wind and look at a single day.
QDockWidget* controls_of(QgisInterface& desktop) {
    return desktop.mainWindow()->findChild<QDockWidget*>(QStringLiteral("Temporal Controller"));
}

QLabel* make_day_label(QWidget* map) {
    auto* label = new QLabel(map);
    label->setObjectName(QStringLiteral("pipward_day_shown"));
    label->setAutoFillBackground(true);
    label->setMargin(label_margin);
    label->setAttribute(Qt::WA_TransparentForMouseEvents);
    QFont font = label->font();
    font.setBold(true);
    font.setPointSizeF(label_growth * font.pointSizeF());
    label->setFont(font);
    label->move(label_margin, label_margin);
    return label;
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

BloomPlayer::BloomPlayer(QgisInterface& desktop, QObject* parent)
    : QObject(parent), desktop_(desktop), controller_(controller_of(desktop)) {
    if (controller_ != nullptr) {
        connect(controller_, &QgsTemporalController::updateTemporalRange, this, &BloomPlayer::show_day);
        connect(controller_, &QgsTemporalNavigationObject::stateChanged, this, [this](auto state) {
            if (state == time_stands_still) {
                look_at_end();
            }
        });
    }
}

BloomPlayer::~BloomPlayer() {
    stop();
}

void BloomPlayer::start() {
    const auto time = bloom_time_of_project();
    if (time.isInfinite() || controller_ == nullptr) {
        desktop_.messageBar()->pushMessage(
            QCoreApplication::translate("pipward::desktop", "Season"),
            QCoreApplication::translate("pipward::desktop",
                                        "No layer of bloom windows is on the map. Plan the season, then open "
                                        "the orchard book from the menu."),
            Qgis::MessageLevel::Info);
        return;
    }
    auto* controls = controls_of(desktop_);
    before_ = Before{controller_->navigationMode(),         controller_->temporalExtents(),
                     controller_->frameDuration(),          controller_->framesPerSecond(),
                     desktop_.mapCanvas()->temporalRange(), controls != nullptr && controls->isVisible()};
    if (controls != nullptr) {
        controls->show();
    }
    day_ = make_day_label(desktop_.mapCanvas());
    controller_->setNavigationMode(animated_time);
    controller_->setTemporalExtents(time);
    controller_->setFrameDuration(QgsInterval(0, 0, 0, 1, 0, 0, 0));
    controller_->setFramesPerSecond(days_a_second);
    controller_->rewindToStart();
    emit playing_changed(true);
    controller_->playForward();
}

void BloomPlayer::stop() {
    if (!before_ || controller_ == nullptr) {
        return;
    }
    const Before before = *std::exchange(before_, std::nullopt);
    controller_->pause();
    controller_->setFrameDuration(before.frame);
    controller_->setFramesPerSecond(before.frames_a_second);
    controller_->setTemporalExtents(before.extents);
    controller_->setNavigationMode(before.mode);
    desktop_.mapCanvas()->setTemporalRange(before.shown);
    if (auto* controls = controls_of(desktop_); controls != nullptr && !before.controls_were_visible) {
        controls->hide();
    }
    delete day_;
    emit day_shown({});
    emit playing_changed(false);
}

void BloomPlayer::show_day(const QgsDateTimeRange& shown) {
    if (!is_playing() || shown.isInfinite() || day_ == nullptr) {
        return;
    }
    const QDate day = shown.begin().date();
    day_->setText(QLocale().toString(day, QLocale::LongFormat));
    day_->adjustSize();
    day_->show();
    emit day_shown(day);
}

// Paused on the way, the day is looked at: only the last one ends the play.
void BloomPlayer::look_at_end() {
    if (is_playing() && controller_->currentFrameNumber() + 1 >= controller_->totalFrameCount()) {
        stop();
    }
}

}  // namespace pipward::desktop
