// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "pipward/book/adopt_value.h"
#include "pipward/book/adopt_words.h"
#include "pipward/operation/adopt.h"

namespace pipward::operation {
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

std::vector<book::FieldSample> fields_of(const book::UserLayer& layer) {
    std::vector<book::FieldSample> fields;
    for (const auto& column : layer.columns) {
        book::FieldSample field{column, {}};
        for (const auto& feature : layer.features) {
            const auto text = feature.texts.find(column);
            if (text != feature.texts.end() && !book::says_nothing(text->second)) {
                field.texts.push_back(text->second);
            }
        }
        fields.push_back(std::move(field));
    }
    return fields;
}

// The commonest geometry tells; what differs from it is left out later.
book::LayerShape shape_of_layer(const book::UserLayer& layer) {
    std::ptrdiff_t points = 0;
    std::ptrdiff_t lines = 0;
    std::ptrdiff_t areas = 0;
    for (const auto& feature : layer.features) {
        (feature.is_area ? areas : feature.is_line ? lines : points) += feature.points.empty() ? 0 : 1;
    }
    if (points + lines + areas == 0) {
        return book::LayerShape::none;
    }
    return points >= std::max(lines, areas) ? book::LayerShape::points
           : lines >= areas                 ? book::LayerShape::lines
                                            : book::LayerShape::areas;
}

std::vector<std::string> accessions_of(const Orchard& orchard) {
    std::vector<std::string> names;
    for (const auto& accession : orchard.accessions) {
        names.push_back(book::field_word(accession.name));
    }
    return names;
}

std::set<std::string> given_fields(const book::FieldMapping& mapping) {
    std::set<std::string> fields;
    for (const auto& goal : mapping.goals) {
        if (goal.by == book::GuessedBy::given) {
            fields.insert(goal.field);
        }
    }
    return fields;
}

// What is written in the call itself is the nearer word: it may take a column that the file gave away.
void correct_by_user(Adoption& adoption, const AdoptRequest& request) {
    auto& mapping = adoption.mapping;
    if (request.map_file) {
        book::correct(mapping, corrections_of_file(request.map_file->path), "map-file", adoption.findings);
    }
    const auto by_file = given_fields(mapping);
    for (auto& goal : mapping.goals) {
        goal.by = goal.by == book::GuessedBy::given ? book::GuessedBy::same_name : goal.by;
    }
    book::correct(mapping, corrections_in(request.map), "map", adoption.findings);
    for (auto& goal : mapping.goals) {
        goal.by = by_file.contains(goal.field) && goal.instead.empty() ? book::GuessedBy::given : goal.by;
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
    return names.empty() ? say("Say which it is, as in map \"FIELD=label\".")
                         : say("Say which it is with map; every value differs in: {}.", names);
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

AdoptSource open_adoption(const AdoptRequest& request, const Orchard& orchard) {
    AdoptSource source{book::read_user_rows(request.file.path, request.layer), {}};
    auto& adoption = source.adoption;
    adoption.layer = source.layer.name;
    adoption.findings = source.layer.findings;
    adoption.fields = fields_of(source.layer);
    const auto shape = shape_of_layer(source.layer);
    adoption.table = request.table ? table_of(*request.table) : book::guess_table(adoption.fields, shape);
    for (const auto& feature : source.layer.features) {
        adoption.rows.push_back({.feature = feature.name,
                                 .points = feature.points,
                                 .is_line = feature.is_line,
                                 .is_area = feature.is_area,
                                 .has_holes = feature.has_holes});
    }
    adoption.mapping = book::guess_mapping(adoption.table, adoption.fields, accessions_of(orchard),
                                           adoption.table == "tree" && shape == book::LayerShape::none);
    correct_by_user(adoption, request);
    expect_key(adoption);
    return source;
}

}  // namespace pipward::operation
