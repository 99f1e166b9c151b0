// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "pipward/book/heading.h"
#include "pipward/intake/detail/adopt_known.h"
#include "pipward/intake/detail/adopt_rows.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/value/nearest.h"

namespace pipward::intake::detail {
namespace {

std::vector<AdoptRow*> rows_with(Adoption& adoption, const std::string& column, const std::string& name) {
    std::vector<AdoptRow*> rows;
    for (auto& row : adoption.rows) {
        if (row.fate != Fate::left_out && row.text(column) == name) {
            rows.push_back(&row);
        }
    }
    return rows;
}

/// Every name of the column that the book lacks, in the order of the alphabet.
std::vector<std::string> unknown_names(const Adoption& adoption, const std::string& column,
                                       const std::vector<std::string>& known) {
    std::vector<std::string> names;
    for (const auto& row : adoption.rows) {
        const auto name = row.fate == Fate::left_out ? std::string{} : row.text(column);
        if (!name.empty() && std::ranges::find(known, name) == known.end()) {
            names.push_back(name);
        }
    }
    std::ranges::sort(names);
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

/// The one name of the book that differs only by capitals and blanks.
std::optional<std::string> written_otherwise(const std::string& name, const std::vector<std::string>& known) {
    const auto wanted = loose(name);
    const auto same = [&](const std::string& other) { return loose(other) == wanted; };
    const auto found = std::ranges::find_if(known, same);
    return found != known.end() && std::ranges::count_if(known, same) == 1 ? std::optional{*found}
                                                                           : std::nullopt;
}

void write_as_in_book(Adoption& adoption, const std::string& column, const std::string& name,
                      const std::string& known) {
    const auto rows = rows_with(adoption, column, name);
    for (auto* row : rows) {
        row->cells[column] = known;
    }
    adoption.tell(Level::warning, field_of(adoption, column), name,
                  rows.size() == 1
                      ? say("The book writes it \"{}\": only capitals or spaces differ, in 1 feature.", known)
                      : say("The book writes it \"{}\": only capitals or spaces differ, in {} features.",
                            known, rows.size()),
                  say("It counts as the same and is written as in the book."));
}

void refuse(Adoption& adoption, const std::string& column, const std::string& name, Sentence message,
            Sentence remedy) {
    for (auto* row : rows_with(adoption, column, name)) {
        row->why = row->fate == Fate::refused ? row->why : message;
        row->fate = Fate::refused;
    }
    adoption.tell(Level::error, field_of(adoption, column), name, std::move(message), std::move(remedy));
}

Sentence nearest_words(const std::string& name, const std::vector<std::string>& known) {
    const auto few = nearest_few(name, known);
    return few.empty() ? Sentence{}
                       : say("The nearest in the book: {}.", fmt::format("{}", fmt::join(few, ", ")));
}

/// What the trees of an accession say of it; nothing where they say different things.
std::optional<Cell> told_of(const std::vector<AdoptRow*>& rows, const std::string& column, bool& differs) {
    std::optional<Cell> told;
    for (const auto* row : rows) {
        const auto cell = row->accession.find(column);
        if (cell != row->accession.end()) {
            differs = differs || (told && *told != cell->second);
            told = cell->second;
        }
    }
    return differs ? std::nullopt : told;
}

MadeRow accession_of(Adoption& adoption, const std::string& name, const AdoptOptions& options) {
    MadeRow made{"accession", {{"name", name}}};
    const auto rows = rows_with(adoption, "accession", name);
    for (const auto& column : book::find_book_table("accession")->columns) {
        bool differs = false;
        if (auto told = told_of(rows, std::string(column.name), differs)) {
            made.cells[std::string(column.name)] = *told;
        } else if (differs) {
            refuse(adoption, "accession", name, say("Its trees disagree: {}.", std::string(column.label)),
                   say("Correct them, or leave that field out with map."));
        }
    }
    fill_in_accession(made.cells, options);
    return made;
}

std::string digits_of(const std::string& name) {
    std::string digits;
    std::ranges::copy_if(name, std::back_inserter(digits),
                         [](unsigned char c) { return std::isdigit(c) != 0; });
    return digits;
}

/// A name some letters off may be a slip; one with another number is another selection.
std::optional<std::string> perhaps_meant(const std::string& name, const std::vector<std::string>& known) {
    const auto wanted = loose(name);
    for (const auto& other : known) {
        if (edit_distance(wanted, loose(other)) <= farthest_slip(wanted) &&
            digits_of(name) == digits_of(other)) {
            return other;
        }
    }
    return std::nullopt;
}

void add_accession(Adoption& adoption, const std::string& name, const std::vector<std::string>& known,
                   const AdoptOptions& options) {
    auto made = accession_of(adoption, name, options);
    if (!made.cells.contains("kind")) {
        refuse(adoption, "accession", name, say("It is not known what kind of accession it is."),
               say("Give it with accession-kind: cultivar, selection, seedling, species or unknown."));
    }
    if (const auto meant = perhaps_meant(name, known)) {
        adoption.tell(Level::warning, field_of(adoption, "accession"), name,
                      say("A new accession, but its name is very similar to \"{}\".", *meant),
                      say("If it is a mistake, correct it in the layer before writing."));
    }
    adoption.made.push_back(std::move(made));
}

void judge_accession(Adoption& adoption, const std::string& name, std::vector<std::string>& known,
                     const AdoptOptions& options) {
    if (const auto same = written_otherwise(name, known)) {
        write_as_in_book(adoption, "accession", name, *same);
    } else if (options.add_accessions) {
        add_accession(adoption, name, known, options);
        known.push_back(name);
    } else {
        const auto trees = rows_with(adoption, "accession", name).size();
        auto remedy = nearest_words(name, known);
        remedy += remedy.empty() ? Sentence{} : verbatim(" ");
        remedy += say("Correct it, or let add-accessions add it.");
        refuse(adoption, "accession", name,
               trees == 1 ? say("The book has no accession of this name; 1 tree names it.")
                          : say("The book has no accession of this name; {} trees name it.", trees),
               std::move(remedy));
    }
}

// Seed of apples and pears is treated differently.
void tell_unknown_species(Adoption& adoption) {
    const auto without = std::ranges::count_if(adoption.made, [](const MadeRow& made) {
        return made.table == "accession" && !made.cells.contains("species");
    });
    if (without > 0) {
        adoption.tell(Level::warning, "species", {},
                      without == 1
                          ? say("It is not known whether the new accession is an apple or a pear.")
                          : say("It is not known whether {} new accessions are apples or pears.", without),
                      say("Give it with species, as in species apple; or fill it in later."));
    }
}

void judge_accessions(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    std::vector<std::string> known;
    for (const auto& accession : orchard.accessions) {
        known.push_back(accession.name);
    }
    for (const auto& name : unknown_names(adoption, "accession", known)) {
        judge_accession(adoption, name, known, options);
    }
    tell_unknown_species(adoption);
}

struct OtherFact {
    std::string name;
    std::string column;
    std::string of_layer;
    std::string of_book;

    auto operator<=>(const OtherFact&) const = default;
};

// What a layer of trees says of accessions that the book has is compared, never written.
void tell_other_facts(Adoption& adoption, const Orchard& orchard) {
    const auto known = known_things("accession", orchard);
    std::set<OtherFact> told;
    for (const auto& row : adoption.rows) {
        const auto accession = known.find(row.text("accession"));
        if (accession == known.end() || row.accession.empty()) {
            continue;
        }
        for (const auto& difference :
             differences({.feature = {}, .cells = row.accession}, accession->second)) {
            told.insert({accession->first, difference.column, difference.of_layer, difference.of_book});
        }
    }
    for (const auto& [name, column, of_layer, of_book] : told) {
        const auto* goal = adoption.mapping.to("accession." + column);
        adoption.tell(Level::warning, goal == nullptr ? column : goal->field, of_layer,
                      say("Of {} the book says \"{}\".", name, of_book),
                      say("The book's value stays; correct it there if it is wrong."));
    }
}

void judge_blocks(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    std::vector<std::string> known;
    for (const auto& block : orchard.blocks) {
        known.push_back(block.name);
    }
    for (const auto& name : unknown_names(adoption, "block", known)) {
        if (const auto same = written_otherwise(name, known)) {
            write_as_in_book(adoption, "block", name, *same);
        } else if (options.add_rows) {
            adoption.made.push_back(made_block(adoption, name, orchard.crs));
            known.push_back(name);
        } else {
            auto remedy = nearest_words(name, known);
            remedy += remedy.empty() ? Sentence{} : verbatim(" ");
            remedy += say("Import the layer of the blocks first, or let add-rows draw it around its trees.");
            refuse(adoption, "block", name, say("The book has no block of this name."), std::move(remedy));
        }
    }
}

}  // namespace

std::string loose(std::string_view name) {
    std::string text;
    for (const char letter : name) {
        const auto byte = static_cast<unsigned char>(letter);
        if (byte >= 0x80 || std::isspace(byte) == 0) {
            text += byte < 0x80 ? static_cast<char>(std::tolower(byte)) : letter;
        }
    }
    return text;
}

void judge_names(Adoption& adoption, const AdoptOptions& options, const Orchard& orchard) {
    if (adoption.table == "tree") {
        judge_accessions(adoption, options, orchard);
        tell_other_facts(adoption, orchard);
    }
    if (adoption.table == "tree" || adoption.table == "tree_row") {
        judge_blocks(adoption, options, orchard);
    }
    if (adoption.table == "tree") {
        judge_tree_rows(adoption, options, orchard);
    }
}

}  // namespace pipward::intake::detail
