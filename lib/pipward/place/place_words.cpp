// SPDX-License-Identifier: MIT
#include "pipward/place/detail/place_words.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "pipward/place/detail/misreading.h"
#include "pipward/place/detail/query_text.h"
#include "pipward/value/plain_text.h"

namespace pipward::place::detail {
namespace {

using std::string_view_literals::operator""sv;

struct MarkWords {
    Mark mark;
    std::string_view words;  // with a blank on either side
};

// English, German, French, Spanish, Italian, Dutch, Polish, Czech, Swedish, Portuguese.
constexpr std::array<MarkWords, 7> marks{{
    {Mark::row,
     " row rows tree-row r reihe reihen rh baumreihe rang rangee ligne fila hilera filare fila rij rzad rada "
     "rad radek fileira linha "},
    {Mark::position,
     " position positions pos p place platz stelle tree trees t baum b baume spot slot plant pflanze stand "
     "no nr number num nummer n emplacement arbre arbol albero boom drzewo strom trad arvore posto plek "},
    {Mark::block,
     " block blocks blk quartier quartiere q parzelle parcelle parcela feld field plot section quarter "
     "anlage bloque bloc blok kwartier kwatera blocco quadra kvarter "},
    {Mark::accession,
     " accession accessions variety cultivar sorte variete variedad variedade varieta ras odmiana odruda "
     "sort akzession "},
    {Mark::rootstock,
     " rootstock stock unterlage portegreffe patron portainnesto onderstam podkladka podnoz grundstam "},
    {Mark::planted,
     " planted plantd year gepflanzt pflanzjahr jahr plante plantado piantato geplant posadzone anno "
     "annee ano jaar rok "},
    {Mark::filler,
     " the of in on at im am an auf aus der die das den dem des and und et y e from von vom bei by with mit "
     "de du d la le les l el il del della do da dans en nel is ist wo where find show st nd rd th te ter tes "
     "ten "},
}};

constexpr std::array<std::string_view, 21> english{
    "",         "one",     "two",     "three",     "four",     "five",     "six",
    "seven",    "eight",   "nine",    "ten",       "eleven",   "twelve",   "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"};
constexpr std::array<std::string_view, 21> english_ordinals{
    "",           "first",     "second",    "third",       "fourth",     "fifth",      "sixth",
    "seventh",    "eighth",    "ninth",     "tenth",       "eleventh",   "twelfth",    "thirteenth",
    "fourteenth", "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth", "twentieth"};
constexpr std::array<std::string_view, 21> german{
    "",         "eins",     "zwei",     "drei",     "vier",     "funf",     "sechs",
    "sieben",   "acht",     "neun",     "zehn",     "elf",      "zwolf",    "dreizehn",
    "vierzehn", "funfzehn", "sechzehn", "siebzehn", "achtzehn", "neunzehn", "zwanzig"};
constexpr std::array<std::string_view, 13> german_ordinals{"",       "erste",   "zweite", "dritte", "vierte",
                                                           "funfte", "sechste", "siebte", "achte",  "neunte",
                                                           "zehnte", "elfte",   "zwolfte"};

template <std::size_t size>
std::optional<int> placed_in(const std::array<std::string_view, size>& words, std::string_view word) {
    const auto at = std::ranges::find(words, word);
    return word.empty() || at == words.end() ? std::nullopt
                                             : std::optional{static_cast<int>(at - words.begin())};
}

// "dritter", "dritten" as "dritte".
std::string_view without_ending(std::string_view word) {
    for (const auto ending : {"er"sv, "en"sv, "es"sv, "em"sv}) {
        if (word.size() > 4 && word.ends_with(ending)) {
            return word.substr(0, word.size() - 1);
        }
    }
    return word;
}

constexpr std::array<std::pair<int, std::string_view>, 13> roman_signs{{{1000, "m"},
                                                                        {900, "cm"},
                                                                        {500, "d"},
                                                                        {400, "cd"},
                                                                        {100, "c"},
                                                                        {90, "xc"},
                                                                        {50, "l"},
                                                                        {40, "xl"},
                                                                        {10, "x"},
                                                                        {9, "ix"},
                                                                        {5, "v"},
                                                                        {4, "iv"},
                                                                        {1, "i"}}};

std::string roman_text(int number) {
    std::string text;
    for (const auto& [value, sign] : roman_signs) {
        for (; number >= value; number -= value) {
            text += sign;
        }
    }
    return text;
}

int value_of_signs(std::string_view word) {
    int number = 0;
    for (const auto& [value, sign] : roman_signs) {
        while (word.starts_with(sign)) {
            number += value;
            word.remove_prefix(sign.size());
        }
    }
    return word.empty() ? number : 0;
}

bool is_of_word(char c) {
    return is_digit(c) || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

std::string read_as_figures(std::string_view word) {
    const bool has_digit = std::ranges::any_of(word, is_digit);
    const bool all = std::ranges::all_of(word, [](char c) { return is_digit(look_of(c)); });
    std::string figures(word);
    if (has_digit && all) {
        std::ranges::transform(figures, figures.begin(), look_of);
    }
    return figures;
}

constexpr std::array sorts{"tree"sv,          "baum"sv,    "label"sv,    "etikett"sv, "tag"sv,
                           "anhanger"sv,      "cross"sv,   "kreuzung"sv, "lot"sv,     "partie"sv,
                           "seed"sv,          "pollen"sv,  "code"sv,     "no"sv,      "nr"sv,
                           "accession"sv,     "variety"sv, "cultivar"sv, "sorte"sv,   "saatgut"sv,
                           "seedling"sv,      "samling"sv, "family"sv,   "familie"sv, "pollenpartie"sv,
                           "saatgutpartie"sv, "arbre"sv,   "the"sv,      "number"sv,  "nummer"sv};

}  // namespace

Mark mark_of(std::string_view word) {
    const auto sought = " " + std::string(word) + " ";
    for (const auto& [mark, words] : marks) {
        if (words.find(sought) != std::string_view::npos) {
            return mark;
        }
    }
    return Mark::none;
}

std::optional<int> roman_number(std::string_view word) {
    constexpr std::size_t longest = 15;  // of 3888
    const int number = word.empty() || word.size() > longest ? 0 : value_of_signs(word);
    return number > 0 && number < 4000 && roman_text(number) == word ? std::optional{number} : std::nullopt;
}

std::optional<int> number_in_words(std::string_view word) {
    for (const auto* table : {&english, &english_ordinals, &german}) {
        if (const auto number = placed_in(*table, word)) {
            return number;
        }
    }
    const auto ordinal = placed_in(german_ordinals, without_ending(word));
    return ordinal ? ordinal : roman_number(word);
}

std::vector<Token> tokens_of(std::string_view folded) {
    std::vector<Token> tokens;
    std::size_t word = 0;
    for (std::size_t at = 0; at < folded.size();) {
        if (!is_of_word(folded[at])) {
            ++word;
            ++at;
            continue;
        }
        const bool number = is_digit(folded[at]);
        auto end = at;
        while (end < folded.size() && is_of_word(folded[end]) && is_digit(folded[end]) == number) {
            ++end;
        }
        auto text = folded.substr(at, end - at);
        while (number && text.size() > 1 && text.front() == '0') {
            text.remove_prefix(1);
        }
        tokens.push_back({std::string(text), number, word});
        at = end;
    }
    return tokens;
}

std::string with_figures_read(std::string_view folded) {
    std::string text;
    std::string word;
    for (const char c : folded) {
        if (is_of_word(c)) {
            word += c;
        } else {
            text += read_as_figures(word);
            text += c;
            word.clear();
        }
    }
    return text + read_as_figures(word);
}

std::string_view without_sort(std::string_view folded) {
    while (true) {
        const auto end = std::ranges::find_if_not(folded, is_of_word);
        const auto word = folded.substr(0, static_cast<std::size_t>(end - folded.begin()));
        const auto rest_at = std::find_if(end, folded.end(), is_of_word);
        if (rest_at == folded.end() || std::ranges::find(sorts, word) == sorts.end()) {
            return folded;
        }
        folded.remove_prefix(static_cast<std::size_t>(rest_at - folded.begin()));
    }
}

}  // namespace pipward::place::detail
