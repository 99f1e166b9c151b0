// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QPainter>
#include <QPalette>

#include "pipward/paper/chart_marks.h"

namespace pipward::desktop {

/// The palette's text; black or white where that cannot be read on the palette's base: themes made of style
/// sheets change the one without the other.
QColor readable_text(const QPalette& palette);

/// Paints what the library lays out for a chart, a drawing unit a pixel. Ground and text take the palette's
/// colours, the rest the chart's own for a light or a dark ground.
class ChartPainter {
  public:
    ChartPainter(QPainter& painter, const QPalette& palette);

    void paint(const paper::ChartMarks& marks);

    void operator()(const paper::TextMark& mark);
    void operator()(const paper::LineMark& mark);
    void operator()(const paper::BoxMark& mark);

  private:
    QColor colour(paper::Ink ink) const;
    QPen pen(const paper::ChartLook& look) const;

    QPainter& painter_;
    const QPalette& palette_;
    const paper::Inks& inks_;
};

}  // namespace pipward::desktop
