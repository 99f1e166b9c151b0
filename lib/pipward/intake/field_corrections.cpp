// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/heading.h"
#include "pipward/intake/field_mapping.h"
#include "pipward/intake/layer_columns.h"
#include "pipward/value/nearest.h"

namespace pipward::intake {
namespace {

bool is_meant(const LayerColumn& column, const std::string& wanted, bool also_words) {
    return book::field_word(column.code) == wanted || book::field_word(column.name) == wanted ||
           book::field_word(column.label) == wanted ||
           (also_words && std::ranges::find(column.words, wanted) != column.words.end());
}

// What an accession is called and what is remarked of it, a layer of trees says of its trees.
bool is_of_the_row_alone(const LayerColumn& column) {
    return column.bound->role == book::ColumnRole::name || column.bound->role == book::ColumnRole::remark;
}

bool serves(const LayerColumn& column, const std::string& table) {
    return column.table == table || column.table == place_table ||
           (table == "tree" && column.table == "accession" && !is_of_the_row_alone(column));
}

std::string names_of_columns(const std::string& table) {
    std::string names;
    for (const auto& column : layer_columns()) {
        if (column.table == table) {
            names += (names.empty() ? "" : ", ") + std::string(column.name);
        }
    }
    return names;
}

FieldGoal* goal_named(FieldMapping& mapping, const std::string& field) {
    auto found = std::ranges::find(mapping.goals, field, &FieldGoal::field);
    if (found == mapping.goals.end()) {
        const auto like = [wanted = book::field_word(field)](const FieldGoal& goal) {
            return book::field_word(goal.field) == wanted;
        };
        found = std::ranges::count_if(mapping.goals, like) == 1 ? std::ranges::find_if(mapping.goals, like)
                                                                : mapping.goals.end();
    }
    return found == mapping.goals.end() ? nullptr : &*found;
}

Finding wrong(const std::string& parameter, const std::string& value, Sentence message, Sentence remedy) {
    return {Level::error, {}, {}, parameter, value, std::move(message), std::move(remedy)};
}

Finding no_such_field(const FieldMapping& mapping, const std::string& parameter, const std::string& field) {
    std::vector<std::string> fields;
    std::ranges::transform(mapping.goals, std::back_inserter(fields), &FieldGoal::field);
    const auto near = nearest(field, fields);
    return wrong(
        parameter, field, say("The layer has no field of this name."),
        near ? say("Did you mean \"{}\"?", *near) : say("Its fields are listed in the table of fields."));
}

/// The other field that has the column; null for none, and for a remark, which takes several.
FieldGoal* holder_of(FieldMapping& mapping, const FieldGoal& to, const std::string& column, bool given) {
    const auto found = std::ranges::find_if(mapping.goals, [&](const FieldGoal& other) {
        return &other != &to && other.column == column && (other.by == GuessedBy::given) == given;
    });
    const bool is_alone = column.empty() || column.ends_with(".remark") || found == mapping.goals.end();
    return is_alone ? nullptr : &*found;
}

// The user's word comes before what was guessed for another field.
void give(FieldMapping& mapping, FieldGoal& to, const std::string& column) {
    if (auto* other = holder_of(mapping, to, column, false)) {
        *other = {.field = other->field, .column = {}, .instead = to.field};
    }
    to = {.field = to.field, .column = column, .by = GuessedBy::given};
}

}  // namespace

std::string column_meant(const std::string& table, std::string_view words) {
    const auto wanted = book::field_word(words);
    for (const bool also_words : {false, true}) {
        for (const bool own : {true, false}) {
            for (const auto& column : layer_columns()) {
                if (serves(column, table) && (column.table == table) == own &&
                    is_meant(column, wanted, also_words)) {
                    return column.code;
                }
            }
        }
    }
    return {};
}

std::string column_label(std::string_view code) {
    const auto* column = find_layer_column(code);
    return column == nullptr ? std::string{} : std::string(column->label);
}

void correct(FieldMapping& mapping, const Corrections& corrections, const std::string& parameter,
             Findings& findings) {
    for (const auto& [field, words] : corrections) {
        auto* goal = goal_named(mapping, field);
        const auto column = words == "-" ? std::string{} : column_meant(mapping.table, words);
        if (goal == nullptr) {
            findings.push_back(no_such_field(mapping, parameter, field));
        } else if (column.empty() && words != "-") {
            findings.push_back(
                wrong(parameter, words, say("The table has no such column."),
                      say("It has: {}; or - to leave the field out.", names_of_columns(mapping.table))));
        } else if (holder_of(mapping, *goal, column, true) != nullptr) {
            findings.push_back(wrong(parameter, field, say("Two fields are to go to the same column."),
                                     say("Choose one of them, and give - to the other.")));
        } else {
            give(mapping, *goal, column);
        }
    }
}

}  // namespace pipward::intake
