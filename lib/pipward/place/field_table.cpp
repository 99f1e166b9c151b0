// SPDX-License-Identifier: MIT
#include "pipward/place/detail/field_table.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <string_view>

#include "pipward/place/address.h"
#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

constexpr int most_positions = 100000;  // as the schema has it: what is beyond cannot be asked for

bool is_of_place(Facet facet) {
    return facet == Facet::block || facet == Facet::row || facet == Facet::position;
}

// Our own figures, among those of NamePool: an address is as good as a tag, several fields are better than a
// part of a name, one field that many trees share is worth less.
float worth_of(const Reading& reading) {
    constexpr float some_block = 0.93F;
    const bool one_block = reading.has(Facet::block) || reading.has(Facet::accession);
    if (reading.has(Facet::label)) {
        return 0.99F;
    }
    if (reading.has(Facet::row) && reading.has(Facet::position)) {
        return 0.975F * (one_block ? 1.0F : some_block);
    }
    const int fields = reading.fields();
    if (fields > 1) {
        return std::min(0.84F + 0.03F * static_cast<float>(fields), 0.95F);
    }
    return reading.has(Facet::accession) || reading.has(Facet::row) ? 0.80F
           : reading.has(Facet::block)                              ? 0.75F
                                                                    : 0.70F;
}

std::uint32_t mask_of(const Reading& reading) {
    std::uint32_t mask = 0;
    for (std::size_t i = 0; i < facet_count; ++i) {
        mask |= reading.of[i].empty() ? 0U : 1U << i;
    }
    return mask;
}

bool is_in(std::uint32_t mask, Facet facet) {
    return (mask >> static_cast<unsigned>(facet) & 1U) != 0;
}

bool is_address(const Reading& reading) {
    for (std::size_t i = 0; i < facet_count; ++i) {
        if (!reading.of[i].empty() && !is_of_place(static_cast<Facet>(i))) {
            return false;
        }
    }
    return true;
}

Extent extent_of(const Reading& reading) {
    return reading.has(Facet::label)                                 ? Extent::whole
           : reading.has(Facet::position) && reading.has(Facet::row) ? Extent::whole
                                                                     : Extent::part;
}

}  // namespace

FieldTable::FieldTable(const std::vector<Tree>& trees, const NamePool& names)
    : trees_(trees), names_(names) {}

void FieldTable::fill() {
    const auto column = [&](Facet facet) -> std::vector<std::uint32_t>& {
        auto& values = columns_[static_cast<std::size_t>(facet)];
        values.resize(trees_.size(), none);
        return values;
    };
    auto& blocks = column(Facet::block);
    auto& rows = column(Facet::row);
    auto& stocks = column(Facet::rootstock);
    auto& positions = column(Facet::position);
    auto& years = column(Facet::year);
    for (std::size_t i = 0; i < trees_.size(); ++i) {
        const auto& tree = trees_[i];
        blocks[i] = tree.block ? blocks_.add(*tree.block) : none;
        rows[i] = tree.row ? rows_.add(*tree.row) : none;
        stocks[i] = tree.rootstock ? rootstocks_.add(*tree.rootstock) : none;
        const bool counted = tree.position && *tree.position >= 0 && *tree.position <= most_positions;
        positions[i] = counted ? static_cast<std::uint32_t>(*tree.position) : none;
        if (counted) {
            by_position_.add(positions[i], static_cast<std::uint32_t>(i));
            positions_ = std::max(positions_, positions[i] + 1);
        }
        years[i] = tree.planted_on ? static_cast<std::uint32_t>(parts_of(*tree.planted_on).year) : none;
    }
    by_position_.finish(positions_);
    learn_codes(blocks);
    auto& accessions = column(Facet::accession);
    names_.each_accession([&](std::uint32_t name) {
        names_.each_tree(name, [&](std::uint32_t tree) { accessions[tree] = name; });
    });
}

// The letters that the labels of one block begin with, and of no other.
void FieldTable::learn_codes(const std::vector<std::uint32_t>& blocks) {
    constexpr std::uint32_t several = 0;
    std::map<std::string, std::uint32_t> block_of;
    for (std::size_t i = 0; i < trees_.size(); ++i) {
        const std::string_view label = trees_[i].label;
        const auto end =
            std::ranges::find_if(label, [](char c) { return c == '-' || (c >= '0' && c <= '9'); });
        const auto code =
            squeezed(folded_text(label.substr(0, static_cast<std::size_t>(end - label.begin()))));
        const auto block = blocks[i] == none ? several : blocks[i];
        const auto [entry, fresh] = block_of.try_emplace(code, block);
        entry->second = fresh || entry->second == block ? block : several;
    }
    for (const auto& [code, block] : block_of) {
        if (block != several && !code.empty()) {
            blocks_.add_code(block, code);
        }
    }
}

Values FieldTable::called(Facet facet, std::span<const Token> tokens, Effort effort) const {
    switch (facet) {
        case Facet::row:
            return rows_.called_exactly(tokens);
        case Facet::block:
            return blocks_.called(tokens, effort);
        case Facet::rootstock:
            return rootstocks_.called(tokens, effort == Effort::abbreviated ? Effort::whole : effort);
        case Facet::accession:
            return names_.accessions_called(tokens, effort);
        case Facet::label:
            return names_.labels_called(tokens);
        default:
            return {};
    }
}

std::uint32_t FieldTable::value_of(Facet facet, std::uint32_t tree) const {
    return facet == Facet::label ? tree : columns_[static_cast<std::size_t>(facet)][tree];
}

