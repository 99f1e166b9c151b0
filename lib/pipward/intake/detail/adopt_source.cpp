// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "pipward/book/heading.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/intake/detail/book_value.h"

namespace pipward::intake::detail {
namespace {

std::string table_of(AdoptTable table) {
    switch (table) {
        case AdoptTable::trees:
            return "tree";
        case AdoptTable::accessions:
            return "accession";
        case AdoptTable::rows:
            return "tree_row";
        case AdoptTable::blocks:
            break;
    }
    return "block";
}

std::vector<FieldSample> fields_of(const book::UserLayer& layer) {
    std::vector<FieldSample> fields;
    for (const auto& column : layer.columns) {
        FieldSample field{column, {}};
        for (const auto& feature : layer.features) {
            const auto text = feature.texts.find(column);
            if (text != feature.texts.end() && !says_nothing(text->second)) {
                field.texts.push_back(text->second);
            }
        }
        fields.push_back(std::move(field));
    }
    return fields;
}

// The commonest geometry tells; what differs from it is left out later.
LayerShape shape_of_layer(const book::UserLayer& layer) {
    std::ptrdiff_t points = 0;
    std::ptrdiff_t lines = 0;
    std::ptrdiff_t areas = 0;
    for (const auto& feature : layer.features) {
        (feature.is_area ? areas : feature.is_line ? lines : points) += feature.points.empty() ? 0 : 1;
    }
    if (points + lines + areas == 0) {
        return LayerShape::none;
    }
    return points >= std::max(lines, areas) ? LayerShape::points
           : lines >= areas                 ? LayerShape::lines
                                            : LayerShape::areas;
}

std::vector<std::string> accessions_of(const Orchard& orchard) {
    std::vector<std::string> names;
    for (const auto& accession : orchard.accessions) {
        names.push_back(book::field_word(accession.name));
    }
    return names;
}

std::set<std::string> given_fields(const FieldMapping& mapping) {
    std::set<std::string> fields;
    for (const auto& goal : mapping.goals) {
        if (goal.by == GuessedBy::given) {
            fields.insert(goal.field);
        }
    }
    return fields;
}

// What is written in the call itself is the nearer word: it may take a column that the file gave away.
void correct_by_user(Adoption& adoption, const AdoptOptions& options) {
    auto& mapping = adoption.mapping;
    correct(mapping, options.map_file, "map-file", adoption.findings);
    const auto by_file = given_fields(mapping);
    for (auto& goal : mapping.goals) {
        goal.by = goal.by == GuessedBy::given ? GuessedBy::same_name : goal.by;
    }
    correct(mapping, corrections_in(options.map), "map", adoption.findings);
    for (auto& goal : mapping.goals) {
        goal.by = by_file.contains(goal.field) && goal.instead.empty() ? GuessedBy::given : goal.by;
    }
}

// Fields whose values all differ may be what names the rows.
Sentence fields_that_may_name(const Adoption& adoption) {
    std::string names;
    for (const auto& field : adoption.fields) {
        auto texts = field.texts;
        std::ranges::sort(texts);
        const bool all_differ = texts.size() > 1 && std::ranges::adjacent_find(texts) == texts.end();
        if (all_differ && texts.size() == adoption.rows.size()) {
            names += (names.empty() ? "" : ", ") + field.name;
        }
    }
    return names.empty() ? say("Give it, as in map \"FIELD=label\".")
                         : say("Give it with map; every value differs in: {}.", names);
}

// Fields of weather stations, and none that only trees have.
bool is_of_stations(const Adoption& adoption) {
    static constexpr std::array<std::string_view, 14> words{
        "station",        "stationname", "stationid",   "stationno",  "stationnumber",
        "weatherstation", "wmo",         "wmoid",       "wmonumber",  "wetterstation",
        "stationsname",   "stationsid",  "messstation", "stationcode"};
    const bool has_station = std::ranges::any_of(adoption.fields, [&](const FieldSample& field) {
        return std::ranges::find(words, book::field_word(field.name)) != words.end();
    });
    const bool has_trees = std::ranges::any_of(
        std::array{"tree.label", "tree.accession", "tree.row", "tree.position", "tree.rootstock"},
        [&](const char* column) {
            const auto* goal = adoption.mapping.to(column);
            return goal != nullptr && goal->by != GuessedBy::near_word;
        });
    return has_station && !has_trees;
}

void tell_stations(Adoption& adoption) {
    adoption.tell(Level::error, {}, {}, say("This is a table of weather stations, not of trees."),
                  say("Enter each station in the table station of the book, and import its weather with "
                      "weather-import. If they are trees all the same, say holds trees."));
}

void expect_key(Adoption& adoption) {
    if (adoption.mapping.to(adoption.table + "." + adoption.key()) == nullptr) {
        adoption.tell(Level::error, {}, {},
                      adoption.table == "tree" ? say("No field was recognised as the trees' label.")
                                               : say("No field was recognised as the name."),
                      fields_that_may_name(adoption));
    }
}

}  // namespace

Adoption open_adoption(const book::UserLayer& layer, const AdoptOptions& options, const Orchard& orchard) {
    Adoption adoption;
    adoption.layer = layer.name;
    adoption.findings = layer.findings;
    adoption.fields = fields_of(layer);
    const auto shape = shape_of_layer(layer);
    adoption.table = options.table ? table_of(*options.table) : guess_table(adoption.fields, shape);
    for (const auto& feature : layer.features) {
        adoption.rows.push_back({.feature = feature.name,
                                 .points = feature.points,
                                 .is_line = feature.is_line,
                                 .is_area = feature.is_area,
                                 .has_holes = feature.has_holes});
    }
    adoption.mapping = guess_mapping(adoption.table, adoption.fields, accessions_of(orchard),
                                     adoption.table == "tree" && shape == LayerShape::none);
    correct_by_user(adoption, options);
    if (!options.table && adoption.table == "tree" && is_of_stations(adoption)) {
        tell_stations(adoption);
    } else {
        expect_key(adoption);
    }
    return adoption;
}

}  // namespace pipward::intake::detail
