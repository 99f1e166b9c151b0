// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/adopt_known.h"

#include <cmath>

namespace pipward::intake::detail {
namespace {

template <class Quantity>
Cell number_of(const std::optional<Quantity>& quantity) {
    return quantity ? Cell{quantity->value} : Cell{};
}

Cell whole_of(const std::optional<int>& number) {
    return number ? Cell{std::int64_t{*number}} : Cell{};
}

template <class Enum>
Cell word_of(const std::optional<Enum>& value) {
    return value ? Cell{std::string(to_word(*value))} : Cell{};
}

KnownThing known_tree(const Tree& tree) {
    return {{{"accession", cell(tree.accession)},
             {"block", cell(tree.block)},
             {"row", cell(tree.row)},
             {"position", whole_of(tree.position)},
             {"rootstock", cell(tree.rootstock)},
             {"planted_on", cell(tree.planted_on)},
             {"removed_on", cell(tree.removed_on)},
             {"purpose", word_of(std::optional{tree.purpose})},
             {"placed_by", word_of(tree.placed_by)},
             {"accuracy_m", number_of(tree.accuracy)},
             {"elevation_m", number_of(tree.elevation)},
             {"note", cell(tree.note)}},
            tree.at};
}

KnownThing known_accession(const Accession& accession) {
    return {{{"kind", word_of(std::optional{accession.kind})},
             {"species", cell(accession.species)},
             {"sport_of", cell(accession.sport_of)},
             {"seed_parent", cell(accession.seed_parent)},
             {"pollen_parent", cell(accession.pollen_parent)},
             {"s_alleles", cell(accession.s_alleles)},
             {"ploidy", whole_of(accession.ploidy)},
             {"seed_ripe_days", whole_of(accession.seed_ripe_days)},
             {"chill_portions", number_of(accession.chill)},
             {"protected_until", cell(accession.protected_until)},
             {"note", cell(accession.note)}}};
}

KnownThing known_row(const TreeRow& row) {
    return {{{"spacing_m", number_of(row.spacing)},
             {"first_position", whole_of(row.first_position)},
             {"note", cell(row.note)}},
            row.line.empty() ? std::nullopt : std::optional{row.line.front()}};
}

bool says_something(const std::string& column, const Cell& cell) {
    return !std::holds_alternative<std::monostate>(cell) &&
           !(column == "purpose" && to_text(cell) == "other");
}

bool same(const Cell& a, const Cell& b) {
    const auto* x = std::get_if<double>(&a);
    const auto* y = std::get_if<double>(&b);
    return x != nullptr && y != nullptr ? std::abs(*x - *y) < 0.5 : to_text(a) == to_text(b);
}

}  // namespace

std::map<std::string, KnownThing> known_things(const std::string& table, const Orchard& orchard) {
    std::map<std::string, KnownThing> known;
    if (table == "tree") {
        for (const auto& tree : orchard.trees) {
            known.emplace(tree.label, known_tree(tree));
        }
    } else if (table == "accession") {
        for (const auto& accession : orchard.accessions) {
            known.emplace(accession.name, known_accession(accession));
        }
    } else if (table == "tree_row") {
        for (const auto& row : orchard.rows) {
            known.emplace(row.block + "\n" + row.name, known_row(row));
        }
    } else {
        for (const auto& block : orchard.blocks) {
            known.emplace(block.name, KnownThing{{{"note", cell(block.note)}}});
        }
    }
    return known;
}

std::vector<Difference> differences(const AdoptRow& row, const KnownThing& known) {
    std::vector<Difference> found;
    for (const auto& [column, value] : row.cells) {
        const auto other = known.cells.find(column);
        if (other != known.cells.end() && says_something(column, value) &&
            says_something(column, other->second) && !same(value, other->second)) {
            found.push_back({column, to_text(value), to_text(other->second)});
        }
    }
    return found;
}

}  // namespace pipward::intake::detail
