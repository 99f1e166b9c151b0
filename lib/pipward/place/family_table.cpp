// SPDX-License-Identifier: MIT
#include "pipward/place/detail/family_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "pipward/place/detail/likeness.h"
#include "pipward/place/detail/name_pool.h"
#include "pipward/place/detail/query_text.h"
#include "pipward/value/plain_text.h"

namespace pipward::place::detail {
namespace {

std::string_view digits_at_end(std::string_view text) {
    std::size_t start = text.size();
    while (start > 0 && is_digit(text[start - 1])) {
        --start;
    }
    text.remove_prefix(start);
    while (text.size() > 1 && text.front() == '0') {
        text.remove_prefix(1);
    }
    return text;
}

using Wanted = ParentsSought;

// "Wrenlea no." without its last word.
std::string_view without_number_word(std::string_view text) {
    static constexpr std::array<std::string_view, 7> words{"no.",    "no",       "nr.", "nr",
                                                           "number", "seedling", "#"};
    for (const auto word : words) {
        if (text.ends_with(word)) {
            const auto before = text.substr(0, text.size() - word.size());
            if (before.empty() || before.back() == ' ' || word == "#") {
                return trimmed(before);
            }
        }
    }
    return text;
}

/// A text and the digits at its end.
struct Numbered {
    std::string name;  // as compared
    std::string number;
};

Numbered numbered(std::string_view text) {
    std::size_t end = text.size();
    while (end > 0 && is_digit(text[end - 1])) {
        --end;
    }
    return {squeezed(without_number_word(trimmed(text.substr(0, end)))), std::string(digits_at_end(text))};
}

// The search text's both sides as they stand, and with the digits at the end taken for the seedling's number.
void add_readings(std::string_view left, std::string_view right, std::vector<Wanted>& all) {
    const auto seed = squeezed(left);
    const auto whole = squeezed(right);
    if (seed.empty() || whole.empty()) {
        return;
    }
    const auto [pollen, number] = numbered(right);
    const bool has_number = !number.empty() && !pollen.empty();
    all.push_back({.seed = seed, .pollen = whole, .slips = !has_number});
    if (has_number) {
        all.push_back({seed, pollen, number});
    }
}

constexpr std::size_t longest_family_query = 400;  // two names and a number

constexpr std::string_view times = "×";

// "A×B" has no blanks around its sign; an "x" counts only with blanks around it.
std::string with_blanks_around_signs(std::string_view query) {
    std::string text;
    while (!query.empty()) {
        const bool sign = query.starts_with(times) || query.front() == '*';
        text += sign ? std::string_view(" x ") : query.substr(0, 1);
        query.remove_prefix(query.starts_with(times) ? times.size() : 1);
    }
    return folded_text(text);
}

bool is_of_seedlings(std::string_view word) {
    static constexpr std::array<std::string_view, 16> words{
        "seedling", "samling", "saemling", "no",  "nr",   "number", "nummer", "tree",
        "baum",     "the",     "of",       "aus", "from", "von",    "de",     "du"};
    return std::ranges::find(words, word) != words.end();
}

// "seedling 17 of a x b" and "a x b (17)" as "a x b 17".
std::string with_number_last(std::string_view text) {
    std::string kept(text);
    if (kept.ends_with(')') && kept.find('(') != std::string::npos) {
        kept.pop_back();
        std::ranges::replace(kept, '(', ' ');
    }
    std::string_view rest = kept;
    std::string_view number;
    while (true) {
        rest = trimmed(rest);
        const auto end = std::min(rest.find_first_of(" ."), rest.size());
        const auto word = rest.substr(0, end);
        const bool is_first_number = number.empty() && is_number(word);
        if (end == rest.size() || (!is_first_number && !is_of_seedlings(word))) {
            break;
        }
        number = is_first_number ? word : number;
        rest.remove_prefix(end + 1);
    }
    return number.empty() ? kept : std::string(rest) + " " + std::string(number);
}

std::vector<Wanted> readings_of(std::string_view query) {
    constexpr std::string_view sign = " x ";
    std::vector<Wanted> all;
    if (query.size() > longest_family_query) {
        return all;
    }
    const auto text = with_number_last(with_blanks_around_signs(query));
    const std::string_view whole = text;
    for (auto at = whole.find(sign); at != std::string_view::npos; at = whole.find(sign, at + 1)) {
        add_readings(whole.substr(0, at), whole.substr(at + sign.size()), all);
    }
    return all;
}

struct NameLikeness {
    float worth = 0;
    int slips = 0;
};

NameLikeness likeness_of(const std::string& wanted, const std::string& name, bool may_slip = true) {
    if (wanted == name) {
        return {1.0F, 0};
    }
    if (name.find(wanted) != std::string::npos) {
        return {0.90F, 0};
    }
    const int slips = Likeness(wanted).slips_in_part(name);
    return may_slip && slips <= slips_allowed(wanted)
               ? NameLikeness{0.85F - 0.1F * static_cast<float>(slips), slips}
               : NameLikeness{};
}

// Scores, 0..1, and what they are multiplied by: our own figures, which put the surer way to a tree first.
constexpr float best_worth = 0.97F;
constexpr float other_way_round = 0.85F;
constexpr float whole_family = 0.85F;
constexpr float by_code = 0.93F;

Hit hit_of(const Wanted& wanted, const Family& family) {
    const auto fit = [](const NameLikeness& seed, const NameLikeness& pollen, float worth) {
        const int slips = seed.slips + pollen.slips;
        return Hit{.score = best_worth * seed.worth * pollen.worth * worth,
                   .kind = MatchKind::parents,
                   .extent = slips > 0 ? Extent::like : Extent::whole,
                   .slips = static_cast<std::uint8_t>(slips)};
    };
    const auto straight = fit(likeness_of(wanted.seed, family.seed_key),
                              likeness_of(wanted.pollen, family.pollen_key, wanted.slips), 1.0F);
    const auto crossed = fit(likeness_of(wanted.seed, family.pollen_key),
                             likeness_of(wanted.pollen, family.seed_key, wanted.slips), other_way_round);
    return straight.score >= crossed.score ? straight : crossed;
}

}  // namespace

bool ParentsSought::is_seed(const std::string& key) const {
    return likeness_of(seed, key).worth > 0;
}

bool ParentsSought::is_pollen(const std::string& key) const {
    return likeness_of(pollen, key, slips).worth > 0;
}

std::vector<ParentsSought> parents_sought(std::string_view query) {
    return readings_of(query);
}

std::string code_sought(std::string_view query) {
    auto sought = numbered(folded_text(query.substr(0, longest_family_query)));
    return sought.number.empty() ? std::string{} : std::move(sought.name);
}

void FamilyTable::find_by_code(std::string_view query, Hits& hits) const {
    const auto [code, number] = numbered(folded_text(query.substr(0, longest_family_query)));
    for (std::uint32_t i = 0; i < families_.size() && !number.empty(); ++i) {
        if (!families_[i].codes.contains(code)) {
            continue;
        }
        for (const auto& sibling : families_[i].siblings) {
            if (sibling.number == number && sibling.code == code) {
                hits.add({.tree = sibling.tree, .score = by_code, .kind = MatchKind::parents, .source = i});
            }
        }
    }
}

void FamilyTable::find(std::string_view query, Hits& hits) const {
    find_by_code(query, hits);
    for (const auto& wanted : readings_of(query)) {
        for (std::uint32_t i = 0; i < families_.size(); ++i) {
            auto hit = hit_of(wanted, families_[i]);
            if (hit.score <= 0) {
                continue;
            }
            hit.score *= wanted.number.empty() ? whole_family : 1.0F;
            hit.source = i;
            for (const auto& sibling : families_[i].siblings) {
                if (wanted.number.empty() || wanted.number == sibling.number) {
                    hit.tree = sibling.tree;
                    hits.add(hit);
                }
            }
        }
    }
}

Sentence FamilyTable::shown(std::uint32_t family, std::uint32_t tree) const {
    const auto& found = families_[family];
    const auto parents = fmt::format("{} × {}", found.seed_parent, found.pollen_parent);
    const auto sibling = std::ranges::find(found.siblings, tree, &Sibling::tree);
    return sibling->number.empty() ? verbatim(parents) : say("{} no. {}", parents, sibling->number);
}

std::string_view sibling_number(const Accession& accession, const Tree& tree, std::string_view code) {
    const bool named_as_cross =
        !code.empty() && squeezed(folded_text(accession.name)) == squeezed(folded_text(code));
    const auto number = named_as_cross ? std::string_view{} : digits_at_end(accession.name);
    return number.empty() && accession.kind == AccessionKind::seedling ? digits_at_end(tree.label) : number;
}

}  // namespace pipward::place::detail
