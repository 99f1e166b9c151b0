// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "pipward/book/adopt_words.h"
#include "pipward/intake/field_mapping.h"
#include "pipward/value/nearest.h"
#include "pipward/value/sentence.h"

namespace pipward::intake {
namespace {

std::string full_name(const book::AdoptColumn& column) {
    return std::string(column.table) + "." + std::string(column.column);
}

bool is_meant(const book::AdoptColumn& column, const std::string& wanted, bool also_words) {
    return book::field_word(full_name(column)) == wanted || book::field_word(column.column) == wanted ||
           book::field_word(column_label(full_name(column))) == wanted ||
           (also_words && std::ranges::find(column.words, wanted) != column.words.end());
}

bool serves(const book::AdoptColumn& column, const std::string& table) {
    return column.table == table || column.table == book::place_table ||
           (table == "tree" && column.table == "accession" && column.column != "name" &&
            column.column != "note");
}

std::string names_of_columns(const std::string& table) {
    std::string names;
    for (const auto& column : book::adopt_columns()) {
        if (column.table == table) {
            names += (names.empty() ? "" : ", ") + std::string(column.column);
        }
    }
    return names;
}

FieldGoal* goal_named(FieldMapping& mapping, const std::string& field) {
    const auto exact = std::ranges::find(mapping.goals, field, &FieldGoal::field);
    if (exact != mapping.goals.end()) {
        return &*exact;
    }
    const auto wanted = book::field_word(field);
    const auto like = [&](const FieldGoal& goal) { return book::field_word(goal.field) == wanted; };
    const auto found = std::ranges::find_if(mapping.goals, like);
    return found != mapping.goals.end() && std::ranges::count_if(mapping.goals, like) == 1 ? &*found
                                                                                           : nullptr;
}

Finding wrong(const std::string& parameter, const std::string& value, Sentence message, Sentence remedy) {
    return {Level::error, {}, {}, parameter, value, std::move(message), std::move(remedy)};
}

Finding no_such_field(const FieldMapping& mapping, const std::string& parameter, const std::string& field) {
    std::vector<std::string> fields;
    for (const auto& goal : mapping.goals) {
        fields.push_back(goal.field);
    }
    const auto near = nearest(field, fields);
    return wrong(
        parameter, field, say("The layer has no field of this name."),
        near ? say("Did you mean \"{}\"?", *near) : say("Its fields are listed in the table of fields."));
}

bool takes_several(const std::string& column) {
    return column.ends_with(".note");
}

// The user's word comes before what was guessed for another field.
void give(FieldMapping& mapping, FieldGoal& to, const std::string& column) {
    for (auto& other : mapping.goals) {
        if (&other != &to && other.column == column && other.by != GuessedBy::given && !column.empty() &&
            !takes_several(column)) {
            other = {.field = other.field, .column = {}, .instead = to.field};
        }
    }
    to = {.field = to.field, .column = column, .by = GuessedBy::given};
}

bool is_given_already(const FieldMapping& mapping, const FieldGoal& to, const std::string& column) {
    return !column.empty() && !takes_several(column) &&
           std::ranges::any_of(mapping.goals, [&](const FieldGoal& other) {
               return &other != &to && other.column == column && other.by == GuessedBy::given;
           });
}

}  // namespace

std::string column_meant(const std::string& table, std::string_view words) {
    const auto wanted = book::field_word(words);
    for (const bool also_words : {false, true}) {
        for (const bool own : {true, false}) {
            for (const auto& column : book::adopt_columns()) {
                if (serves(column, table) && (column.table == table) == own &&
                    is_meant(column, wanted, also_words)) {
                    return full_name(column);
                }
            }
        }
    }
    return {};
}

std::string column_label(std::string_view column) {
    const auto point = column.find('.');
    if (point == column.npos) {
        return {};
    }
    if (column.substr(0, point) == book::place_table) {
        return column.ends_with("x") ? "Place: east or longitude" : "Place: north or latitude";
    }
    const auto* table = book::find_book_table(column.substr(0, point));
    const auto* found = table == nullptr ? nullptr : book::find_column(*table, column.substr(point + 1));
    return found == nullptr ? std::string{} : std::string(found->label);
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
        } else if (is_given_already(mapping, *goal, column)) {
            findings.push_back(wrong(parameter, field, say("Two fields are to go to the same column."),
                                     say("Choose one of them, and give - to the other.")));
        } else {
            give(mapping, *goal, column);
        }
    }
}

}  // namespace pipward::intake
