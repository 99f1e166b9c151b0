// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "panel/bloom_bar.h"

namespace pipward::desktop {

/// The season's bars: a thin line from first bloom to the end of bloom, a band for full bloom (8 in 10 years
/// fall inside), a tick at its median, today's line. Colours come from the palette; shape and place alone
/// tell the same. Keyboard: up and down choose a bar, Enter or Space opens it.
class BloomChart : public QWidget {
    Q_OBJECT
  public:
    explicit BloomChart(QWidget* parent = nullptr);

    void show_bars(std::vector<BloomBar> bars, QDate as_of);
    const std::vector<BloomBar>& bars() const { return bars_; }
    /// The bar at a point of the widget, or nothing.
    std::optional<std::size_t> bar_at(const QPoint& point) const;
    /// The horizontal place of a day, in device-independent pixels.
    double place_of(const QDate& day) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  signals:
    void bar_opened(const QString& accession, const QStringList& trees);

  protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

  private:
    struct Inks;

    void choose(std::size_t bar);
    void open_chosen();
    void draw_axis(QPainter& painter, const Inks& inks) const;
    void draw_months(QPainter& painter, const Inks& inks) const;
    void draw_bar(QPainter& painter, const Inks& inks, std::size_t index) const;
    void draw_today(QPainter& painter, const Inks& inks) const;
    int row_height() const;
    int head_height() const;
    int name_width() const;
    QString words_of(const BloomBar& bar) const;

    std::vector<BloomBar> bars_;
    QDate as_of_;
    QDate from_;
    QDate to_;
    std::optional<std::size_t> chosen_;
};

}  // namespace pipward::desktop
