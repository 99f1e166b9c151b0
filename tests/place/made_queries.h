// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <functional>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "pipward/place/earth.h"
#include "pipward/place/geo_uri.h"
#include "place/large_orchard.h"

/// Search texts as people write them down wrongly, with the trees that they mean. What a text means is known
/// by how it was made, never from a search. Texts that name another tree by its whole label are not asked.
namespace pipward::testing {

struct MadeQuery {
    std::string kind;
    std::string text;
    std::set<std::size_t> meant;  ///< any of these trees; none where nothing should be found
};

class QueryMaker {
  public:
    QueryMaker(const Orchard& orchard, std::uint64_t seed) : orchard_(orchard), random_(seed) {
        for (const auto& tree : orchard.trees) {
            labels_.insert(squeezed(tree.label));
        }
        for (std::size_t i = 0; i < orchard.trees.size(); ++i) {
            if (orchard.trees[i].rootstock) {
                grafted_.push_back(i);
            } else {
                seedlings_.push_back(i);
            }
        }
    }

    std::vector<MadeQuery> all(int of_each) {
        std::vector<MadeQuery> queries;
        for (const auto& [kind, make] : makers()) {
            for (int i = 0; i < of_each; ++i) {
                queries.push_back(make());
                queries.back().kind = kind;
            }
        }
        return queries;
    }

    static std::vector<std::string> nonsense() {
        return {"0000000",     "00000",        "qqqqqqqq",    "asdfghjk",   "qwertzuiop",
                "!!!!",        "9999 9999",    "hello world", "zzz",        "xyzzy",
                "8/8/8/8/8/8", "lorem ipsum",  "77777777",    "OOOOOOO",    "the of in",
                "-",           "123456789012", "abcdefg",     "0.0,0.0",    "geo:89.9,-170",
                "l1l1l1l1",    "tree tree",    "row row",     "Reihe Baum", "aaaa bbbb"};
    }

  private:
    using Maker = std::function<MadeQuery()>;

    std::vector<std::pair<std::string, Maker>> makers() {
        return {
            {"label, one character misread", [this] { return misread(1); }},
            {"label, two characters misread", [this] { return misread(2); }},
            {"label, other signs and zeros", [this] { return other_signs(); }},
            {"label, neighbours swapped", [this] { return swapped_label(); }},
            {"label, a letter mistyped", [this] { return mistyped_label(); }},
            {"label with words around it", [this] { return label_in_words(); }},
            {"address in English", [this] { return english(); }},
            {"address in German", [this] { return german(); }},
            {"address in other languages", [this] { return other_languages(); }},
            {"address, Roman numerals", [this] { return roman(); }},
            {"address, block misspelt", [this] { return block_misspelt(); }},
            {"address, a figure misread", [this] { return figure_misread(); }},
            {"accession misspelt", [this] { return accession_misspelt(); }},
            {"accession, words turned or cut", [this] { return accession_turned(); }},
            {"accession by its nickname, misspelt", [this] { return nicknamed(); }},
            {"accession and block", [this] { return accession_and_block(); }},
            {"accession, rootstock and year", [this] { return stock_and_year(); }},
            {"seedling's number misread", [this] { return seedling_code(); }},
            {"parents misspelt and number", [this] { return parents(); }},
            {"tag, cross or lot", [this] { return codes(); }},
            {"label, parts turned", [this] { return turned_label(); }},
            {"address in one word", [this] { return glued_address(); }},
            {"address, numbers in words", [this] { return spoken_address(); }},
            {"accession, two slips", [this] { return two_slips(); }},
            {"accession misspelt and block", [this] { return misspelt_in_block(); }},
            {"parents, seedling named first", [this] { return seedling_first(); }},
            {"geo: link or coordinates", [this] { return coordinates(); }},
        };
    }

