// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "panel/bloom_bar.h"
#include "pipward/paper/bloom_drawing.h"

namespace pipward::desktop {

/// The season's bars as the printed sheet draws them, one line an accession: a thin line from first bloom to
/// the end of bloom, a box for full bloom (8 in 10 years fall inside), a tick at its median, the day of the
/// forecast. Parents of wanted crosses stand first and in bold. Keyboard: up and down choose a bar, Enter or
/// Space opens it.
class BloomChart : public QWidget {
    Q_OBJECT
  public:
    explicit BloomChart(QWidget* parent = nullptr);

    void show_bars(std::vector<BloomBar> bars, QDate as_of);
    const std::vector<BloomBar>& bars() const { return bars_; }
    /// A line through the day that the map shows while it plays; none for an invalid date.
    void mark_day(const QDate& day);
    /// The bar at a point of the widget, or nothing.
    std::optional<std::size_t> bar_at(const QPoint& point) const;
    /// The horizontal place of a day's noon, in device-independent pixels.
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
    struct Letters {
        int width = 0;  ///< of the widget
        int size = 0;   ///< of the letters
        int line = 0;   ///< from one line to the next
        bool operator==(const Letters&) const = default;
    };
    struct LaidOut {
        Letters letters;
        paper::BloomDrawing drawing;
    };

    Letters letters() const;
    void choose(std::size_t bar);
    void open_chosen();
    paper::ChartMeasures measures() const;
    /// Its upper left corner lies at (margin, margin). Laid out anew only when bars, width or letters change:
    /// an orchard may have thousands of accessions.
    const paper::BloomDrawing& drawing() const;
    int whole_height() const;
    QString words_of(const BloomBar& bar) const;

    std::vector<BloomBar> bars_;
    paper::BloomChart chart_;  ///< the same for the drawing
    double longest_name_ = 0;  ///< as paper::estimated_width() tells it
    mutable std::optional<LaidOut> laid_out_;
    std::optional<std::size_t> chosen_;
    QDate marked_;
};

}  // namespace pipward::desktop
