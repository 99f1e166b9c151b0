// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <algorithm>

#include "pipward/book/book.h"
#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/parts_of_change.h"
#include "pipward/book/detail/results.h"
#include "pipward/book/detail/row_count.h"
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
    // A server lists a table without geometry only once it has been asked for by its name.
    const bool is_layer = session.dataset->GetLayerByName(name.c_str()) != nullptr;
    if (is_layer ? !detail::is_result(session, name) : hidden_object_exists(session, name)) {
        throw refused(
            name, say("The book has a table of this name that is not a result of ours; it was not touched."),
            say("Rename that table."));
    }
    if (!is_layer) {
        return;
    }
    const auto before = session.messages->failures();
    const int index = index_of_layer(session, name);
    if (index < 0) {
        detail::run_sql(session, "DROP TABLE " + detail::quoted_name(name));
    } else {
        detail::expect_success(session, before, session.dataset->DeleteLayer(index) != OGRERR_NONE,
                               "DeleteLayer");
    }
}

bool has_columns(const OGRFeatureDefn& definition, const TableShape& shape) {
    if (definition.GetFieldCount() != std::ssize(shape.columns)) {
        return false;
    }
    for (int field = 0; field < definition.GetFieldCount(); ++field) {
        const auto& column = shape.columns[static_cast<std::size_t>(field)];
        const auto* stored = definition.GetFieldDefn(field);
        if (column.name != stored->GetNameRef() || column.type != detail::cell_type(*stored)) {
            return false;
        }
    }
    return true;
}

// Whether the rows of `table` fit into the result as the book has it.
bool has_form(detail::Session& session, OGRLayer& layer, const TableShape& shape,
              const OGRSpatialReference& crs) {
    const auto* own = layer.GetSpatialRef();
    const bool same_place = shape.has_points
                                ? layer.GetGeomType() != wkbNone && own != nullptr && own->IsSame(&crs) != 0
                                : layer.GetGeomType() == wkbNone;
    return same_place && detail::is_result(session, shape.name) && has_columns(*layer.GetLayerDefn(), shape);
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
    std::int64_t number = 0;
    for (const auto& row : table.rows) {
        OGRFeature feature(layer.GetLayerDefn());
        // A server's own numbers would be counted on by a sequence that its owner alone may use.
        if (session.server) {
            feature.SetFID(++number);
        }
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

// On a server only its owner may replace a table; emptied and filled again it serves all who may write rows.
bool fill_again(detail::Session& session, const Table& table, const OGRSpatialReference& crs) {
    auto* layer = session.server ? session.dataset->GetLayerByName(table.shape.name.c_str()) : nullptr;
    if (layer == nullptr || !has_form(session, *layer, table.shape, crs)) {
        return false;
    }
    detail::run_sql(session, "DELETE FROM " + detail::quoted_name(table.shape.name));
    write_rows(session, *layer, table);
    return true;
}

void index_points(detail::Session& session, const TableShape& shape) {
    if (shape.has_points && !session.server) {
        detail::query(session,
                      fmt::format("SELECT CreateSpatialIndex({}, 'geom')", detail::quoted_text(shape.name)));
    }
}

void make_anew(detail::Session& session, const Table& table, const OGRSpatialReference& crs) {
    const auto& shape = table.shape;
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

void replace_one(detail::Session& session, const std::string& location, const Table& table) {
    const auto crs = crs_of_trees(session);
    if (!fill_again(session, table, crs)) {
        make_anew(session, table, crs);
    }
    detail::expect_rows(session, location, table.shape.name, std::ssize(table.rows));
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

void detail::replace_in(detail::Session& session, const std::string& location,
                        std::span<const Table> results) {
    if (!session.server) {
        detail::prepare_descriptions(session);
    }
    for (const auto& table : results) {
        replace_one(session, location, table);
    }
}

void replace_results(const BookAt& book, std::span<const Table> results, Patience patience) {
    detail::check_results(results);
    std::vector<std::string> names;
    for (const auto& table : results) {
        names.push_back(table.shape.name);
    }
    detail::change_book(book, names, patience, [&](detail::Session& session) {
        detail::replace_in(session, book.location, results);
    });
}

}  // namespace pipward::book
