// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/chart_painter.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <cstdlib>

#include "text.h"

namespace pipward::desktop {
namespace {

constexpr double rim = 4;

double before(paper::Anchor anchor, double width) {
    return anchor == paper::Anchor::start ? 0 : anchor == paper::Anchor::middle ? width / 2 : width;
}

}  // namespace

QColor readable_text(const QPalette& palette) {
    constexpr int least_difference = 100;
    const QColor text = palette.text().color();
    const int ground = palette.base().color().lightness();
    if (std::abs(text.lightness() - ground) >= least_difference) {
        return text;
    }
    return ground < 128 ? QColor(Qt::white) : QColor(Qt::black);
}

ChartPainter::ChartPainter(QPainter& painter, const QPalette& palette)
    : painter_(painter),
      palette_(palette),
      inks_(paper::chart_inks(palette.base().color().lightness() < 128)) {
    painter_.setRenderHint(QPainter::Antialiasing);
}

void ChartPainter::paint(const paper::ChartMarks& marks) {
    for (const auto& mark : marks) {
        std::visit(*this, mark);
    }
}

QColor ChartPainter::colour(paper::Ink ink) const {
    switch (ink) {
        case paper::Ink::none:
            return Qt::transparent;
        case paper::Ink::paper:
            return palette_.base().color();
        case paper::Ink::ink:
            return readable_text(palette_);
        default:
            return QColor(to_qt(paper::colour_of(ink, inks_)));
    }
}

QPen ChartPainter::pen(const paper::ChartLook& look) const {
    if (look.stroke == paper::Ink::none) {
        return Qt::NoPen;
    }
    QPen pen(colour(look.stroke), look.width, Qt::SolidLine, Qt::FlatCap);
    if (!look.dashes.empty()) {
        // Of a pen they count in its own width.
        QVector<qreal> dashes;
        for (const double length : look.dashes) {
            dashes << length / look.width;
        }
        pen.setDashPattern(dashes);
    }
    return pen;
}

void ChartPainter::operator()(const paper::TextMark& mark) {
    const auto look = paper::chart_look(mark.role);
    const QFont plain = painter_.font();
    QFont font = plain;
    font.setBold(look.bold);
    const QString text = to_qt(mark.text);
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    const QPointF at(mark.at.x - before(mark.anchor, width), mark.at.y);
    if (mark.over) {
        QPainterPath letters;
        letters.addText(at, font, text);
        painter_.strokePath(letters,
                            QPen(colour(paper::Ink::paper), rim, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    }
    painter_.setFont(font);
    painter_.setPen(colour(look.fill));
    painter_.drawText(at, text);
    painter_.setFont(plain);
}

void ChartPainter::operator()(const paper::LineMark& mark) {
    painter_.setPen(pen(paper::chart_look(mark.role)));
    painter_.drawLine(QPointF(mark.from.x, mark.from.y), QPointF(mark.to.x, mark.to.y));
}

void ChartPainter::operator()(const paper::BoxMark& mark) {
    const auto look = paper::chart_look(mark.role);
    painter_.setPen(pen(look));
    painter_.setBrush(colour(look.fill));
    painter_.drawRoundedRect(QRectF(mark.at.x, mark.at.y, mark.width, mark.height), paper::box_corner,
                             paper::box_corner);
    painter_.setBrush(Qt::NoBrush);
}

}  // namespace pipward::desktop
