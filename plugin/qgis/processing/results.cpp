// SPDX-License-Identifier: GPL-2.0-or-later
#include "processing/results.h"

#include <qgsgeometry.h>

#include <QDate>

#include "compat.h"
#include "text.h"

namespace pipward::desktop {
namespace {

FieldType field_type(CellType type) {
    switch (type) {
        case CellType::whole:
            return whole_field;
        case CellType::number:
            return real_field;
        case CellType::day:
            return day_field;
        case CellType::yes_no:
            return yes_no_field;
        case CellType::text:
            break;
    }
    return text_field;
}

struct CellValue {
    FieldType type;

    QVariant operator()(std::monostate) const { return unknown_value(type); }
    QVariant operator()(const std::string& text) const { return to_qt(text); }
    QVariant operator()(std::int64_t number) const { return QVariant::fromValue<qlonglong>(number); }
    QVariant operator()(double number) const { return number; }
    QVariant operator()(bool yes) const { return yes; }
    QVariant operator()(const Sentence& sentence) const { return to_qt(sentence.text()); }
    QVariant operator()(Day day) const {
        const auto parts = parts_of(day);
        return QDate(parts.year, parts.month, parts.day);
    }
};

}  // namespace

QString result_name(const TableShape& shape) {
    return to_qt(shape.name).toUpper();
}

QgsFields fields_of(const TableShape& shape) {
    QgsFields fields;
    for (const auto& column : shape.columns) {
        QgsField field(to_qt(column.name), field_type(column.type));
        const QString label = translated(column.label);
        field.setAlias(column.unit.empty() ? label
                                           : QStringLiteral("%1 [%2]").arg(label, to_qt(column.unit)));
        field.setComment(translated(column.description));
        fields.append(field);
    }
    return fields;
}

QgsFeature feature_of(const Row& row, const TableShape& shape, const QgsFields& fields) {
    QgsFeature feature(fields);
    for (std::size_t i = 0; i < shape.columns.size(); ++i) {
        feature.setAttribute(static_cast<int>(i),
                             std::visit(CellValue{field_type(shape.columns[i].type)}, row.cells[i]));
    }
    if (row.at) {
        feature.setGeometry(QgsGeometry::fromPointXY({row.at->x, row.at->y}));
    }
    if (row.line.size() > 1) {
        QgsPolylineXY line;
        for (const auto& point : row.line) {
            line.append({point.x, point.y});
        }
        feature.setGeometry(QgsGeometry::fromPolylineXY(line));
    }
    return feature;
}

}  // namespace pipward::desktop
