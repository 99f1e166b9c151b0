// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include "pipward/record/table.h"
#include "record/value_list.h"
#include "text.h"

/// Small makers of what the pages of the note form consist of.
namespace pipward::desktop {

inline QSpinBox* make_count(const char* name, int least, int most) {
    auto* count = new QSpinBox;
    count->setObjectName(QString::fromLatin1(name));
    count->setRange(least, most);
    return count;
}

/// A count that may be left out: one below nought stands for that.
inline QSpinBox* make_optional_count(const char* name, int most, const QString& left_out) {
    auto* count = make_count(name, -1, most);
    count->setSpecialValueText(left_out);
    count->setValue(-1);
    return count;
}

inline QLineEdit* make_text(const char* name) {
    auto* text = new QLineEdit;
    text->setObjectName(QString::fromLatin1(name));
    return text;
}

inline QLabel* make_words() {
    auto* words = new QLabel;
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return words;
}

// Labels stand above their fields: a dock is narrow.
inline QFormLayout* make_rows(QWidget* parent) {
    auto* rows = new QFormLayout(parent);
    rows->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    rows->setRowWrapPolicy(QFormLayout::WrapAllRows);
    return rows;
}

inline Cell text_cell_of(const QString& text) {
    if (text.isEmpty()) {
        return {};
    }
    return from_qt(text);
}
inline Cell text_of(const QLineEdit& field) {
    return text_cell_of(field.text().trimmed());
}
inline Cell text_of(const ValueList& list) {
    return text_cell_of(list.currentData().toString());
}
/// Below nought is unknown.
inline Cell count_of(const QSpinBox& field) {
    if (field.value() < 0) {
        return {};
    }
    return std::int64_t{field.value()};
}
/// The same for a column that holds numbers with parts.
inline Cell number_of(const QSpinBox& field) {
    if (field.value() < 0) {
        return {};
    }
    return static_cast<double>(field.value());
}

}  // namespace pipward::desktop
