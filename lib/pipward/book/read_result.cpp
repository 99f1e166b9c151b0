// SPDX-License-Identifier: MIT
#include <ogrsf_frmts.h>

#include "pipward/book/book.h"
#include "pipward/book/detail/describe.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/results.h"
#include "pipward/book/detail/transaction.h"

namespace pipward::book {
namespace {

std::vector<Column> columns_of(detail::Session& session, OGRLayer& layer) {
    const auto words = detail::read_descriptions(session, layer.GetName());
    std::vector<Column> columns;
    for (int index = 0; index < layer.GetLayerDefn()->GetFieldCount(); ++index) {
        const auto* field = layer.GetLayerDefn()->GetFieldDefn(index);
        Column column{.name = field->GetNameRef(),
                      .type = detail::cell_type(*field),
                      .unit = {},
                      .label = {},
                      .description = {}};
        column.label = column.name;
        if (const auto found = words.find(column.name); found != words.end()) {
            column.label = found->second.label;
            column.unit = found->second.unit;
            column.description = found->second.description;
        }
        columns.push_back(std::move(column));
    }
    return columns;
}

TableShape shape_of(detail::Session& session, OGRLayer& layer, const std::string& name) {
    const char* title = layer.GetMetadataItem("IDENTIFIER");
    return {.name = name,
            .title = title == nullptr ? name : std::string(title),
            .description = detail::without_mark(detail::description_of(session, name)),
            .has_points = layer.GetGeomType() != wkbNone,
            .columns = columns_of(session, layer)};
}

Row row_of(const OGRFeature& feature) {
    Row row;
    for (int field = 0; field < feature.GetFieldCount(); ++field) {
        row.cells.push_back(detail::get_field(feature, field));
    }
    row.at = detail::to_map_point(feature.GetGeometryRef());
    return row;
}

}  // namespace

std::optional<Table> read_result(const BookAt& book, const std::string& name) {
    std::optional<Table> result;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        result.reset();
        OGRLayer* layer = session.dataset->GetLayerByName(name.c_str());
        if (layer == nullptr || !detail::is_result(session, name)) {
            return;
        }
        const auto before = session.messages->failures();
        Table table{shape_of(session, *layer, name), {}};
        for (const auto& feature : *layer) {
            table.rows.push_back(row_of(*feature));
        }
        detail::expect_success(session, before, false, name);
        result = std::move(table);
    });
    return result;
}

}  // namespace pipward::book
