// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>

#include "pipward/book/book.h"
#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/parts_of_change.h"
#include "pipward/book/detail/results.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/schema.h"

namespace pipward::book {
namespace {

Error refused(const std::string& table, const Sentence& message, const Sentence& remedy) {
    return {Trouble::access, Finding{.level = Level::error,
                                     .table = table,
                                     .row = {},
                                     .field = {},
                                     .value = {},
                                     .message = message,
                                     .remedy = remedy}};
}

int index_of_layer(detail::Session& session, const std::string& name) {
    for (int index = 0; index < session.dataset->GetLayerCount(); ++index) {
        if (name == session.dataset->GetLayer(index)->GetName()) {
            return index;
        }
    }
    return -1;
}

bool hidden_object_exists(detail::Session& session, const std::string& name) {
    return !session.server && !detail::query(session, "SELECT 1 FROM sqlite_master WHERE lower(name) = " +
                                                          detail::quoted_text(name))
                                   .empty();
}

void drop_old(detail::Session& session, const std::string& name) {
    const int index = index_of_layer(session, name);
    if (index < 0 ? hidden_object_exists(session, name) : !detail::is_result(session, name)) {
        throw refused(
            name, say("The book has a table of this name that is not a result of ours; it was not touched."),
            say("Rename that table."));
    }
    if (index < 0) {
        return;
    }
    const auto before = session.messages->failures();
    detail::expect_success(session, before, session.dataset->DeleteLayer(index) != OGRERR_NONE,
                           "DeleteLayer");
}

OGRSpatialReference crs_of_trees(detail::Session& session) {
    OGRLayer* trees = session.dataset->GetLayerByName("tree");
    const auto* crs = trees == nullptr ? nullptr : trees->GetSpatialRef();
    if (crs == nullptr) {
        throw refused("tree", say("The layer of trees is missing or has no coordinate system."),
                      say("Check the book with book-check."));
    }
    return *crs;
}

void create_fields(detail::Session& session, OGRLayer& layer, const TableShape& shape) {
    for (const auto& column : shape.columns) {
        OGRFieldDefn field(column.name.c_str(), detail::field_type(column.type, OFTInteger64));
        if (column.type == CellType::yes_no) {
            field.SetSubType(OFSTBoolean);
        }
        const auto before = session.messages->failures();
        detail::expect_success(session, before, layer.CreateField(&field) != OGRERR_NONE, "CreateField");
    }
}

void write_rows(detail::Session& session, OGRLayer& layer, const Table& table) {
    for (const auto& row : table.rows) {
        OGRFeature feature(layer.GetLayerDefn());
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            detail::set_field(feature, static_cast<int>(i), row.cells[i]);
        }
        if (row.at && table.shape.has_points) {
            auto point = detail::to_ogr(*row.at);
            feature.SetGeometry(&point);
        }
        const auto before = session.messages->failures();
        detail::expect_success(session, before, layer.CreateFeature(&feature) != OGRERR_NONE,
                               "CreateFeature");
    }
}

void index_points(detail::Session& session, const TableShape& shape) {
    if (shape.has_points && !session.server) {
        detail::query(session,
                      fmt::format("SELECT CreateSpatialIndex({}, 'geom')", detail::quoted_text(shape.name)));
    }
}

void replace_one(detail::Session& session, const Table& table) {
    const auto& shape = table.shape;
    const auto crs = crs_of_trees(session);
    drop_old(session, shape.name);
    auto* layer =
        detail::create_layer(session,
                             {.name = shape.name,
                              .title = shape.title,
                              .description = detail::marked(shape.description),
                              .geometry = shape.has_points ? GeometryKind::point : GeometryKind::none,
                              .indexed = false},
                             crs);
    create_fields(session, *layer, shape);
    write_rows(session, *layer, table);
    index_points(session, shape);
    if (std::ranges::any_of(table.rows, [](const Row& row) { return row.at && row.at->height; })) {
        detail::allow_heights(session, shape.name);
    }
    std::vector<detail::ColumnWords> words;
    for (const auto& column : shape.columns) {
        words.push_back(detail::words_of(column));
    }
    detail::describe_columns(session, shape.name, words);
}

}  // namespace

void detail::check_results(std::span<const Table> results) {
    for (const auto& table : results) {
        if (std::ranges::find(result_table_names(), table.shape.name) == result_table_names().end()) {
            throw refused(table.shape.name, say("This is not the name of a result table."),
                          say("Only result tables are ever replaced."));
        }
        for (const auto& row : table.rows) {
            if (row.cells.size() != table.shape.columns.size()) {
                throw refused(table.shape.name, say("A row has not as many cells as the table has columns."),
                              say("This is a fault of the program; please report it."));
            }
        }
    }
}

void detail::replace_in(detail::Session& session, std::span<const Table> results) {
    if (!session.server) {
        detail::prepare_descriptions(session);
    }
    for (const auto& table : results) {
        replace_one(session, table);
    }
}

void replace_results(const std::string& location, std::span<const Table> results, Patience patience) {
    detail::check_results(results);
    std::vector<std::string> names;
    for (const auto& table : results) {
        names.push_back(table.shape.name);
    }
    detail::change_book(location, names, patience,
                        [&](detail::Session& session) { detail::replace_in(session, results); });
}

}  // namespace pipward::book
