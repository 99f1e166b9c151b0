// SPDX-License-Identifier: MIT
#include "pipward/intake/field_mapping.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <set>
#include <tuple>

#include "pipward/book/heading.h"
#include "pipward/intake/cells.h"
#include "pipward/intake/detail/book_value.h"
#include "pipward/intake/layer_columns.h"
#include "pipward/place/place_text.h"
#include "pipward/value/nearest.h"
#include "pipward/value/utf8.h"

namespace pipward::intake {
namespace {

constexpr std::size_t shapefile_name = 10;  // dBASE keeps so many letters of a field's name
constexpr std::size_t fewest_letters = 5;   // of a beginning that still says something

struct Match {
    GuessedBy by = GuessedBy::nothing;
    int letters_off = 0;
    bool of_other_table = false;
    std::size_t order = 0;  // of the word among the column's
    std::string word{};
    std::size_t field = 0;
    const LayerColumn* column = nullptr;

    auto nearness() const { return std::tuple(static_cast<int>(by), letters_off, of_other_table); }
    auto rank() const { return std::tuple(nearness(), order, field); }
};

bool is_cut_short(const std::string& name, const std::string& folded, std::string_view word) {
    return word.size() > folded.size() && word.starts_with(folded) &&
           (name.size() == shapefile_name || folded.size() >= fewest_letters);
}

std::optional<Match> match_word(const std::string& name, const std::string& folded, std::string_view word) {
    if (folded == word) {
        return Match{GuessedBy::word};
    }
    if (is_cut_short(name, folded, word)) {
        return Match{GuessedBy::cut_short};
    }
    const int off = edit_distance(folded, word);
    const bool near = off <= std::min(farthest_slip(word), farthest_slip(folded));
    return near ? std::optional{Match{GuessedBy::near_word, off}} : std::nullopt;
}

std::optional<Match> match_column(const std::string& name, const LayerColumn& column) {
    const auto folded = book::field_word(name);
    if (folded.empty()) {
        return std::nullopt;
    }
    if (folded == book::field_word(column.name)) {
        return Match{.by = GuessedBy::same_name};
    }
    std::optional<Match> best;
    for (std::size_t i = 0; i < column.words.size(); ++i) {
        auto match = match_word(name, folded, column.words[i]);
        if (match && (!best || match->nearness() < best->nearness())) {
            best = match;
            best->order = i;
            best->word = column.words[i];
        }
    }
    return best;
}

// Days are looked at as a whole column, elsewhere; here only whether they may be some.
bool may_hold(const LayerColumn& column, const std::string& text) {
    const auto* known = column.bound;
    if (known == nullptr) {
        return column.name == "at" ? place::parse_place(text).has_value()
                                   : read_number(text).has_value() || place::parse_angle(text).has_value();
    }
    if (known->type == CellType::day) {
        return std::ranges::count_if(text, [](unsigned char c) { return std::isdigit(c) != 0; }) >= 3;
    }
    return !detail::read_value(*known, text).wrong;
}

bool mostly_fits(const LayerColumn& column, const FieldSample& field) {
    const auto fitting = static_cast<std::size_t>(
        std::ranges::count_if(field.texts, [&](const auto& text) { return may_hold(column, text); }));
    return fitting * 2 >= field.texts.size();
}

bool is_open_to(const LayerColumn& column, const std::string& table, bool needs_coordinates) {
    return column.table == table ||
           (table == "tree" && column.table == "accession" && column.bound->told_with_trees) ||
           (needs_coordinates && column.table == place_table);
}

// A name that stands as near to two columns is no guess at all.
void drop_undecided(std::vector<Match>& matches) {
    const auto best = std::ranges::min_element(matches, {}, &Match::nearness);
    if (best == matches.end()) {
        return;
    }
    const auto nearness = best->nearness();
    if (best->by >= GuessedBy::cut_short && std::ranges::count(matches, nearness, &Match::nearness) > 1) {
        matches.clear();
    }
}

std::vector<Match> matches_of(const std::string& table, const std::vector<FieldSample>& fields,
                              bool needs_coordinates) {
    std::vector<Match> all;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        std::vector<Match> own;
        for (const auto& column : layer_columns()) {
            auto match = is_open_to(column, table, needs_coordinates) ? match_column(fields[i].name, column)
                                                                      : std::nullopt;
            if (match && mostly_fits(column, fields[i])) {
                match->field = i;
                match->column = &column;
                match->of_other_table = column.table != table;
                own.push_back(*match);
            }
        }
        drop_undecided(own);
        all.insert(all.end(), own.begin(), own.end());
    }
    std::ranges::sort(all, {}, &Match::rank);
    return all;
}

bool names_accessions(const FieldSample& field, const std::vector<std::string>& accessions) {
    std::set<std::string> seen;
    for (const auto& text : field.texts) {
        seen.insert(book::field_word(text));
    }
    const auto known = static_cast<std::size_t>(std::ranges::count_if(
        seen, [&](const auto& name) { return std::ranges::find(accessions, name) != accessions.end(); }));
    return known >= 2 && known * 2 >= seen.size();
}

void guess_by_values(FieldMapping& mapping, const std::vector<FieldSample>& fields,
                     const std::vector<std::string>& accessions) {
    const std::string column = mapping.table == "accession" ? "accession.name" : "tree.accession";
    if (mapping.table == "tree_row" || mapping.table == "block" || mapping.to(column) != nullptr) {
        return;
    }
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (mapping.goals[i].column.empty() && names_accessions(fields[i], accessions)) {
            mapping.goals[i].column = column;
            mapping.goals[i].by = GuessedBy::values;
            return;
        }
    }
}

}  // namespace