// Trees of the field that fewest share; all where none has lists.
template <class Use>
void FieldTable::each_candidate(const Reading& reading, Use use) const {
    if (reading.has(Facet::label)) {
        for (const auto& value : reading.at(Facet::label)) {
            use(value.id);
        }
    } else if (reading.has(Facet::accession)) {
        for (const auto& value : reading.at(Facet::accession)) {
            names_.each_tree(value.id, use);
        }
    } else if (reading.has(Facet::position)) {
        for (const auto& value : reading.at(Facet::position)) {
            if (value.id < positions_) {
                by_position_.each(value.id, use);
            }
        }
    } else {
        for (std::uint32_t tree = 0; tree < trees_.size(); ++tree) {
            use(tree);
        }
    }
}

void FieldTable::find_reading(const Reading& reading, float worth, Hits& hits) const {
    std::vector<Facet> named;
    for (std::size_t i = 0; i < facet_count; ++i) {
        if (!reading.of[i].empty()) {
            named.push_back(static_cast<Facet>(i));
        }
    }
    Hit hit{.kind = is_address(reading) ? MatchKind::address : MatchKind::record,
            .extent = extent_of(reading),
            .source = mask_of(reading)};
    constexpr float a_filler = 0.98F;
    worth *= worth_of(reading) * std::pow(a_filler, static_cast<float>(reading.fillers));
    const auto try_tree = [&](std::uint32_t tree) {
        float likeness = worth;
        for (const auto facet : named) {
            const auto& values = reading.at(facet);
            const auto value = std::ranges::lower_bound(values, value_of(facet, tree), {}, &Value::id);
            if (value == values.end() || value->id != value_of(facet, tree)) {
                return;
            }
            likeness *= value->likeness;
        }
        hit.tree = tree;
        hit.score = likeness;
        hits.add(hit);
    };
    if (reading.has(Facet::label) && named.size() == 1) {
        hit.kind = MatchKind::label;
        for (const auto& value : reading.at(Facet::label)) {
            hit.source = value.id;
            try_tree(value.id);
        }
    } else {
        each_candidate(reading, try_tree);
    }
}

std::vector<Reading> FieldTable::readings(const std::vector<Token>& tokens, Effort effort) const {
    constexpr std::size_t most = 12;
    auto readings = readings_of(tokens, *this, effort);
    readings.resize(std::min(readings.size(), most));
    return readings;
}

void FieldTable::find_tokens(const std::vector<Token>& tokens, Effort effort, float worth, Hits& hits) const {
    for (auto& reading : readings(tokens, effort)) {
        for (auto& values : reading.of) {
            std::ranges::sort(values, {}, &Value::id);
        }
        // A name alone is found by the pool of names, which knows how much of it was given and how much
        // misread.
        const bool name_alone =
            reading.fields() == 1 && ((reading.has(Facet::label) && worth < 1) ||
                                      (reading.has(Facet::accession) && effort != Effort::abbreviated));
        if (!name_alone) {
            find_reading(reading, worth, hits);
        }
    }
}

void FieldTable::find(std::string_view query, Effort effort, Hits& hits) const {
    constexpr float figures_read = 0.95F;
    const auto folded = folded_text(query);
    find_tokens(tokens_of(folded), effort, 1.0F, hits);
    if (const auto read = with_figures_read(folded); read != folded) {
        find_tokens(tokens_of(read), effort, figures_read, hits);
    }
}

std::set<std::string> FieldTable::names_of(Facet facet, std::uint32_t value) const {
    switch (facet) {
        case Facet::block:
            return blocks_.written(value);
        case Facet::row:
            return rows_.written(value);
        case Facet::rootstock:
            return rootstocks_.written(value);
        case Facet::accession:
        case Facet::label:
            return {names_.shown(value)};
        default:
            return {std::to_string(value)};
    }
}

std::vector<FieldTable::FieldsSought> FieldTable::sought(std::string_view query, Effort effort) const {
    const auto folded = folded_text(query);
    auto all = readings(tokens_of(folded), effort);
    if (const auto read = with_figures_read(folded); read != folded) {
        std::ranges::move(readings(tokens_of(read), effort), std::back_inserter(all));
    }
    std::vector<FieldsSought> sought;
    for (const auto& reading : all) {
        auto& fields = sought.emplace_back();
        for (std::size_t i = 0; i < facet_count; ++i) {
            for (const auto& value : reading.of[i]) {
                fields[static_cast<Facet>(i)].merge(names_of(static_cast<Facet>(i), value.id));
            }
        }
    }
    return sought;
}

Sentence FieldTable::shown(const Hit& hit, const Orchard& orchard) const {
    const auto& tree = trees_[hit.tree];
    std::vector<Sentence> parts;
    if (is_in(hit.source, Facet::label)) {
        parts.push_back(say("label {}", tree.label));
    }
    if (is_in(hit.source, Facet::accession) && tree.accession) {
        parts.push_back(say("accession {}", *tree.accession));
    }
    if (is_in(hit.source, Facet::block) || is_in(hit.source, Facet::row) ||
        is_in(hit.source, Facet::position)) {
        parts.push_back(address_of(tree, orchard.rows));
    }
    if (is_in(hit.source, Facet::rootstock) && tree.rootstock) {
        parts.push_back(say("rootstock {}", *tree.rootstock));
    }
    if (is_in(hit.source, Facet::year) && tree.planted_on) {
        parts.push_back(say("planted {}", parts_of(*tree.planted_on).year));
    }
    return joined(parts, verbatim(", "));
}

}  // namespace pipward::place::detail
