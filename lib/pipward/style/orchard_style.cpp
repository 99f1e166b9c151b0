// SPDX-License-Identifier: MIT
#include "pipward/style/orchard_style.h"

#include <fmt/format.h>

#include <optional>

#include "pipward/style/detail/field_style.h"
#include "pipward/style/detail/form_groups.h"
#include "pipward/style/detail/looks.h"
#include "pipward/style/detail/phrase.h"

namespace pipward::style {
namespace {

struct RowName {
    std::string_view table;
    std::string expression;
};

std::string with_day(std::string_view name, std::string_view day, const Wording& wording) {
    return fmt::format("{} || ', ' || {}", detail::column(name),
                       detail::day_words(day, say("d MMM yyyy"), wording));
}

// What names a row in lists and forms, where neither its key nor its first column and its day do.
std::vector<RowName> row_names(const Wording& wording) {
    const auto value = [](std::string_view name) { return detail::computed(detail::column(name)); };
    const auto observed = detail::computed(detail::day_words("observed_on", say("d MMM yyyy"), wording));
    return {
        {"tree_row", detail::phrase(say("{}, row {}", value("block"), value("name")), wording)},
        {"blend", R"("name" || ': ' || "member")"},
        {"bloom_observation", detail::phrase(say("{}, stage {}", observed, value("bbch")), wording)},
        {"trait_score", R"("tree" || ', ' || )" + with_day("trait", "scored_on", wording)},
        {"bloom_window", R"(coalesce("tree" || ', ', '') || "accession")"},
        {"bloom_model", R"("accession")"},
        {"bloom_skill", R"(replace("method", '_', ' '))"},
        {"bloom_left_out", R"(replace("method", '_', ' '))"},
        {"meeting_skill", R"(replace("way", '_', ' '))"},
        {"cross_outlook", R"("cross" || ', ' || "way")"},
        {"row_position",
         detail::phrase(say("{}, row {}, position {}", value("block"), value("row"), value("position")),
                        wording)},
        {"tree_number", R"("tree")"},
        {"first_fruiting", R"("tree" || ', ' || "expected")"},
        {"pollen_task", R"("work" || ', ' || "donor")"},
        {"field_task", R"("work" || ', ' || "cross" || ', ' || "tree")"},
    };
}

std::optional<std::string> special_row_name(std::string_view table, const Wording& wording) {
    for (const auto& entry : row_names(wording)) {
        if (entry.table == table) {
            return entry.expression;
        }
    }
    return std::nullopt;
}

// What a row is of and its day, where a day is needed to tell rows apart.
bool is_named_by_day(const book::BookTable& table) {
    return !table.day_column.empty() && (table.key.empty() || table.key.back() == table.day_column);
}

std::string row_name_of(const book::BookTable& table, const Wording& wording) {
    if (const auto special = special_row_name(table.name, wording)) {
        return *special;
    }
    return is_named_by_day(table) ? with_day(table.columns.front().name, table.day_column, wording)
                                  : detail::column(table.key.empty() ? "fid" : table.key.front());
}

}  // namespace

LayerStyle style_of_layer(const book::BookTable& table, const Wording& wording) {
    LayerStyle layer{.table = std::string(table.name),
                     .title = wording(table.title),
                     .geometry = table.geometry,
                     .read_only = false,
                     .fields = detail::field_styles(table, wording),
                     .groups = {},
                     .rules = {}};
    layer.groups = detail::form_groups(table, wording);
    layer.row_name = row_name_of(table, wording);
    if (table.name == "tree") {
        detail::style_trees(layer, wording);
    } else if (table.geometry != book::GeometryKind::none) {
        detail::style_ground(layer, wording);
    }
    return layer;
}

LayerStyle style_of_layer(const TableShape& result, const std::optional<BloomSpan>& bloom,
                          const Wording& wording) {
    LayerStyle layer{.table = result.name,
                     .title = wording(result.title),
                     .geometry = result.has_points ? book::GeometryKind::point : book::GeometryKind::none,
                     .read_only = true,
                     .fields = detail::field_styles(result, wording),
                     .groups = {},
                     .rules = {}};
    layer.groups = detail::form_groups(result, wording);
    layer.row_name = special_row_name(result.name, wording).value_or(detail::column("fid"));
    if (result.name == "bloom_window") {
        detail::style_bloom(layer, bloom, wording);
    } else if (result.name == "field_task" || result.name == "pollen_task") {
        detail::style_work(layer, wording);
    } else if (result.name == "row_position") {
        detail::style_positions(layer, wording);
    } else if (result.name == "tree_number") {
        detail::style_tree_numbers(layer, wording);
    } else if (result.name == "first_fruiting") {
        detail::style_first_fruiting(layer, wording);
    }
    return layer;
}

}  // namespace pipward::style