std::span<const Word<GuessedBy>> words(GuessedBy) {
    static constexpr std::array<Word<GuessedBy>, 7> all{
        {{GuessedBy::nothing, "none", "not imported"},
         {GuessedBy::same_name, "same_name", "same name"},
         {GuessedBy::word, "trade_word", "trade term"},
         {GuessedBy::cut_short, "cut_short", "truncated name"},
         {GuessedBy::near_word, "near_word", "similar name"},
         {GuessedBy::values, "values", "its values are accessions of the book"},
         {GuessedBy::given, "given", "as given"}}};
    return all;
}

std::string samples_of(const FieldSample& field) {
    constexpr std::size_t enough = 3;
    constexpr std::size_t longest = 24;
    std::vector<std::string> seen;
    for (const auto& text : field.texts) {
        const auto shown = one_line(text, longest);
        if (seen.size() < enough && std::ranges::find(seen, shown) == seen.end()) {
            seen.push_back(shown);
        }
    }
    std::string samples;
    for (const auto& text : seen) {
        samples += (samples.empty() ? "" : " | ") + text;
    }
    return samples;
}

const FieldGoal* FieldMapping::to(std::string_view column) const {
    const auto found = std::ranges::find(goals, column, &FieldGoal::column);
    return found == goals.end() ? nullptr : &*found;
}

int farthest_slip(std::string_view word) {
    return word.size() < 4 ? 0 : word.size() < 7 ? 1 : 2;
}

std::string guess_table(const std::vector<FieldSample>& fields, LayerShape shape) {
    if (shape == LayerShape::lines || shape == LayerShape::areas) {
        return shape == LayerShape::lines ? "tree_row" : "block";
    }
    if (shape == LayerShape::points) {
        return "tree";
    }
    const auto fitting = [&](const std::string& table, bool coordinates) {
        std::set<const LayerColumn*> taken;
        for (const auto& match : matches_of(table, fields, coordinates)) {
            taken.insert(match.column);
        }
        return taken.size();
    };
    return fitting("tree", true) > fitting("accession", false) ? "tree" : "accession";
}

FieldMapping guess_mapping(const std::string& table, const std::vector<FieldSample>& fields,
                           const std::vector<std::string>& accessions, bool needs_coordinates) {
    FieldMapping mapping{table, {}};
    for (const auto& field : fields) {
        mapping.goals.push_back({.field = field.name, .column = {}});
    }
    for (const auto& match : matches_of(table, fields, needs_coordinates)) {
        auto& goal = mapping.goals[match.field];
        const auto column = match.column->code;
        if (!goal.column.empty()) {
            continue;
        }
        if (const auto* holder = mapping.to(column)) {
            goal.instead = goal.instead.empty() ? holder->field : goal.instead;
            continue;
        }
        goal = {goal.field, column, match.by, match.word, match.letters_off, {}};
    }
    guess_by_values(mapping, fields, accessions);
    return mapping;
}

}  // namespace pipward::intake
