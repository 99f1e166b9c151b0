// SPDX-License-Identifier: MIT
#include <ogrsf_frmts.h>

#include <algorithm>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_row.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/named_layer.h"
#include "pipward/book/detail/parts_of_change.h"
#include "pipward/book/detail/row_count.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/detail/with_schema.h"
#include "pipward/book/schema.h"

namespace pipward::book::detail {
namespace {

// Rows are counted from 1.
RowWords row_words(std::size_t number) {
    return say("row {0}", number);
}

bool is_wkt(const Column& column) {
    return column.name == wkt_column;
}

void check_shape(const Table& rows, const BookTable& table, Findings& findings) {
    for (const auto& column : rows.shape.columns) {
        if (find_column(table, column.name) == nullptr && !is_wkt(column)) {
            findings.push_back(error({table.name, {}, column.name}, say("The table has no such column."),
                                     say("Use the columns of the book's schema.")));
        }
    }
    for (const auto& column : table.columns) {
        const bool given =
            std::ranges::any_of(rows.shape.columns, [&](const Column& c) { return c.name == column.name; });
        if (column.required && column.initial.empty() && !given) {
            findings.push_back(
                error({table.name, {}, column.name}, say("The column must be given."), say("Add it.")));
        }
    }
}

std::unique_ptr<OGRGeometry> from_wkt(const std::string& text) {
    OGRGeometry* geometry = nullptr;
    OGRGeometryFactory::createFromWkt(text.c_str(), nullptr, &geometry);
    return std::unique_ptr<OGRGeometry>(geometry);
}

std::optional<Finding> check_wkt(const BookTable& table, const Cell& value) {
    const auto* text = std::get_if<std::string>(&value);
    if (text == nullptr) {
        return std::nullopt;
    }
    const auto geometry = from_wkt(*text);
    if (table.geometry != GeometryKind::none && geometry != nullptr &&
        wkbFlatten(geometry->getGeometryType()) == detail::wanted_type(table.geometry)) {
        return std::nullopt;
    }
    return error({table.name, {}, wkt_column, *text},
                 say("The table holds geometries of the kind: {}.", to_text(table.geometry)),
                 say("Give the geometry as well-known text of that kind."));
}

void check_row(const Table& rows, std::size_t index, const BookTable& table, Findings& findings) {
    const auto& row = rows.rows[index];
    if (row.cells.size() != rows.shape.columns.size()) {
        findings.push_back(error({table.name, row_words(index + 1)},
                                 say("The row has not as many cells as the table columns."),
                                 say("Give one cell for each column.")));
        return;
    }
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const auto& name = rows.shape.columns[i].name;
        const auto* column = find_column(table, name);
        auto finding = column != nullptr ? check_cell(*column, row.cells[i]) : check_wkt(table, row.cells[i]);
        if (finding) {
            finding->table = table.name;
            finding->row = row_words(index + 1);
            findings.push_back(std::move(*finding));
        }
    }
}

void set_place(OGRFeature& feature, const Table& rows, const Row& row) {
    if (row.at) {
        auto point = to_ogr(*row.at);
        feature.SetGeometry(&point);
    }
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const auto* text = std::get_if<std::string>(&row.cells[i]);
        if (text != nullptr && is_wkt(rows.shape.columns[i])) {
            feature.SetGeometryDirectly(from_wkt(*text).release());
        }
    }
}

void write_row(Session& session, OGRLayer& layer, const Table& rows, const Row& row,
               std::vector<AddedRow>* written) {
    OGRFeature feature(layer.GetLayerDefn());
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const int field = feature.GetFieldIndex(rows.shape.columns[i].name.c_str());
        if (field >= 0) {
            set_field(feature, field, row.cells[i]);
        }
    }
    set_place(feature, rows, row);
    const auto fid = create_feature(session, layer, feature);
    if (written != nullptr) {
        written->push_back({rows.shape.name, fid, content_of(feature, rows.shape.name)});
    }
}

OGRLayer& layer_with(Session& session, const std::string& location, const Table& rows) {
    auto& layer = named_layer(session, location, rows.shape.name);
    for (const auto& column : rows.shape.columns) {
        if (!is_wkt(column) && layer.GetLayerDefn()->GetFieldIndex(column.name.c_str()) < 0) {
            throw access_error(location, say("The table {} has no column {}.", rows.shape.name, column.name),
                               say("Add the column."));
        }
    }
    return layer;
}

void write_rows(Session& session, OGRLayer& layer, const Table& rows, std::vector<AddedRow>* written) {
    for (std::size_t index = 0; index < rows.rows.size(); ++index) {
        try {
            write_row(session, layer, rows, rows.rows[index], written);
        } catch (const OgrTrouble& trouble) {
            if (!is_taken(trouble)) {
                throw;
            }
            throw Error(Trouble::input, error({rows.shape.name, row_words(index + 1)},
                                              say("The table has a row of this name already."),
                                              say("Use another name, or change the row that is there.")));
        }
    }
}

bool has_heights(const Table& rows) {
    const auto is_high = [](const Cell& cell) {
        const auto* text = std::get_if<std::string>(&cell);
        return text != nullptr && (text->starts_with("LINESTRING Z") || text->starts_with("POLYGON Z"));
    };
    return std::ranges::any_of(rows.rows, [&](const Row& row) {
        bool high = row.at && row.at->height;
        for (std::size_t i = 0; i < row.cells.size() && i < rows.shape.columns.size(); ++i) {
            high = high || (is_wkt(rows.shape.columns[i]) && is_high(row.cells[i]));
        }
        return high;
    });
}

}  // namespace

void check_appended(const Table& rows, Schema schema) {
    const auto* table = find_book_table(rows.shape.name, schema);
    if (table == nullptr) {
        throw Error(Trouble::usage, error({rows.shape.name}, say("The book has no such table."),
                                          say("Name a table of the book.")));
    }
    Findings findings;
    const OgrMessages quiet;
    check_shape(rows, *table, findings);
    if (findings.empty()) {
        for (std::size_t index = 0; index < rows.rows.size(); ++index) {
            check_row(rows, index, *table, findings);
        }
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, findings);
    }
}

void append_in(Session& session, const std::string& location, const Table& rows,
               std::vector<AddedRow>* written) {
    auto& layer = layer_with(session, location, rows);
    const auto before = rows_in(session, rows.shape.name);
    write_rows(session, layer, rows, written);
    expect_rows(session, location, rows.shape.name, before + std::ssize(rows.rows));
    if (has_heights(rows)) {
        allow_heights(session, rows.shape.name);
    }
}

void append_rows(const BookAt& book, const Table& rows, Schema schema) {
    check_appended(rows, schema);
    change_book(book, {rows.shape.name}, default_patience,
                [&](Session& session) { append_in(session, book.location, rows); });
}

}  // namespace pipward::book::detail

namespace pipward::book {

void append_rows(const BookAt& book, const Table& rows) {
    detail::append_rows(book, rows, book_tables());
}

}  // namespace pipward::book
