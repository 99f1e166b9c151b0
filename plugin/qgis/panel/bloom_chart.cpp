// SPDX-License-Identifier: GPL-2.0-or-later
#include "panel/bloom_chart.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "text.h"

namespace pipward::desktop {
namespace {

constexpr int margin_days = 3;
constexpr int widest_name = 170;

QColor mixed(const QColor& a, const QColor& b, double share_of_b) {
    const auto mix = [&](int x, int y) { return static_cast<int>(x + (y - x) * share_of_b); };
    return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

}  // namespace

/// Blue bands and an orange line keep apart for every common kind of colour blindness, on light and on dark.
struct BloomChart::Inks {
    QColor ground;
    QColor text;
    QColor faint;
    QColor band;
    QColor line;
    QColor today;
    QColor chosen;

    explicit Inks(const QPalette& palette) : ground(palette.base().color()), text(palette.text().color()) {
        const bool dark = ground.lightness() < 128;
        faint = mixed(ground, text, 0.18);
        band = dark ? QColor(0x6a, 0xa6, 0xdc) : QColor(0x2f, 0x6c, 0xa8);
        line = mixed(ground, text, 0.55);
        today = dark ? QColor(0xf0, 0xa0, 0x40) : QColor(0xb8, 0x56, 0x00);
        chosen = mixed(ground, palette.highlight().color(), 0.25);
    }
};

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
    as_of_ = as_of;
    chosen_.reset();
    from_ = as_of;
    to_ = as_of;
    for (const auto& bar : bars_) {
        from_ = std::min({from_, bar.first, bar.full_p10});
        to_ = std::max({to_, bar.end, bar.full_p90});
    }
    from_ = from_.addDays(-margin_days);
    to_ = to_.addDays(margin_days);
    updateGeometry();
    update();
}

int BloomChart::row_height() const {
    return fontMetrics().height() + 8;
}

int BloomChart::head_height() const {
    return 2 * fontMetrics().height() + 8;
}

int BloomChart::name_width() const {
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    int widest = 40;
    for (const auto& bar : bars_) {
        widest = std::max(widest, metrics.horizontalAdvance(bar.accession));
    }
    return std::min({widest, widest_name, width() / 3}) + 14;
}

QSize BloomChart::sizeHint() const {
    return {420, head_height() + row_height() * std::max(3, static_cast<int>(bars_.size())) + 4};
}

QSize BloomChart::minimumSizeHint() const {
    return {260, head_height() + row_height() * static_cast<int>(bars_.size()) + 4};
}

double BloomChart::place_of(const QDate& day) const {
    const double left = name_width();
    const double days = std::max<double>(1, static_cast<double>(from_.daysTo(to_)));
    return left + (width() - left - 8) * static_cast<double>(from_.daysTo(day)) / days;
}

std::optional<std::size_t> BloomChart::bar_at(const QPoint& point) const {
    const int row = point.y() < head_height() ? -1 : (point.y() - head_height()) / row_height();
    if (row < 0 || row >= static_cast<int>(bars_.size())) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(row);
}

void BloomChart::draw_axis(QPainter& painter, const Inks& inks) const {
    draw_months(painter, inks);
    const int line = fontMetrics().height();
    const int widest = fontMetrics().horizontalAdvance(QStringLiteral("00 "));
    double free_from = 0;
    for (QDate day = from_; day <= to_; day = day.addDays(1)) {
        if (day.dayOfWeek() != Qt::Monday) {
            continue;
        }
        const double x = place_of(day);
        painter.setPen(inks.faint);
        painter.drawLine(QPointF(x, head_height() - 2), QPointF(x, height()));
        if (x - widest / 2.0 >= free_from) {
            painter.setPen(inks.line);
            painter.drawText(QRectF(x - 14, line, 28, line), Qt::AlignCenter, QString::number(day.day()));
            free_from = x + widest / 2.0;
        }
    }
}

void BloomChart::draw_months(QPainter& painter, const Inks& inks) const {
    painter.setPen(inks.text);
    for (QDate day = from_; day <= to_; day = day.addDays(day.daysInMonth() - day.day() + 1)) {
        const QString name = QLocale().standaloneMonthName(day.month());
        const double x = place_of(day);
        const QDate next = day.addDays(day.daysInMonth() - day.day() + 1);
        const double room = (next <= to_ ? place_of(next) : width()) - x;
        if (fontMetrics().horizontalAdvance(name) + 4 <= room) {
            painter.drawText(QPointF(x + 2, fontMetrics().height() - 2), name);
        }
    }
}

void BloomChart::draw_bar(QPainter& painter, const Inks& inks, std::size_t index) const {
    const auto& bar = bars_[index];
    const int top = head_height() + row_height() * static_cast<int>(index);
    const double middle = top + row_height() / 2.0;
    if (chosen_ == index) {
        painter.fillRect(QRect(0, top, width(), row_height()), inks.chosen);
    }
    QFont font = this->font();
    font.setBold(bar.wanted);
    painter.setFont(font);
    painter.setPen(inks.text);
    const QRect place(6, top, name_width() - 12, row_height());
    painter.drawText(place, Qt::AlignVCenter | Qt::AlignLeft,
                     QFontMetrics(font).elidedText(bar.accession, Qt::ElideRight, place.width()));
    painter.setFont(this->font());
    painter.setPen(QPen(inks.line, 1.5));
    painter.drawLine(QPointF(place_of(bar.first), middle), QPointF(place_of(bar.end), middle));
    const double left = place_of(bar.full_p10);
    const double right = std::max(left + 3, place_of(bar.full_p90));
    painter.fillRect(QRectF(left, middle - 5, right - left, 10), inks.band);
    painter.setPen(QPen(inks.ground, 4));
    const double median = place_of(bar.full_p50);
    painter.drawLine(QPointF(median, middle - 7), QPointF(median, middle + 7));
    painter.setPen(QPen(inks.text, 2));
    painter.drawLine(QPointF(median, middle - 8), QPointF(median, middle + 8));
}

void BloomChart::draw_today(QPainter& painter, const Inks& inks) const {
    const double x = place_of(as_of_);
    painter.setPen(QPen(inks.today, 1.5, Qt::DashLine));
    painter.drawLine(QPointF(x, head_height() - 4), QPointF(x, height()));
}

void BloomChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Inks inks(palette());
    if (bars_.empty()) {
        painter.setPen(inks.line);
        painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("No bloom to show yet."));
        return;
    }
    draw_axis(painter, inks);
    for (std::size_t index = 0; index < bars_.size(); ++index) {
        draw_bar(painter, inks, index);
    }
    draw_today(painter, inks);
}

QString BloomChart::words_of(const BloomBar& bar) const {
    QString words = tr("%1: full bloom %2, most likely between %3 and %4; first flowers %5, over by %6.")
                        .arg(bar.accession, short_day(bar.full_p50), short_day(bar.full_p10),
                             short_day(bar.full_p90), short_day(bar.first), short_day(bar.end));
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
