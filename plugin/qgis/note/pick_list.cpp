// SPDX-License-Identifier: GPL-2.0-or-later
#include "note/pick_list.h"

#include <QAbstractItemView>
#include <QScrollBar>
#include <QStylePainter>
#include <algorithm>

namespace pipward::desktop {
namespace {

constexpr int least_letters = 12;

}  // namespace

PickList::PickList(const char* name) {
    setObjectName(QString::fromLatin1(name));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(least_letters);
    connect(this, &QComboBox::currentTextChanged, this, &QWidget::setToolTip);
}

void PickList::add(const QString& words, const QVariant& value) {
    addItem(words, value);
}

void PickList::fill(const std::vector<PickLine>& lines) {
    const auto chosen = currentData();
    const QSignalBlocker quiet(this);
    clear();
    for (const auto& line : lines) {
        add(line.words, line.value);
    }
    setCurrentIndex(std::max(findData(chosen), lines.empty() ? -1 : 0));
    setToolTip(currentText());
}

void PickList::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const auto room =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this).width();
    option.currentText = fontMetrics().elidedText(currentText(), Qt::ElideRight, room);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

void PickList::showPopup() {
    const auto wanted = view()->sizeHintForColumn(0) + view()->verticalScrollBar()->sizeHint().width();
    view()->setMinimumWidth(std::max(width(), wanted));
    QComboBox::showPopup();
}

}  // namespace pipward::desktop
