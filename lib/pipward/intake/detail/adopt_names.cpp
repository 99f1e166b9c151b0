// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>
#include <map>
#include <set>

#include "pipward/book/heading.h"
#include "pipward/intake/detail/adopt_known.h"
#include "pipward/intake/detail/adopt_rows.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/value/nearest.h"

namespace pipward::intake::detail {
namespace {

using Rows = std::vector<AdoptRow*>;

std::string digits_of(const std::string& name) {
    std::string digits;
    std::ranges::copy_if(name, std::back_inserter(digits),
                         [](unsigned char c) { return std::isdigit(c) != 0; });
    return digits;
}

/// The names that the book has, or is to have, of one sort.
class KnownNames {
  public:
    void add(const std::string& name) {
        if (names_.insert(name).second) {
            in_order_.push_back(name);
            by_loose_[loose(name)].push_back(name);
            by_digits_[digits_of(name)].push_back(name);
        }
    }

    bool has(const std::string& name) const { return names_.contains(name); }
    const std::vector<std::string>& all() const { return in_order_; }

    /// The one name that differs only by capitals and blanks.
    std::optional<std::string> written_otherwise(const std::string& name) const {
        const auto found = by_loose_.find(loose(name));
        return found != by_loose_.end() && found->second.size() == 1 ? std::optional{found->second.front()}
                                                                     : std::nullopt;
    }

    /// A name some letters off may be a slip; one with another number is another selection.
    std::optional<std::string> perhaps_meant(const std::string& name) const {
        const auto wanted = loose(name);
        const auto alike = by_digits_.find(digits_of(name));
        for (const auto& other : alike == by_digits_.end() ? std::vector<std::string>{} : alike->second) {
            if (edit_distance(wanted, loose(other)) <= farthest_slip(wanted)) {
                return other;
            }
        }
        return std::nullopt;
    }

  private:
    std::set<std::string> names_;
    std::vector<std::string> in_order_;
    std::map<std::string, std::vector<std::string>> by_loose_;
    std::map<std::string, std::vector<std::string>> by_digits_;
};

/// The rows of every name of the column that the book lacks, in the order of the alphabet.
std::map<std::string, Rows> rows_of_unknown(Adoption& adoption, const std::string& column,
                                            const KnownNames& known) {
    std::map<std::string, Rows> rows;
    for (auto& row : adoption.rows) {
        const auto name = row.fate == Fate::left_out ? std::string{} : row.text(column);
        if (!name.empty() && !known.has(name)) {
            rows[name].push_back(&row);
        }
    }
    return rows;
}

/// A name that the book lacks, and who names it.
struct Unknown {
    const std::string& column;
    const std::string& name;
    const Rows& rows;
};

void write_as_in_book(Adoption& adoption, const Unknown& unknown, const std::string& known) {
    const auto& [column, name, rows] = unknown;
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

void refuse(Adoption& adoption, const Unknown& unknown, Sentence message, Sentence remedy) {
    for (auto* row : unknown.rows) {
        row->why = row->fate == Fate::refused ? row->why : message;
        row->fate = Fate::refused;
    }
    adoption.tell(Level::error, field_of(adoption, unknown.column), unknown.name, std::move(message),
                  std::move(remedy));
}

Sentence nearest_words(const std::string& name, const std::vector<std::string>& known) {
    const auto few = nearest_few(name, known);
    return few.empty() ? Sentence{}
                       : say("The nearest in the book: {}.", fmt::format("{}", fmt::join(few, ", ")));
}

/// What the trees of an accession say of it; nothing where they say different things.
std::optional<Cell> told_of(const Rows& rows, const std::string& column, bool& differs) {
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

MadeRow accession_of(Adoption& adoption, const Unknown& unknown, const AdoptOptions& options) {
    MadeRow made{"accession", {{"name", unknown.name}}};
    for (const auto& column : book::find_book_table("accession")->columns) {
        bool differs = false;
        if (auto told = told_of(unknown.rows, std::string(column.name), differs)) {
            made.cells[std::string(column.name)] = *told;
        } else if (differs) {
            refuse(adoption, unknown, say("Its trees disagree: {}.", std::string(column.label)),
                   say("Correct them, or leave that field out with map."));
        }
    }
    fill_in_accession(made.cells, options);
    return made;
}

void add_accession(Adoption& adoption, const Unknown& unknown, const KnownNames& known,
                   const AdoptOptions& options) {
    auto made = accession_of(adoption, unknown, options);
    if (!made.cells.contains("kind")) {
        refuse(adoption, unknown, say("It is not known what kind of accession it is."),
               say("Give it with accession-kind: cultivar, selection, seedling, species or unknown."));
    }
    if (const auto meant = known.perhaps_meant(unknown.name)) {
        adoption.tell(Level::warning, field_of(adoption, "accession"), unknown.name,
                      say("A new accession, but its name is very similar to \"{}\".", *meant),
                      say("If it is a mistake, correct it in the layer before writing."));
    }
    adoption.made.push_back(std::move(made));
}

void judge_accession(Adoption& adoption, const Unknown& unknown, KnownNames& known,
                     const AdoptOptions& options) {
    if (const auto same = known.written_otherwise(unknown.name)) {
        write_as_in_book(adoption, unknown, *same);
    } else if (options.add_accessions) {
        add_accession(adoption, unknown, known, options);
        known.add(unknown.name);
    } else {
        const auto trees = unknown.rows.size();
        auto remedy = nearest_words(unknown.name, known.all());
        remedy += remedy.empty() ? Sentence{} : verbatim(" ");
        remedy += say("Correct it, or let add-accessions add it.");
        refuse(adoption, unknown,
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
    const std::string column = "accession";
    KnownNames known;
    for (const auto& accession : orchard.accessions) {
        known.add(accession.name);
    }
    for (const auto& [name, rows] : rows_of_unknown(adoption, column, known)) {
        judge_accession(adoption, {column, name, rows}, known, options);
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
    const std::string column = "block";
    KnownNames known;
    for (const auto& block : orchard.blocks) {
        known.add(block.name);
    }
    for (const auto& [name, rows] : rows_of_unknown(adoption, column, known)) {
        const Unknown unknown{column, name, rows};
        if (const auto same = known.written_otherwise(name)) {
            write_as_in_book(adoption, unknown, *same);
        } else if (options.add_rows) {
            adoption.made.push_back(made_block(name, rows, orchard.crs));
            known.add(name);
        } else {
            auto remedy = nearest_words(name, known.all());
            remedy += remedy.empty() ? Sentence{} : verbatim(" ");
            remedy += say("Import the layer of the blocks first, or let add-rows draw it around its trees.");
            refuse(adoption, unknown, say("The book has no block of this name."), std::move(remedy));
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
