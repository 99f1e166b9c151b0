// SPDX-License-Identifier: MIT
#include "pipward/place/detail/name_pool.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <ranges>

#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/misreading.h"
#include "pipward/place/detail/name_list.h"
#include "pipward/place/detail/query_text.h"

namespace pipward::place::detail {
namespace {

// How much the whole name and a part of it are worth: what stands on the tree comes first.
struct Worth {
    MatchKind kind;
    float whole;
    float part;
};
constexpr std::array worths{
    Worth{MatchKind::label, 0.98F, 0.60F},
    Worth{MatchKind::tag, 0.95F, 0.56F},
    Worth{MatchKind::accession, 0.94F, 0.60F},
    Worth{MatchKind::pollen_lot, 0.925F, 0.52F},
    Worth{MatchKind::seed_lot, 0.925F, 0.52F},
    Worth{MatchKind::cross_child, 0.92F, 0.50F},
    Worth{MatchKind::cross_pollinated, 0.91F, 0.49F},
    Worth{MatchKind::cross_parent, 0.91F, 0.49F},
};
// Added to the score of a part: for the share of the name that it is, and where the name begins with it.
// Taken off for each slip. Our own figures, as those above: they put the surer way to a tree first.
constexpr float for_coverage = 0.25F;
constexpr float for_beginning = 0.04F;
constexpr float a_slip_costs = 0.11F;

const Worth& worth_of(MatchKind kind) {
    return *std::ranges::find(worths, kind, &Worth::kind);
}

float share(std::size_t part, std::size_t whole) {
    return whole == 0 ? 1.0F
                      : static_cast<float>(std::min(part, whole)) / static_cast<float>(std::max(part, whole));
}

// Of names that are the same but for case and signs, the one written as the search text is comes first.
float for_writing(std::string_view query, std::string_view folded, const std::string& shown) {
    return shown == query ? 0.02F : folded_text(shown) == folded ? 0.015F : 0.01F;
}

constexpr char line_end = '\n';

}  // namespace

int slips_allowed(std::string_view key) {
    constexpr double digit = 0.6;
    constexpr double again = 0.1;
    double told = 0;
    for (std::size_t i = 0; i < key.size(); ++i) {
        const bool third_alike = i > 1 && key[i] == key[i - 1] && key[i] == key[i - 2];
        told += third_alike ? again : key[i] >= '0' && key[i] <= '9' ? digit : 1.0;
    }
    return told < 3.5 ? 0 : told < 6.5 ? 1 : told < 11 ? 2 : 3;
}

bool has_word(std::string_view key) {
    constexpr int enough = 3;
    int letters = 0;
    return std::ranges::any_of(key, [&](char c) {
        letters = c >= '0' && c <= '9' ? 0 : letters + 1;
        return letters >= enough;
    });
}

bool begin_words(std::span<const Token> tokens, std::vector<std::string> parts) {
    return std::ranges::all_of(tokens, [&](const Token& token) {
        const auto part = std::ranges::find_if(parts, [&](const std::string& one) {
            return token.number ? one == token.text : one.starts_with(token.text);
        });
        if (part == parts.end()) {
            return false;
        }
        parts.erase(part);
        return true;
    });
}

bool may_abbreviate(std::span<const Token> tokens) {
    constexpr std::size_t long_enough = 3;
    return !tokens.front().number && std::ranges::any_of(tokens, [](const Token& token) {
        return !token.number && token.text.size() >= long_enough;
    });
}

bool all_are_words(std::span<const Token> tokens) {
    return std::ranges::none_of(
        tokens, [](const Token& token) { return token.number || mark_of(token.text) != Mark::none; });
}

std::vector<std::string> split_parts(std::string_view parts_key) {
    std::vector<std::string> parts;
    while (!parts_key.empty()) {
        const auto end = std::min(parts_key.find(' '), parts_key.size());
        parts.emplace_back(parts_key.substr(0, end));
        parts_key.remove_prefix(std::min(end + 1, parts_key.size()));
    }
    return parts;
}

std::string name_key(std::string_view folded) {
    auto key = squeezed(folded);
    return key.empty() ? std::string(folded) : key;
}

std::string parts_key(std::string_view folded) {
    return fmt::format("{}", fmt::join(name_parts(folded), " "));
}

std::uint32_t NamePool::add(MatchKind kind, const std::string& shown) {
    const auto number = static_cast<std::uint32_t>(names_.size());
    const auto folded = folded_text(shown);
    const auto key = name_key(folded);
    names_.push_back(
        {&shown, static_cast<std::uint32_t>(text_.size()), static_cast<std::uint32_t>(key.size()), kind});
    letters_.push_back(letters_of(key));
    text_ += key;
    text_ += line_end;
    by_key_.add(key, number);
    by_parts_.add(parts_key(folded), number);
    return number;
}

void NamePool::finish() {
    const auto is_accession = [](const Name& name) { return name.kind == MatchKind::accession; };
    const auto first = std::ranges::find_if(names_, is_accession);
    const auto end = std::find_if_not(first, names_.end(), is_accession);
    accessions_ = {static_cast<std::uint32_t>(first - names_.begin()),
                   static_cast<std::uint32_t>(end - names_.begin())};
    each_accession([&](std::uint32_t name) {
        if (has_word(key(name))) {
            worded_.push_back(name);
        }
    });
    by_key_.finish();
    by_parts_.finish();
    trees_.finish(names_.size());
}

void NamePool::add_hits(std::uint32_t name, Hit hit, Hits& hits) const {
    hit.kind = names_[name].kind;
    hit.source = name;
    trees_.each(name, [&](std::uint32_t tree) {
        hit.tree = tree;
        hits.add(hit);
    });
}

void NamePool::find_whole(std::string_view query, Hits& hits) const {
    const auto folded = folded_text(query);
    const auto sought = name_key(folded);
    by_key_.each(sought, [&](std::uint32_t name) {
        if (key(name) == sought) {
            const float worth = worth_of(names_[name].kind).whole + for_writing(query, folded, shown(name));
            add_hits(name, {.score = std::min(worth, 1.0F)}, hits);
        }
    });
    const auto parts = parts_key(folded);
    if (parts.empty()) {
        return;
    }
    by_parts_.each(parts, [&](std::uint32_t name) {
        if (parts_key(folded_text(shown(name))) == parts) {
            add_hits(name, {.score = worth_of(names_[name].kind).whole}, hits);
        }
    });
}

void NamePool::find_part(std::string_view query, Hits& hits) const {
    const auto sought = name_key(folded_text(query));
    const std::string_view text = text_;
    std::uint32_t name = 0;
    for (auto at = text.find(sought); at != std::string_view::npos; at = text.find(sought, at)) {
        while (name + 1 < names_.size() && names_[name + 1].start <= at) {
            ++name;
        }
        const auto& found = names_[name];
        const bool begins = found.start == at;
        add_hits(name,
                 {.score = worth_of(found.kind).part + for_coverage * share(sought.size(), found.size) +
                           (begins ? for_beginning : 0.0F),
                  .extent = Extent::part},
                 hits);
        at = found.start + found.size;
    }
}

// Those with the fewest slips and one more: what is farther off than that is no help.
template <class Names>
std::vector<NamePool::Like> NamePool::like(std::string_view sought, const Names& among) const {
    std::vector<Like> found;
    int most = slips_allowed(sought);
    if (most == 0 || sought.size() > Likeness::longest) {
        return found;
    }
    const Likeness likeness(sought, Eye::forgiving);
    const LettersSought letters(sought);
    for (const std::uint32_t name : among) {
        if (letters.lacking(letters_[name]) > most || names_[name].size + most < sought.size()) {
            continue;
        }
        const int slips = likeness.slips_in_part(key(name));
        if (slips <= most) {
            most = std::min(most, slips + 1);
            found.push_back({name, slips});
        }
    }
    // Of very many only the nearest: to weigh them takes longer than to find them.
    constexpr std::size_t many = 2000;
    const int kept = found.size() > many ? most - 1 : most;
    std::erase_if(found, [&](const Like& one) { return one.slips > kept; });
    return found;
}

void NamePool::find_misread(std::string_view query, Hits& hits) const {
    constexpr float for_looks = 0.02F;
    constexpr float a_look = 0.1F;
    constexpr std::size_t shortest = 3;
    const auto sought = name_key(folded_text(query));
    const auto same_look = [](char a, char b) { return look_of(a) == look_of(b); };
    const LettersSought letters(sought);
    for (std::uint32_t name = 0; sought.size() >= shortest && name < names_.size(); ++name) {
        if (names_[name].size != sought.size() || letters.lacking(letters_[name]) > 0 ||
            !std::ranges::equal(sought, key(name), same_look)) {
            continue;
        }
        const auto misread = misread_whole(sought, key(name));
        add_hits(name,
                 {.score = worth_of(names_[name].kind).whole - for_looks - a_look * misread.cost,
                  .extent = Extent::like,
                  .slips = static_cast<std::uint8_t>(misread.letters)},
                 hits);
    }
}

void NamePool::find_like(std::string_view query, Hits& hits) const {
    const auto sought = name_key(folded_text(query));
    const int allowed = slips_allowed(sought);
    const float most = static_cast<float>(allowed) + 0.5F;
    const int most_letters = std::max(1, static_cast<int>(sought.size()) / 3);
    // Four letters with a slip are in the middle of many a name.
    const float least_coverage = allowed > 1 ? 0.0F : 0.5F;
    for (const auto& [name, slips] :
         like(sought, std::views::iota(0U, static_cast<std::uint32_t>(names_.size())))) {
        const auto misread = misread_part(sought, key(name));
        if (misread.cost > most || misread.letters > most_letters) {
            continue;
        }
        // What the whole costs more than the part is what the name has besides.
        const float besides = misread_whole(sought, key(name)).cost - misread.cost;
        const float coverage = 1.0F - std::min(1.0F, besides / static_cast<float>(names_[name].size));
        if (coverage < least_coverage) {
            continue;
        }
        add_hits(name,
                 {.score = worth_of(names_[name].kind).part - a_slip_costs * misread.cost +
                           for_coverage * coverage,
                  .extent = Extent::like,
                  .slips = static_cast<std::uint8_t>(misread.letters)},
                 hits);
    }
}

Values NamePool::labels_called(std::span<const Token> tokens) const {
    Values values;
    const auto parts = parts_of_tokens(tokens);
    by_parts_.each(parts, [&](std::uint32_t name) {
        if (names_[name].kind == MatchKind::label && parts_key(folded_text(shown(name))) == parts) {
            values.push_back({name, 1.0F});
        }
    });
    return values;
}

Values NamePool::accessions_called(std::span<const Token> tokens, Effort effort) const {
    if (effort == Effort::abbreviated) {
        return accessions_of_beginnings(tokens);
    }
    if (effort == Effort::misspelt) {
        return accessions_misspelt(tokens);
    }
    Values values;
    const auto parts = parts_of_tokens(tokens);
    by_parts_.each(parts, [&](std::uint32_t name) {
        if (names_[name].kind == MatchKind::accession && parts_key(folded_text(shown(name))) == parts) {
            values.push_back({name, 1.0F});
        }
    });
    return values;
}

Values NamePool::accessions_of_beginnings(std::span<const Token> tokens) const {
    auto values = accessions_called(tokens, Effort::whole);
    if (!values.empty() || !may_abbreviate(tokens)) {
        return values;
    }
    constexpr float least = 0.85F;
    constexpr float for_all = 0.12F;
    const auto sought = parts_of_tokens(tokens, "");
    const LettersSought letters(sought);
    for (const auto name : worded_) {
        if (letters.lacking(letters_[name]) == 0 && sought.size() <= names_[name].size &&
            begin_words(tokens, name_parts(folded_text(shown(name))))) {
            values.push_back({name, least + for_all * share(sought.size(), names_[name].size)});
        }
    }
    return values;
}

Values NamePool::accessions_misspelt(std::span<const Token> tokens) const {
    auto values = accessions_of_beginnings(tokens);
    if (!values.empty() || !all_are_words(tokens) || !may_abbreviate(tokens)) {
        return values;
    }
    constexpr float best = 0.75F;
    constexpr float for_all = 0.15F;
    constexpr float a_slip = 0.08F;
    const auto sought = parts_of_tokens(tokens, "");
    const float most = static_cast<float>(slips_allowed(sought)) + 0.5F;
    for (const auto& [name, slips] : like(sought, worded_)) {
        const auto misread = misread_part(sought, key(name));
        if (misread.cost <= most) {
            values.push_back(
                {name, best - a_slip * misread.cost + for_all * share(sought.size(), names_[name].size)});
        }
    }
    return values;
}

MostLike::MostLike(std::string_view query, std::size_t how_many)
    : likeness_(name_key(folded_text(query))), how_many_(how_many) {}

void MostLike::show(std::string_view key, std::string_view name) {
    const int slips = likeness_.slips_in_all(key);
    const bool full = best_.size() >= how_many_;
    if (how_many_ == 0 || (full && slips > best_.rbegin()->first)) {
        return;
    }
    best_.emplace(slips, name);
    if (best_.size() > how_many_) {
        best_.erase(std::prev(best_.end()));
    }
}

std::vector<std::string> MostLike::names() const {
    std::vector<std::string> names;
    std::ranges::transform(best_, std::back_inserter(names), [](const auto& one) { return one.second; });
    return names;
}

std::vector<std::string> NamePool::most_like(std::string_view query, std::size_t how_many) const {
    MostLike best(query, how_many);
    for (std::uint32_t name = 0; name < names_.size(); ++name) {
        best.show(key(name), shown(name));
    }
    return best.names();
}

}  // namespace pipward::place::detail
