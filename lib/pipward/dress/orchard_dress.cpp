// SPDX-License-Identifier: MIT
#include "pipward/dress/orchard_dress.h"

#include <fmt/format.h>

#include <array>

#include "pipward/dress/field_dress.h"
#include "pipward/dress/form_groups.h"
#include "pipward/dress/looks.h"

namespace pipward {
namespace {

struct RowName {
    std::string_view table;
    std::string_view expression;
};

// What names a row in lists and forms, where the table has no key of its own.
constexpr std::array row_names{
    RowName{"tree_row", R"("block" || ', row ' || "name")"},
    RowName{"blend", R"("name" || ': ' || "member")"},
    RowName{"bloom_note", R"(format_date("noted_on", 'd MMM yyyy') || ', stage ' || "bbch")"},
    RowName{"weather_day", R"("station" || ', ' || format_date("day", 'd MMM yyyy'))"},
    RowName{"pollen_test", R"("lot" || ', ' || format_date("tested_on", 'd MMM yyyy'))"},
    RowName{"fruit", R"("tag" || ', ' || format_date("picked_on", 'd MMM yyyy'))"},
    RowName{"sprout_count", R"("lot" || ', ' || format_date("counted_on", 'd MMM yyyy'))"},
    RowName{"seed_out", R"("lot" || ', ' || format_date("on_day", 'd MMM yyyy'))"},
    RowName{"trait_score", R"("tree" || ', ' || "trait" || ', ' || format_date("scored_on", 'd MMM yyyy'))"},
    RowName{"bloom_window", R"(coalesce("label" || ', ', '') || "accession")"},
    RowName{"bloom_model", R"("accession")"},
    RowName{"bloom_skill", R"(replace("method", '_', ' '))"},
    RowName{"cross_outlook", R"("cross" || ', ' || "way")"},
    RowName{"row_position", R"("block" || ', row ' || "row" || ', position ' || "position")"},
    RowName{"tree_number", R"("tree")"},
    RowName{"pollen_task", R"("work" || ', ' || "donor")"},
    RowName{"field_task", R"("work" || ', ' || "cross" || ', ' || "label")"},
};

std::string row_name_of(std::string_view table, std::string_view key) {
    for (const auto& entry : row_names) {
        if (entry.table == table) {
            return std::string(entry.expression);
        }
    }
    return fmt::format("\"{}\"", key);
}

}  // namespace

LayerDress dress_of(const BookTable& table) {
    LayerDress layer{.table = std::string(table.name),
                     .title = std::string(table.title),
                     .geometry = table.geometry,
                     .read_only = false,
                     .fields = field_dresses(table),
                     .groups = {},
                     .rules = {}};
    layer.groups = form_groups(layer.table, layer.title, layer.fields);
    layer.row_name = row_name_of(table.name, table.key.empty() ? "fid" : table.key.front());
    if (table.name == "tree") {
        dress_trees(layer);
    } else if (table.geometry != GeometryKind::none) {
        dress_ground(layer);
    }
    return layer;
}

LayerDress dress_of(const TableShape& result, const std::optional<BloomSpan>& bloom) {
    LayerDress layer{.table = result.name,
                     .title = result.title,
                     .geometry = result.has_points ? GeometryKind::point : GeometryKind::none,
                     .read_only = true,
                     .fields = field_dresses(result),
                     .groups = {},
                     .rules = {}};
    layer.groups = form_groups(layer.table, layer.title, layer.fields);
    layer.row_name = row_name_of(result.name, "fid");
    if (result.name == "bloom_window") {
        dress_bloom(layer, bloom);
    } else if (result.name == "field_task" || result.name == "pollen_task") {
        dress_work(layer);
    } else if (result.name == "row_position") {
        dress_positions(layer);
    } else if (result.name == "tree_number") {
        dress_tree_numbers(layer);
    }
    return layer;
}

}  // namespace pipward
