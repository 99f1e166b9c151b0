// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <initializer_list>
#include <memory>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "pipward/book/detail/cell_field.h"

/// How a table of the book is declared once: what it is for people, and its columns, each bound to the field
/// of the record that it fills.
///
///     struct Tool { std::int64_t fid = 0; std::string name; std::optional<std::string> tree; };
///     BookTable tool() {
///         return bound_table<Tool>(
///             {.name = "tool", ..., .rows = &Orchard::tools, .key = {"name"},
///              .columns = {column(&Tool::name, "name", "Name", "What stands on it.")
///                              .known_as(Language::german, {"Werkzeug"}),
///                          column(&Tool::tree, "tree", "Tree", "Where it hangs.")
///                              .refers_to({"tree", "label"})}});
///     }
///
/// The field's type picks the type of the cells, the role, the unit and, where there is only one, the domain
/// (cell_field.h). A field that is an optional may stay unknown; any other is required.
namespace pipward::book::detail {

/// Adds words for a value that an open column often has.
void add_usual(std::vector<UsualValue>& usual, std::string_view value, Language language,
               const std::vector<std::string_view>& words);

/// A column and the field of a record that it fills.
template <class Record>
struct BoundColumn {
    BookColumn told;

    BoundColumn&& in(std::string_view unit) && {
        told.unit = unit;
        return std::move(*this);
    }
    /// The name of a FieldDomain.
    BoundColumn&& within(std::string_view domain) && {
        told.domain = domain;
        return std::move(*this);
    }
    BoundColumn&& refers_to(Reference to) && {
        told.references.push_back(to);
        told.role = ColumnRole::reference;
        return std::move(*this);
    }
    /// A name that may also be another table's; `words` tell what such names are names of.
    BoundColumn&& or_to(Reference to, Sentence words) && {
        told.references.push_back(to);
        told.refers_to = std::move(words);
        return std::move(*this);
    }
    /// What a new row gets, as SQL text.
    BoundColumn&& initially(std::string_view value) && {
        told.initial = value;
        return std::move(*this);
    }
    /// Of a field that is no optional: an unknown leaves the record's own initial value.
    BoundColumn&& may_be_unknown() && {
        told.required = false;
        return std::move(*this);
    }
    /// A text that may be longer than a line.
    BoundColumn&& as_remark() && {
        told.role = ColumnRole::remark;
        return std::move(*this);
    }
    /// Words that people head it with, the likelier first; called again, the less likely ones.
    BoundColumn&& known_as(Language language, std::initializer_list<std::string_view> words) && {
        add_words(told.known_as, language, words);
        return std::move(*this);
    }
    /// What people write for a value of an open column.
    BoundColumn&& usual(std::string_view value, Language language,
                        std::initializer_list<std::string_view> words) && {
        add_usual(told.usual, value, language, words);
        return std::move(*this);
    }
    /// The descriptor of passports (FAO & Bioversity International, MCPD V2.1, 2015) that tells it.
    BoundColumn&& in_passports(std::string_view descriptor) && {
        told.passport = descriptor;
        return std::move(*this);
    }
    /// The tab of the form that it stands on. Tabs follow each other as their first columns do; a column that
    /// names none stands on the first.
    BoundColumn&& on_tab(Sentence title) && {
        told.tab = std::move(title);
        return std::move(*this);
    }
    /// On its tab it precedes a column that is declared earlier.
    BoundColumn&& shown_before(std::string_view other) && {
        told.shown_before = other;
        return std::move(*this);
    }
    /// A layer of trees may tell it of their accessions.
    BoundColumn&& told_with_trees() && {
        told.told_with_trees = true;
        return std::move(*this);
    }
};

template <class Record, CellField Field>
BoundField bound_field(Field Record::*field) {
    return {
        .show =
            [field](const void* record) { return show_field(static_cast<const Record*>(record)->*field); },
        .fill = [field](const Cell& cell,
                        void* record) { fill_field(cell, static_cast<Record*>(record)->*field); }};
}

/// Binds a field to its column's name, label (sentence case) and description (one sentence).
template <class Record, CellField Field>
BoundColumn<Record> column(Field Record::*field, std::string_view name, std::string_view label,
                           std::string_view description) {
    const auto form = field_form<Field>();
    BookColumn told;
    told.name = name;
    told.label = label;
    told.description = description;
    told.type = form.type;
    told.role = form.role;
    told.unit = form.unit;
    told.domain = form.domain;
    told.required = !OptionalOf<Field>::value;
    told.field = bound_field(field);
    return {std::move(told)};
}

/// Where an orchard keeps the records: a member of it, or a function of it that gives the list.
template <class Record>
using ListOf = std::vector<Record> Orchard::*;

/// A table as it is declared. Where it has geometry, one of `point`, `line` and `areas` says so.
template <class Record, class Rows = ListOf<Record>>
struct TableForm {
    std::string_view name;
    std::string_view title;
    std::string_view description;
    Rows rows{};
    std::optional<MapPoint> Record::*point = nullptr;
    std::vector<MapPoint> Record::*line = nullptr;
    bool areas = false;  ///< a polygon a row, which no record keeps
    std::vector<std::string_view> key{};
    Sentence row_words{};
    Sentence entry_words{};
    bool takes_layers = false;
    bool needs_place = false;
    bool long_series = false;
    std::string_view day_column{};  ///< where not given, the first required day
    std::vector<BoundColumn<Record>> columns{};
};

template <class Record, class Rows>
GeometryKind geometry_of(const TableForm<Record, Rows>& form) {
    return form.point != nullptr  ? GeometryKind::point
           : form.line != nullptr ? GeometryKind::line
           : form.areas           ? GeometryKind::polygon
                                  : GeometryKind::none;
}

/// Fields of a record that are no columns.
template <class Record>
struct Frame {
    std::optional<MapPoint> Record::*point = nullptr;
    std::vector<MapPoint> Record::*line = nullptr;

