// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "pipward/style/detail/phrase.h"
#include "pipward/style/project_style.h"

namespace pipward::style {
namespace {

struct GroupForm {
    Sentence title;
    bool open;
    std::vector<std::string_view> tables;
};

// Topmost first. A table that stands nowhere here is a record table.
const std::vector<GroupForm>& group_forms() {
    static const std::vector<GroupForm> forms{
        {say("Today's work"), true, {"field_task", "pollen_task", "cross_outlook"}},
        {say("Bloom"),
         true,
         {"bloom_window", "bloom_model", "bloom_skill", "bloom_left_out", "meeting_skill"}},
        {say("Trees"),
         true,
         {"tree_number", "first_fruiting", "tree", "row_position", "tree_row", "block", "station"}},
    };
    return forms;
}

bool stands_in_a_group(std::string_view table) {
    return std::ranges::any_of(group_forms(), [&](const GroupForm& form) {
        return std::ranges::find(form.tables, table) != form.tables.end();
    });
}

std::optional<book::MapBox> extent_of(const book::BookLook& look, std::string_view table) {
    const auto found = std::ranges::find(look.layers, table, &book::LayerSeen::table);
    return found == look.layers.end() ? std::nullopt : found->extent;
}

void add_group(ProjectStyle& project, ProjectGroup group) {
    if (!group.layers.empty()) {
        project.groups.push_back(std::move(group));
    }
}

std::vector<ProjectGroup> filled_groups(const book::BookLook& look, const std::vector<LayerStyle>& layers,
                                        const Wording& wording) {
    std::vector<ProjectGroup> groups;
    for (const auto& form : group_forms()) {
        ProjectGroup group{form.title.in(wording), form.open, {}};
        for (const auto table : form.tables) {
            const auto found = std::ranges::find(layers, table, &LayerStyle::table);
            if (found != layers.end()) {
                group.layers.push_back({*found, extent_of(look, table)});
            }
        }
        groups.push_back(std::move(group));
    }
    ProjectGroup records{say("Record tables").in(wording), false, {}};
    for (const auto& layer : layers) {
        if (!stands_in_a_group(layer.table)) {
            records.layers.push_back({layer, std::nullopt});
        }
    }
    groups.push_back(std::move(records));
    return groups;
}

// A tip of a tree tells its bloom too, where the map has a layer of it.
void tell_bloom(ProjectStyle& project, const Wording& wording) {
    const auto full_bloom =
        fmt::format("format_date(attribute(get_feature('{}', 'label', \"label\"), 'full_p50'), {})",
                    layer_id("bloom_window"), detail::phrase(say("d MMMM yyyy"), wording));
    const auto words =
        detail::phrase(verbatim("<br>") + say("full bloom about {}", detail::computed(full_bloom)), wording);
    for (auto& group : project.groups) {
        for (auto& layer : group.layers) {
            if (layer.style.table == "tree") {
                layer.style.map_tip += fmt::format("[% coalesce({}, '') %]", words);
            }
        }
    }
}

bool has(const std::vector<LayerStyle>& layers, std::string_view table) {
    return std::ranges::find(layers, table, &LayerStyle::table) != layers.end();
}

bool refers_twice(const book::BookTable& table, std::string_view parent) {
    return std::ranges::count_if(table.columns, [&](const book::BookColumn& column) {
               return std::ranges::find(column.references, parent, &book::Reference::table) !=
                      column.references.end();
           }) > 1;
}

// A blend is several rows of one name, which no relation can point at.
bool names_one_row(const book::Reference& to) {
    const auto* parent = book::find_book_table(to.table);
    const std::size_t columns = to.within.empty() ? 1 : 2;
    return parent != nullptr && parent->key.size() == columns;
}

ProjectRelation relation(const book::BookTable& table, const book::BookColumn& column,
                         const book::Reference& to, const Wording& wording) {
    const auto title = refers_twice(table, to.table)
                           ? fmt::format("{} ({})", wording(table.title), wording(column.label))
                           : wording(table.title);
    ProjectRelation made{fmt::format("pipward_{}_{}_{}", table.name, column.name, to.table),
                         title,
                         std::string(table.name),
                         std::string(to.table),
                         {{std::string(column.name), std::string(to.column)}}};
    if (!to.within.empty()) {
        made.columns.push_back({std::string(to.within), std::string(to.within)});
    }
    return made;
}

std::vector<ProjectRelation> relations_of(const std::vector<LayerStyle>& layers, const Wording& wording) {
    std::vector<ProjectRelation> relations;
    for (const auto& table : book::book_tables()) {
        for (const auto& column : table.columns) {
            for (const auto& to : column.references) {
                // Thousands of days of weather in a station's form would help nobody.
                if (!table.long_series && has(layers, table.name) && has(layers, to.table) &&
                    names_one_row(to)) {
                    relations.push_back(relation(table, column, to, wording));
                }
            }
        }
    }
    return relations;
}

}  // namespace

std::string layer_id(std::string_view table) {
    return fmt::format("pipward_{}", table);
}

ProjectStyle season_map(const book::BookLook& look, const std::vector<LayerStyle>& layers,
                        const std::optional<BloomSpan>& bloom, const std::string& book_file,
                        const Wording& wording) {
    ProjectStyle project{.title = say("Season map").in(wording),
                         .book_file = book_file,
                         .crs_wkt = look.crs_wkt,
                         .crs_code = look.crs_code,
                         .geographic = look.geographic,
                         .extent = extent_of(look, "tree"),
                         .bloom = bloom,
                         .groups = {},
                         .relations = relations_of(layers, wording)};
    for (auto& group : filled_groups(look, layers, wording)) {
        add_group(project, std::move(group));
    }
    if (has(layers, "bloom_window")) {
        tell_bloom(project, wording);
    }
    return project;
}

}  // namespace pipward::style
