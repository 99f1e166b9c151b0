// SPDX-License-Identifier: MIT
#include "pipward/dress/orchard_dress.h"

#include <fmt/format.h>

#include "pipward/dress/detail/field_dress.h"
#include "pipward/dress/detail/form_groups.h"
#include "pipward/dress/detail/looks.h"
#include "pipward/dress/detail/phrase.h"

namespace pipward::dress {
namespace {

struct RowName {
    std::string_view table;
    std::string expression;
};

std::string with_day(std::string_view name, std::string_view day, const Wording& wording) {
    return fmt::format("{} || ', ' || {}", detail::column(name), detail::day_words(day, say("d MMM yyyy"), wording));
}

// What names a row in lists and forms, where neither its key nor its first column and its day do.
std::vector<RowName> row_names(const Wording& wording) {
    const auto value = [](std::string_view name) { return detail::computed(detail::column(name)); };
    const auto noted = detail::computed(detail::day_words("noted_on", say("d MMM yyyy"), wording));
    return {
        {"tree_row", detail::phrase(say("{}, row {}", value("block"), value("name")), wording)},
        {"blend", R"("name" || ': ' || "member")"},
        {"bloom_note", detail::phrase(say("{}, stage {}", noted, value("bbch")), wording)},
        {"weather_day", with_day("station", "day", wording)},
        {"pollen_test", with_day("lot", "tested_on", wording)},
        {"fruit", with_day("tag", "picked_on", wording)},
        {"sprout_count", with_day("lot", "counted_on", wording)},
        {"seed_out", with_day("lot", "on_day", wording)},
        {"trait_score", R"("tree" || ', ' || )" + with_day("trait", "scored_on", wording)},
        {"bloom_window", R"(coalesce("label" || ', ', '') || "accession")"},
        {"bloom_model", R"("accession")"},
        {"bloom_skill", R"(replace("method", '_', ' '))"},
        {"bloom_left_out", R"(replace("method", '_', ' '))"},
        {"meeting_skill", R"(replace("way", '_', ' '))"},
        {"cross_outlook", R"("cross" || ', ' || "way")"},
        {"row_position",
         detail::phrase(say("{}, row {}, position {}", value("block"), value("row"), value("position")), wording)},
        {"tree_number", R"("tree")"},
        {"first_fruit", R"("label" || ', ' || "expected")"},
        {"pollen_task", R"("work" || ', ' || "donor")"},
        {"field_task", R"("work" || ', ' || "cross" || ', ' || "label")"},
    };
}

std::optional<std::string> special_row_name(std::string_view table, const Wording& wording) {
    for (const auto& entry : row_names(wording)) {
        if (entry.table == table) {
            return entry.expression;
        }
    }
    return detail::column(key);
}

}  // namespace

LayerDress dress_of(const book::BookTable& table, const Wording& wording) {
    LayerDress layer{.table = std::string(table.name),
                     .title = wording(table.title),
                     .geometry = table.geometry,
                     .read_only = false,
                     .fields = detail::field_dresses(table, wording),
                     .groups = {},
                     .rules = {}};
    layer.groups = detail::form_groups(layer.table, layer.title, layer.fields, wording);
    layer.row_name = row_name_of(table.name, table.key.empty() ? "fid" : table.key.front(), wording);
    if (table.name == "tree") {
        detail::dress_trees(layer, wording);
    } else if (table.geometry != book::GeometryKind::none) {
        detail::dress_ground(layer, wording);
    }
    return layer;
}

LayerDress dress_of(const TableShape& result, const std::optional<BloomSpan>& bloom, const Wording& wording) {
    LayerDress layer{.table = result.name,
                     .title = wording(result.title),
                     .geometry = result.has_points ? book::GeometryKind::point : book::GeometryKind::none,
                     .read_only = true,
                     .fields = detail::field_dresses(result, wording),
                     .groups = {},
                     .rules = {}};
    layer.groups = detail::form_groups(layer.table, layer.title, layer.fields, wording);
    layer.row_name = row_name_of(result.name, "fid", wording);
    if (result.name == "bloom_window") {
        detail::dress_bloom(layer, bloom, wording);
    } else if (result.name == "field_task" || result.name == "pollen_task") {
        detail::dress_work(layer, wording);
    } else if (result.name == "row_position") {
        detail::dress_positions(layer, wording);
    } else if (result.name == "tree_number") {
        detail::dress_tree_numbers(layer, wording);
    } else if (result.name == "first_fruit") {
        detail::dress_first_fruit(layer, wording);
    }
    return layer;
}

}  // namespace pipward::dress
