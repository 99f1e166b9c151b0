// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/record/words.h"
#include "pipward/value/finding.h"

/// Which field of a user's layer goes to which column of the book. Pure: needs no file.
namespace pipward::intake {

/// A field of a layer as far as guessing looks at it.
struct FieldSample {
    std::string name;                ///< as the layer heads it
    std::vector<std::string> texts;  ///< every value that is known, by row
};

/// How it was seen where a field goes.
enum class GuessedBy {
    nothing,    ///< it goes nowhere
    same_name,  ///< the book's own name of the column
    word,       ///< a word that people use for it
    cut_short,  ///< the beginning of such a word, as Shapefiles leave it
    near_word,  ///< a word some letters off
    values,     ///< its values are accessions of the book
    given,      ///< said by the user
};

std::span<const Word<GuessedBy>> words(GuessedBy);

/// Some of a field's values, cut to one line: "12 | 13 | 14".
std::string samples_of(const FieldSample& field);

/// A column as "tree.planted_on"; empty where the field goes nowhere.
struct FieldGoal {
    std::string field;                  ///< as the layer heads it
    std::string column;                 ///< the code of a LayerColumn
    GuessedBy by = GuessedBy::nothing;  ///< `nothing` where `column` is empty, unless the user said so
    std::string word{};                 ///< the word that it was taken for; empty for the column's own name
    int letters_off = 0;                ///< of a near_word, else 0
    std::string instead{};              ///< the field that has the column, where this one was not needed
};

/// Where each field of a layer goes.
struct FieldMapping {
    std::string table;             ///< the rows' own
    std::vector<FieldGoal> goals;  ///< one a field, in the layer's order

    /// The field that goes to the column; null where none does. Of several that go to a note, the first.
    const FieldGoal* to(std::string_view column) const;
};

/// How far a field's name may be from a word, in letters added, dropped or changed (Levenshtein 1966), after
/// field_word(): none below four letters, one below seven, else two.
int farthest_slip(std::string_view word);

/// Which table a layer is for, by its geometries and by how many of its fields have words of the table:
/// "tree", "accession", "tree_row" or "block".
enum class LayerShape {
    none,    ///< rows without places
    points,  ///< a point each
    lines,   ///< a line each
    areas    ///< an outline each
};
/// Always one of the four.
std::string guess_table(const std::vector<FieldSample>& fields, LayerShape shape);

/// Guesses every field's column. Each column is taken by one field, the nearest by name, of equals the first
/// in the words' order; a note may take several. A field most of whose values the column could not hold is
/// left out. `accessions` are the book's, folded by field_word().
FieldMapping guess_mapping(const std::string& table, const std::vector<FieldSample>& fields,
                           const std::vector<std::string>& accessions, bool needs_coordinates);

/// What the user says: field -> column, or "-" for nowhere, in the user's words.
using Corrections = std::vector<std::pair<std::string, std::string>>;

/// Puts the user's word in place of what was guessed; what cannot be is told under `parameter`.
void correct(FieldMapping& mapping, const Corrections& corrections, const std::string& parameter,
             Findings& findings);

/// The column that people mean: "planted_on", "Planted on", "tree.planted_on" or a trade word. Empty for
/// none.
std::string column_meant(const std::string& table, std::string_view words);

/// The column's name for people: "Planted on".
std::string column_label(std::string_view column);

}  // namespace pipward::intake