    static std::string squeezed(const std::string& text) {
        std::string kept;
        for (const char c : text) {
            if (std::isalnum(static_cast<unsigned char>(c)) != 0) {
                kept += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            }
        }
        return kept;
    }
    static std::string lower(std::string text) {
        std::ranges::transform(text, text.begin(),
                               [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
        return text;
    }

    std::size_t below(std::size_t limit) { return static_cast<std::size_t>(random_() % limit); }
    template <class All>
    const auto& one_of(const All& all) {
        return all[below(all.size())];
    }
    std::string form(const std::vector<std::string>& forms, const Tree& tree) {
        auto text = one_of(forms);
        const auto put = [&](const std::string& mark, const std::string& value) {
            for (auto at = text.find(mark); at != std::string::npos; at = text.find(mark)) {
                text.replace(at, mark.size(), value);
            }
        };
        put("BB", *tree.block);
        put("RR", *tree.row);
        put("PP", std::to_string(*tree.position));
        return text;
    }

    std::size_t any_tree() { return below(orchard_.trees.size()); }
    const Tree& tree(std::size_t i) const { return orchard_.trees[i]; }

    std::string looks_like(char c) {
        switch (std::toupper(static_cast<unsigned char>(c))) {
            case '0':
                return "O";
            case 'O':
                return "0";
            case '1':
                return below(2) == 0 ? "l" : "I";
            case 'L':
            case 'I':
                return "1";
            case '5':
                return "S";
            case 'S':
                return "5";
            case '2':
                return "Z";
            case 'Z':
                return "2";
            case '8':
                return "B";
            case 'B':
                return "8";
            case '6':
                return "G";
            case 'G':
                return "6";
            default:
                return {};
        }
    }

    // Some character that looks like another one, `times` of them.
    std::string seen_wrongly(std::string text, int times) {
        std::vector<std::size_t> places;
        for (std::size_t i = 0; i < text.size(); ++i) {
            if (!looks_like(text[i]).empty()) {
                places.push_back(i);
            }
        }
        std::ranges::shuffle(places, random_);
        for (int i = 0; i < times && static_cast<std::size_t>(i) < places.size(); ++i) {
            text.replace(places[static_cast<std::size_t>(i)], 1,
                         looks_like(text[places[static_cast<std::size_t>(i)]]));
        }
        return text;
    }

    // A slip in a word: a letter left out, doubled, exchanged or two swapped; never the first.
    std::string misspelt(std::string word) {
        const auto at = 1 + below(word.size() - 2);
        switch (below(4)) {
            case 0:
                word.erase(at, 1);
                break;
            case 1:
                word.insert(at, 1, word[at]);
                break;
            case 2:
                word[at] = "aeioulnrst"[below(10)];
                break;
            default:
                std::swap(word[at], word[at + 1]);
        }
        return word;
    }

    MadeQuery misread(int times) {
        while (true) {
            const auto i = any_tree();
            const auto text = seen_wrongly(tree(i).label, times);
            if (text != tree(i).label && !labels_.contains(squeezed(text))) {
                return {{}, text, {i}};
            }
        }
    }

    MadeQuery other_signs() {
        const auto i = any_tree();
        const auto& t = tree(i);
        const auto code = t.label.substr(0, 2);
        const auto position = std::to_string(*t.position);
        const std::vector<std::string> forms{lower(squeezed(t.label)),
                                             code + " " + *t.row + " " + position,
                                             lower(code) + *t.row + "-" + position,
                                             code + "/" + *t.row + "/" + position,
                                             code + "_0" + *t.row + "_0" + position,
                                             code + ". " + *t.row + "." + position};
        return {{}, one_of(forms), {i}};
    }

    MadeQuery swapped_label() {
        while (true) {
            const auto i = any_tree();
            auto text = tree(i).label;
            const auto at = 3 + below(text.size() - 4);
            std::swap(text[at], text[at + 1]);
            if (text[at] != '-' && text[at + 1] != '-' && text != tree(i).label &&
                !labels_.contains(squeezed(text))) {
                return {{}, text, {i}};
            }
        }
    }

    // In the letters only: another figure is another tree.
    MadeQuery mistyped_label() {
        while (true) {
            const auto i = any_tree();
            auto text = tree(i).label;
            const bool twice = below(2) == 0;
            if (twice) {
                text.insert(1, 1, text[0]);
            } else {
                text.insert(2, 1, "xqvjk"[below(5)]);
            }
            if (!labels_.contains(squeezed(text))) {
                return {{}, text, {i}};
            }
        }
    }

    MadeQuery label_in_words() {
        const auto i = any_tree();
        const auto& t = tree(i);
        const std::vector<std::string> forms{"tree " + t.label,
                                             "Baum " + t.label,
                                             "label: " + t.label,
                                             "Etikett " + lower(t.label),
                                             t.label + " " + *t.accession,
                                             t.label + " (" + *t.accession + ")",
                                             *t.accession + ", " + t.label,
                                             t.label + " in " + *t.block};
        return {{}, one_of(forms), {i}};
    }

    MadeQuery english() {
        const auto i = any_tree();
        return {{},
                form({"row RR tree PP BB", "RR/PP BB", "BB rRR pPP", "rRR pPP BB", "BB, row RR, position PP",
                      "position PP in row RR of BB", "tree PP, row RR, BB", "block BB row RR pos PP",
                      "tree no. PP in row RR, block BB", "BB block row RR tree PP", "BB RR-PP", "BB: RR.PP",
                      "BB row RR # PP", "R RR P PP BB", "BB Row RR Tree PP"},
                     tree(i)),
                {i}};
    }
    MadeQuery german() {
        const auto i = any_tree();
        return {{},
                form({"Reihe RR Baum PP BB", "BB, Reihe RR, Platz PP", "Baum PP in Reihe RR im Quartier BB",
                      "Quartier BB Reihe RR Position PP", "PP. Baum in Reihe RR, BB", "BB Reihe RR Nr. PP",
                      "BB R RR B PP", "Baum Nr. PP, RR. Reihe, BB", "Quartier BB, RR. Reihe, PP. Baum"},
                     tree(i)),
                {i}};
    }
    MadeQuery other_languages() {
        const auto i = any_tree();
        return {{},
                form({"rang RR arbre PP BB", "BB, rangée RR, arbre no PP", "parcelle BB rang RR place PP",
                      "fila RR árbol PP BB", "filare RR albero PP, BB", "rij RR boom PP, BB",
                      "BB rząd RR drzewo PP", "BB rad RR träd PP"},
                     tree(i)),
                {i}};
    }

    static std::string roman_of(int number) {
        static constexpr std::array<std::pair<int, const char*>, 9> signs{{{100, "C"},
                                                                           {90, "XC"},
                                                                           {50, "L"},
                                                                           {40, "XL"},
                                                                           {10, "X"},
                                                                           {9, "IX"},
                                                                           {5, "V"},
                                                                           {4, "IV"},
                                                                           {1, "I"}}};
        std::string text;
        for (const auto& [value, sign] : signs) {
            for (; number >= value; number -= value) {
                text += sign;
            }
        }
        return text;
    }

    MadeQuery roman() {
        const auto i = any_tree();
        auto t = tree(i);
        t.row = roman_of(std::stoi(*t.row));
        return {{}, form({"BB RR PP", "RR/PP BB", "BB row RR tree PP", "BB, Reihe RR, PP"}, t), {i}};
    }

    MadeQuery block_misspelt() {
        while (true) {
            const auto i = any_tree();
            auto t = tree(i);
            t.block = misspelt(*t.block);
            if (std::ranges::find(block_names, *t.block) == block_names.end()) {
                return {
                    {},
                    form({"BB row RR tree PP", "BB RR/PP", "row RR tree PP BB", "BB Reihe RR Baum PP"}, t),
                    {i}};
            }
        }
    }

    MadeQuery figure_misread() {
        while (true) {
            const auto i = any_tree();
            const auto& t = tree(i);
            const auto row = seen_wrongly(*t.row, 1);
            const auto position = seen_wrongly(std::to_string(*t.position), 1);
            const bool digits = position.find_first_of("0123456789") != std::string::npos;
            if (position != std::to_string(*t.position) && digits) {
                return {
                    {},
                    *t.block + (below(2) == 0 ? " " + *t.row + "/" : " row " + *t.row + " tree ") + position,
                    {i}};
            }
            if (row != *t.row && row.find_first_of("0123456789") != std::string::npos) {
                return {{}, *t.block + " row " + row + " tree " + std::to_string(*t.position), {i}};
            }
        }
    }

    std::set<std::size_t> trees_where(const std::function<bool(const Tree&)>& holds) const {
        std::set<std::size_t> found;
        for (std::size_t i = 0; i < orchard_.trees.size(); ++i) {
            if (holds(orchard_.trees[i])) {
                found.insert(i);
            }
        }
        return found;
    }
    std::set<std::size_t> trees_of(const std::string& accession) const {
        return trees_where([&](const Tree& t) { return t.accession == accession; });
    }
    bool is_accession(const std::string& name) const {
        return std::ranges::any_of(orchard_.accessions,
                                   [&](const Accession& a) { return squeezed(a.name) == squeezed(name); });
    }

    std::string any_cultivar() { return *tree(one_of(grafted_)).accession; }

    MadeQuery accession_misspelt() {
        while (true) {
            const auto name = any_cultivar();
            const auto text = misspelt(name);
            if (!is_accession(text)) {
                return {{}, below(2) == 0 ? text : lower(text), trees_of(name)};
            }
        }
    }

    MadeQuery accession_turned() {
        while (true) {
            const auto name = any_cultivar();
            const auto blank = name.find(' ');
            if (blank == std::string::npos) {
                continue;
            }
            const auto first = name.substr(0, blank);
            const auto second = name.substr(blank + 1);
            const std::vector<std::string> forms{second + " " + first, second + ", " + first,
                                                 first.substr(0, first.size() - 1) + ". " + second,
                                                 first + "-" + second.substr(0, 3) + "."};
            return {{}, one_of(forms), trees_of(name)};
        }
    }

    MadeQuery nicknamed() {
        const auto number = below(40);
        const auto name = nickname(static_cast<int>(number));
        return {{}, below(2) == 0 ? name : misspelt(name), trees_of(orchard_.accessions[number].name)};
    }

    MadeQuery accession_and_block() {
        const auto i = one_of(grafted_);
        const auto t = tree(i);
        const auto name = below(2) == 0 ? *t.accession : lower(*t.accession);
        const auto where = below(3);
        const auto text = where == 0   ? name + " " + *t.block
                          : where == 1 ? *t.block + ": " + name
                                       : name + " in " + *t.block + ", row " + *t.row;
        return {{}, text, trees_where([&](const Tree& o) {
                    return o.accession == t.accession && o.block == t.block && (where != 2 || o.row == t.row);
                })};
    }

    MadeQuery stock_and_year() {
        const auto t = tree(one_of(grafted_));
        const auto year = parts_of(*t.planted_on).year;
        const auto way = below(3);
        const auto text = way == 0 ? fmt::format("{} {} {}", *t.accession, *t.rootstock, year)
                          : way == 1
                              ? fmt::format("{} on {} planted {}", *t.accession, lower(*t.rootstock), year)
                              : fmt::format("{} {} {}", *t.block, year, *t.accession);
        return {{}, text, trees_where([&](const Tree& o) {
                    return o.accession == t.accession && parts_of(*o.planted_on).year == year &&
                           (way == 2 ? o.block == t.block : o.rootstock == t.rootstock);
                })};
    }

    MadeQuery seedling_code() {
        while (true) {
            const auto name = *tree(one_of(seedlings_)).accession;
            const auto text = seen_wrongly(name, 1);
            if (text != name) {
                return {{}, text, trees_of(name)};
            }
        }
    }

    MadeQuery parents() {
        const auto& seedling =
            *std::ranges::find(orchard_.accessions, *tree(one_of(seedlings_)).accession, &Accession::name);
        const auto number = std::stoi(seedling.name.substr(seedling.name.rfind('-') + 1));
        const bool slip = below(2) == 0;
        const auto mother = slip ? misspelt(*seedling.seed_parent) : *seedling.seed_parent;
        const auto text =
            fmt::format("{} x {} {}{}", mother, *seedling.pollen_parent, below(2) == 0 ? "no. " : "", number);
        std::set<std::string> alike;
        for (const auto& other : orchard_.accessions) {
            if (other.seed_parent == seedling.seed_parent && other.pollen_parent == seedling.pollen_parent &&
                std::stoi(other.name.substr(other.name.rfind('-') + 1)) == number) {
                alike.insert(other.name);
            }
        }
        return {{}, text, trees_where([&](const Tree& o) {
                    return o.accession && alike.contains(*o.accession);
                })};
    }

    MadeQuery codes() {
        const auto way = below(4);
        if (way == 3) {
            const auto& lot = one_of(orchard_.seed_lots);
            return {{}, "seed lot " + seen_wrongly(lot.code, 1), children_of(lot.cross)};
        }
        const auto& work = one_of(orchard_.pollinations);
        const auto worked = trees_where([&](const Tree& t) { return t.label == work.tree; });
        if (way == 0) {
            return {{}, below(2) == 0 ? "tag " + work.tag : seen_wrongly(work.tag, 1), worked};
        }
        if (way == 1) {
            auto trees = children_of(work.cross);
            trees.insert(worked.begin(), worked.end());
            return {{}, (below(2) == 0 ? "cross " : "Kreuzung ") + work.cross, trees};
        }
        return {{}, lower(*work.lot), worked};
    }

    MadeQuery turned_label() {
        const auto i = any_tree();
        const auto& t = tree(i);
        const auto code = t.label.substr(0, 2);
        const auto rest = t.label.substr(3);
        return {{}, below(2) == 0 ? rest + " " + code : rest + "-" + lower(code), {i}};
    }

    MadeQuery glued_address() {
        const auto i = any_tree();
        auto text = form(
            {"BBRR/PP", "RR/PPBB", "BBR RRT PP", "rRRpPPBB", "ReiheRRBaumPPBB", "BB,RR,PP", "BB-r.RR-no.PP"},
            tree(i));
        std::erase(text, ' ');
        return {{}, text, {i}};
    }

    MadeQuery spoken_address() {
        static const std::array<std::string, 13> plain{"",     "one",    "two",   "three", "four",
                                                       "five", "six",    "seven", "eight", "nine",
                                                       "ten",  "eleven", "twelve"};
        static const std::array<std::string, 13> ordinal{"",      "first",    "second",  "third",  "fourth",
                                                         "fifth", "sixth",    "seventh", "eighth", "ninth",
                                                         "tenth", "eleventh", "twelfth"};
        static const std::array<std::string, 13> german{"",       "erste",   "zweite", "dritte", "vierte",
                                                        "fünfte", "sechste", "siebte", "achte",  "neunte",
                                                        "zehnte", "elfte",   "zwölfte"};
        while (true) {
            const auto i = any_tree();
            const auto row = static_cast<std::size_t>(std::stoi(*tree(i).row));
            const auto position = static_cast<std::size_t>(*tree(i).position);
            if (row > 12 || position > 12) {
                continue;
            }
            const auto& block = *tree(i).block;
            const std::vector<std::string> forms{
                block + " row " + plain[row] + " tree " + plain[position],
                ordinal[row] + " row, " + ordinal[position] + " tree, " + block,
                "the " + ordinal[position] + " tree of row " + plain[row] + " in " + block,
                block + ", " + german[row] + " Reihe, Baum " + std::to_string(position),
                std::to_string(row) + "th row tree " + std::to_string(position) + " " + block};
            return {{}, one_of(forms), {i}};
        }
    }

    MadeQuery two_slips() {
        while (true) {
            const auto name = any_cultivar();
            const auto text = misspelt(misspelt(name));
            if (name.size() > 9 && !is_accession(text)) {
                return {{}, text, trees_of(name)};
            }
        }
    }

    MadeQuery misspelt_in_block() {
        while (true) {
            const auto t = tree(one_of(grafted_));
            const auto name = misspelt(*t.accession);
            if (!is_accession(name)) {
                return {{},
                        below(2) == 0 ? name + " " + *t.block : *t.block + ", " + lower(name),
                        trees_where(
                            [&](const Tree& o) { return o.accession == t.accession && o.block == t.block; })};
            }
        }
    }

    MadeQuery seedling_first() {
        auto query = parents();
        const auto last = query.text.rfind(' ');
        const auto number = query.text.substr(last + 1);
        auto couple = query.text.substr(0, last);
        if (couple.ends_with(" no.")) {
            couple.resize(couple.size() - 4);
        }
        const std::vector<std::string> forms{
            "seedling " + number + " of " + couple, "no. " + number + " of " + couple,
            "Sämling " + number + " aus " + couple, number + " " + couple, couple + " (" + number + ")"};
        query.text = one_of(forms);
        return query;
    }

    std::set<std::size_t> children_of(const std::string& cross) const {
        return trees_where(
            [&](const Tree& t) { return t.accession && t.accession->starts_with(cross + "-"); });
    }

    MadeQuery coordinates() {
        const auto i = any_tree();
        const MapPoint beside{tree(i).at->x + 0.4, tree(i).at->y - 0.5, {}};
        const auto place = place::ToEarth(orchard_.crs)(beside).value();
        const auto dms = [](double degrees) {
            const int whole = static_cast<int>(degrees);
            const int minutes = static_cast<int>((degrees - whole) * 60);
            return fmt::format("{}°{}'{:.2f}\"", whole, minutes, (degrees - whole - minutes / 60.0) * 3600);
        };
        const std::vector<std::string> forms{place::geo_uri(place),
                                             place::geo_uri(place, Metres{3}),
                                             fmt::format("{:.6f}, {:.6f}", place.lat, place.lon),
                                             fmt::format("{:.6f} {:.6f}", place.lat, place.lon),
                                             fmt::format("N {:.6f} E {:.6f}", place.lat, place.lon),
                                             fmt::format("{:.6f}° N, {:.6f}° E", place.lat, place.lon),
                                             dms(place.lat) + "N " + dms(place.lon) + "E",
                                             fmt::format("{:.1f}, {:.1f}", beside.x, beside.y)};
        return {{}, one_of(forms), {i}};
    }

    const Orchard& orchard_;
    std::mt19937_64 random_;
    std::set<std::string> labels_;
    std::vector<std::size_t> grafted_;
    std::vector<std::size_t> seedlings_;
};

}  // namespace pipward::testing
