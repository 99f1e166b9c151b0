// SPDX-License-Identifier: GPL-2.0-or-later
#include "record/value_list.h"

#include <QAbstractItemView>
#include <QScrollBar>
#include <QStylePainter>
#include <algorithm>

namespace pipward::desktop {
namespace {

constexpr int least_letters = 12;

}  // namespace

ValueList::ValueList(const char* name) {
    setObjectName(QString::fromLatin1(name));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(least_letters);
    connect(this, &QComboBox::currentTextChanged, this, &QWidget::setToolTip);
}

void ValueList::add(const QString& words, const QVariant& value) {
    addItem(words, value);
}

void ValueList::fill(const std::vector<HarvestLine>& lines) {
    const auto chosen = currentData();
    const QSignalBlocker quiet(this);
    clear();
    for (const auto& line : lines) {
        add(line.words, line.value);
    }
    setCurrentIndex(std::max(findData(chosen), lines.empty() ? -1 : 0));
    setToolTip(currentText());
}

void ValueList::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const auto room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this).width();
    option.currentText = fontMetrics().elidedText(currentText(), Qt::ElideRight, room);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

void ValueList::showPopup() {
    const auto wanted = view()->sizeHintForColumn(0) + view()->verticalScrollBar()->sizeHint().width();
    view()->setMinimumWidth(std::max(width(), wanted));
    QComboBox::showPopup();
}

}  // namespace pipward::desktop