    void fill(const BookRow& row, Record& record) const {
        record.fid = row.fid;
        if (point != nullptr) {
            record.*point = row.at;
        }
        if (line != nullptr) {
            record.*line = row.line;
        }
    }
    void show(const Record& record, BookRow& row) const {
        row.fid = record.fid;
        if (point != nullptr) {
            row.at = record.*point;
        }
        if (line != nullptr) {
            row.line = record.*line;
        }
    }
};

using Fields = std::shared_ptr<const std::vector<BoundField>>;

template <class Record, class Rows>
BoundRecords bound_records(const Rows& rows, const Frame<Record>& frame, const Fields& fields) {
    return {.type = typeid(Record),
            .add =
                [=](Orchard& orchard, const BookRow& row) {
                    auto& record = std::invoke(rows, orchard).emplace_back();
                    frame.fill(row, record);
                    for (std::size_t i = 0; i < fields->size(); ++i) {
                        (*fields)[i].fill(row.cells[i], &record);
                    }
                },
            .show =
                [=](const void* record) {
                    BookRow row;
                    frame.show(*static_cast<const Record*>(record), row);
                    for (const auto& field : *fields) {
                        row.cells.push_back(field.show(record));
                    }
                    return row;
                },
            .all =
                [=](const Orchard& orchard) {
                    std::vector<const void*> all;
                    for (const auto& record : std::invoke(rows, orchard)) {
                        all.push_back(&record);
                    }
                    return all;
                },
            .remove =
                [=](Orchard& orchard, std::int64_t fid) {
                    std::erase_if(std::invoke(rows, orchard),
                                  [&](const Record& record) { return record.fid == fid; });
                }};
}

/// What follows from the columns and the key: which column is the row's own name, and which its day.
BookTable finished(BookTable table);

template <class Record, class Rows = ListOf<Record>>
BookTable bound_table(TableForm<Record, Rows> form) {
    BookTable table;
    table.name = form.name;
    table.title = form.title;
    table.description = form.description;
    table.geometry = geometry_of(form);
    table.key = std::move(form.key);
    table.row_words = std::move(form.row_words);
    table.entry_words = std::move(form.entry_words);
    table.takes_layers = form.takes_layers;
    table.needs_place = form.needs_place;
    table.long_series = form.long_series;
    table.day_column = form.day_column;
    const auto fields = std::make_shared<std::vector<BoundField>>();
    for (auto& column : form.columns) {
        fields->push_back(column.told.field);
        table.columns.push_back(std::move(column.told));
    }
    table.records = bound_records<Record>(form.rows, Frame<Record>{form.point, form.line}, fields);
    return finished(std::move(table));
}

}  // namespace pipward::book::detail
