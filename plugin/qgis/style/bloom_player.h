// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsinterval.h>
#include <qgsrange.h>

#include <QDate>
#include <QObject>
#include <QPointer>
#include <optional>

#include "compat.h"

class QLabel;
class QgisInterface;

namespace pipward::desktop {

/// From the earliest first bloom to the latest end of bloom in the project's layers of bloom windows, by
/// their medians; infinite where there is none.
QgsDateTimeRange bloom_time_of_project();

/// Lets the map play through the bloom, a day a step, with the day in large letters on it, and leaves the map
/// as it was found: stopped by the user, at the end, and when the player is deleted.
class BloomPlayer : public QObject {
    Q_OBJECT
  public:
    explicit BloomPlayer(QgisInterface& desktop, QObject* parent = nullptr);
    ~BloomPlayer() override;

    bool is_playing() const { return before_.has_value(); }
    /// Plays, or tells what is missing for it.
    void start();
    void stop();

  signals:
    void playing_changed(bool playing);
    /// An invalid date when no day is shown any more.
    void day_shown(const QDate& day);

  private:
    struct Before {
        TimeMode mode;
        QgsDateTimeRange extents;
        QgsInterval frame;
        double frames_a_second;
        QgsDateTimeRange shown;
        bool controls_were_visible;
    };
    void show_day(const QgsDateTimeRange& shown);
    void look_at_end();

    QgisInterface& desktop_;
    QPointer<QgsTemporalNavigationObject> controller_;
    QPointer<QLabel> day_;
    std::optional<Before> before_;
};

}  // namespace pipward::desktop
