// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/bloom_chart.h"

#include <QFontInfo>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <iterator>

#include "panel/chart_painter.h"
#include "panel/table_view.h"
#include "pipward/paper/text.h"
#include "text.h"

namespace pipward::desktop {
namespace {

constexpr int margin = 6;

QColor mixed(const QColor& a, const QColor& b, double share_of_b) {
    const auto mix = [&](int x, int y) { return static_cast<int>(x + (y - x) * share_of_b); };
    return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

paper::BloomBar for_drawing(const BloomBar& bar) {
    paper::BloomBar drawn;
    drawn.name = from_qt(bar.accession);
    drawn.first = from_qt(bar.first);
    drawn.full = {from_qt(bar.full_p10), from_qt(bar.full_p50), from_qt(bar.full_p90)};
    drawn.end = from_qt(bar.end);
    drawn.source = bar.borrowed ? bloom::NeedSource::orchard_mean : bloom::NeedSource::own_observations;
    drawn.seed_parent = bar.wanted;
    return drawn;
}

using Rows = std::vector<paper::DrawnRow>;

// Rows follow each other from the top down.
Rows::const_iterator first_below(const Rows& rows, double y) {
    return std::ranges::upper_bound(rows, y, {}, &paper::DrawnRow::bottom);
}

}  // namespace

BloomChart::BloomChart(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("pipward_bloom_chart"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Bloom of each accession this season"));
    setBackgroundRole(QPalette::Base);
    setAutoFillBackground(true);
}

void BloomChart::show_bars(std::vector<BloomBar> bars, QDate as_of) {
    bars_ = std::move(bars);
    chosen_.reset();
    chart_ = {};
    chart_.as_of = from_qt(as_of);
    std::ranges::transform(bars_, std::back_inserter(chart_.bars), for_drawing);
    paper::span_bars(chart_);
    longest_name_ = 0;
    for (const auto& bar : chart_.bars) {
        longest_name_ = std::max(longest_name_, paper::estimated_width(bar.name));
    }
    laid_out_.reset();
    updateGeometry();
    update();
}

void BloomChart::mark_day(const QDate& day) {
    marked_ = day;
    update();
}

BloomChart::Letters BloomChart::letters() const {
    return {width(), QFontInfo(font()).pixelSize(), fontMetrics().height()};
}

paper::ChartMeasures BloomChart::measures() const {
    const auto now = letters();
    return paper::panel_measures(now.width - 2 * margin, now.size, now.line, longest_name_);
}

const paper::BloomDrawing& BloomChart::drawing() const {
    if (!laid_out_ || laid_out_->letters != letters()) {
        laid_out_ = LaidOut{letters(), paper::bloom_drawing(chart_, measures(), host_wording)};
    }
    return laid_out_->drawing;
}

int BloomChart::whole_height() const {
    return static_cast<int>(std::ceil(drawing().height)) + 2 * margin;
}

QSize BloomChart::sizeHint() const {
    return {420, std::max(160, whole_height())};
}

QSize BloomChart::minimumSizeHint() const {
    return {260, whole_height()};
}

double BloomChart::place_of(const QDate& day) const {
    return margin + paper::plot_axis(chart_, measures()).middle_of(from_qt(day));
}

std::optional<std::size_t> BloomChart::bar_at(const QPoint& point) const {
    const auto& rows = drawing().rows;
    const double y = point.y() - margin;
    const auto found = first_below(rows, y);
    if (found == rows.end() || y < found->top) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - rows.begin());
}

void BloomChart::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    if (bars_.empty()) {
        painter.setPen(readable_text(palette()));
        painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("No bloom to show yet."));
        return;
    }
    const auto& drawn = drawing();
    painter.translate(margin, margin);
    const QRect seen = event->rect().translated(-margin, -margin);
    if (chosen_) {
        const auto& row = drawn.rows[*chosen_];
        painter.fillRect(QRectF(-margin, row.top, width(), row.bottom - row.top),
                         mixed(palette().base().color(), palette().highlight().color(), 0.25));
    }
    ChartPainter marks(painter, palette());
    marks.paint(drawn.head);
    for (auto row = first_below(drawn.rows, seen.top()); row != drawn.rows.end() && row->top <= seen.bottom();
         ++row) {
        marks.paint(row->marks);
    }
    if (marked_.isValid()) {
        const double at = place_of(marked_) - margin;
        painter.setPen(QPen(palette().highlight().color(), 2));
        painter.drawLine(QPointF(at, seen.top()), QPointF(at, seen.bottom()));
    }
}

QString BloomChart::words_of(const BloomBar& bar) const {
    QString words =
        tr("%1: full bloom %2, 80 % prediction interval %3 to %4; first bloom %5, end of bloom %6.")
            .arg(bar.accession, short_day(bar.full_p50), short_day(bar.full_p10), short_day(bar.full_p90),
                 short_day(bar.first), short_day(bar.end));
    if (!bar.warning.isEmpty()) {
        words += QStringLiteral("\n") + bar.warning;
    }
    return words;
}

void BloomChart::choose(std::size_t bar) {
    chosen_ = bar;
    setAccessibleDescription(words_of(bars_[bar]));
    update();
}

void BloomChart::open_chosen() {
    if (chosen_) {
        emit bar_opened(bars_[*chosen_].accession, bars_[*chosen_].trees);
    }
}

void BloomChart::mousePressEvent(QMouseEvent* event) {
    if (const auto bar = bar_at(event->pos())) {
        choose(*bar);
        open_chosen();
    }
}

void BloomChart::keyPressEvent(QKeyEvent* event) {
    if (bars_.empty()) {
        QWidget::keyPressEvent(event);
        return;
    }
    const std::size_t last = bars_.size() - 1;
    switch (event->key()) {
        case Qt::Key_Down:
            choose(chosen_ ? std::min(last, *chosen_ + 1) : 0);
            break;
        case Qt::Key_Up:
            choose(chosen_ && *chosen_ > 0 ? *chosen_ - 1 : 0);
            break;
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Space:
            open_chosen();
            break;
        default:
            QWidget::keyPressEvent(event);
    }
}

bool BloomChart::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        auto* help = static_cast<QHelpEvent*>(event);
        const auto bar = bar_at(help->pos());
        QToolTip::showText(help->globalPos(), bar ? words_of(bars_[*bar]) : QString(), this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace pipward::desktop
