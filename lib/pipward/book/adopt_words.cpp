// SPDX-License-Identifier: MIT
#include "pipward/book/adopt_words.h"

#include <array>

namespace pipward::book {
namespace {

std::vector<std::string_view> folded_words(const KnownWords& known) {
    std::vector<std::string_view> words;
    for (const auto& word : known) {
        words.emplace_back(word.folded);
    }
    return words;
}

std::vector<AdoptColumn> make_columns() {
    std::vector<AdoptColumn> columns;
    for (const auto table : adopted_tables()) {
        for (const auto& column : find_book_table(table)->columns) {
            columns.push_back({table, column.name, folded_words(column.known_as)});
        }
    }
    columns.push_back(
        {place_table,
         "x",
         {"x", "lon", "long", "longitude", "lng", "easting", "east", "e", "xcoord", "coordx", "pointx",
          "gpslon", "gpslongitude", "rechtswert", "ostwert", "laengengrad", "langengrad"}});
    columns.push_back({place_table,
                       "y",
                       {"y", "lat", "latitude", "northing", "north", "n", "ycoord", "coordy", "pointy",
                        "gpslat", "gpslatitude", "hochwert", "nordwert", "breitengrad"}});
    return columns;
}

std::vector<ChoiceWords> make_choices() {
    std::vector<ChoiceWords> choices;
    for (const auto& domain : field_domains()) {
        for (const auto& choice : domain.choices) {
            choices.push_back({domain.name, choice.value, folded_words(choice.known_as)});
        }
    }
    for (const auto& usual : find_column(*find_book_table("accession"), "species")->usual) {
        choices.push_back({"species", usual.value, folded_words(usual.known_as)});
    }
    return choices;
}

}  // namespace

std::span<const AdoptColumn> adopt_columns() {
    static const auto columns = make_columns();
    return columns;
}

std::span<const std::string_view> adopted_tables() {
    static constexpr std::array<std::string_view, 4> tables{"tree", "accession", "tree_row", "block"};
    return tables;
}

std::span<const ChoiceWords> adopt_choices() {
    static const auto choices = make_choices();
    return choices;
}

}  // namespace pipward::book
