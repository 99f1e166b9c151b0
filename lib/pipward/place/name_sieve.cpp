// SPDX-License-Identifier: MIT
#include "pipward/place/detail/name_sieve.h"

#include <algorithm>
#include <array>

#include "pipward/place/detail/misreading.h"
#include "pipward/place/detail/name_list.h"
#include "pipward/place/detail/name_pool.h"
#include "pipward/place/detail/query_text.h"
#include "pipward/value/plain_text.h"

namespace pipward::place::detail {
namespace {

constexpr std::size_t longest_sieved = 12;  // tokens, as readings have
constexpr std::size_t longest_run = 5;      // of them, as names have in readings

// Small letters and digits stay, capitals become small, all other signs are 0.
constexpr std::array<char, 128> kept_signs() {
    std::array<char, 128> kept{};
    for (char c = '0'; c <= '9'; ++c) {
        kept[static_cast<std::size_t>(c)] = c;
    }
    for (char c = 'a'; c <= 'z'; ++c) {
        kept[static_cast<std::size_t>(c)] = c;
        kept[static_cast<std::size_t>(c - 'a' + 'A')] = c;
    }
    return kept;
}
constexpr auto kept_sign = kept_signs();

std::optional<Likeness> likeness_for(const std::string& sought, int slips) {
    return slips > 0 && sought.size() <= Likeness::longest
               ? std::optional<Likeness>(std::in_place, sought, Eye::forgiving)
               : std::nullopt;
}

}  // namespace

void ComparedName::set(std::string_view name) {
    const bool plain =
        std::ranges::none_of(name, [](char c) { return static_cast<unsigned char>(c) >= 0x80; });
    if (plain) {
        set_plain(name);
    }
    if (!plain || key_.empty()) {
        const auto folded = folded_text(name);
        key_ = name_key(folded);
        parts_ = parts_key(folded);
    }
    letters_ = letters_of(key_);
}

void ComparedName::set_plain(std::string_view name) {
    key_.clear();
    parts_.clear();
    char before = '\0';  // '\0' behind a sign that stands between parts
    std::size_t zeros = 0;
    const auto end_number = [&] {
        if (zeros > 0 && (parts_.empty() || !is_digit(parts_.back()))) {
            parts_ += '0';
        }
        zeros = 0;
    };
    for (const char c : name) {
        const char kept = kept_sign[static_cast<unsigned char>(c)];
        const bool begins = kept != '\0' && (before == '\0' || is_digit(kept) != is_digit(before));
        if (kept == '\0' || begins) {
            end_number();
        }
        if (begins && !key_.empty()) {
            parts_ += ' ';
        }
        before = kept;
        if (kept == '\0') {
            continue;
        }
        key_ += kept;
        const bool leading = is_digit(kept) && (parts_.empty() || !is_digit(parts_.back()));
        if (leading && kept == '0') {
            ++zeros;
        } else {
            zeros = 0;
            parts_ += kept;
        }
    }
    end_number();
}

NameSieve::Form::Form(std::string text)
    : key(name_key(text)),
      parts(parts_key(text)),
      letters(key),
      likeness(likeness_for(key, slips_allowed(key))),
      slips(slips_allowed(key)) {}

NameSieve::NameSieve(std::string_view query) {
    const auto folded = folded_text(query);
    forms_.emplace_back(folded);
    if (const auto name = without_sort(folded); name != folded) {
        forms_.emplace_back(std::string(name));
    }
    add_runs(folded);
    if (const auto read = with_figures_read(folded); read != folded) {
        add_runs(read);
    }
}

void NameSieve::add_runs(std::string_view folded) {
    const auto tokens = tokens_of(folded);
    if (tokens.size() > longest_sieved) {
        return;
    }
    for (std::size_t at = 0; at < tokens.size(); ++at) {
        for (std::size_t size = 1; size <= longest_run && at + size <= tokens.size(); ++size) {
            const std::vector<Token> run(tokens.begin() + static_cast<std::ptrdiff_t>(at),
                                         tokens.begin() + static_cast<std::ptrdiff_t>(at + size));
            const auto key = parts_of_tokens(run, "");
            const int slips = slips_allowed(key);
            const bool abbreviates = may_abbreviate(run);
            const bool misspells = abbreviates && all_are_words(run);
            telling_.push_back({run, key, parts_of_tokens(run), LettersSought(key),
                                likeness_for(key, misspells ? slips : 0), slips, abbreviates, misspells});
            runs_.push_back(run);
        }
    }
}

bool NameSieve::has_slips(const std::optional<Likeness>& likeness, int slips, std::string_view sought,
                          const LettersSought& letters, const ComparedName& name) {
    return likeness && letters.lacking(name.letters()) <= slips &&
           name.key().size() + static_cast<std::size_t>(slips) >= sought.size() &&
           likeness->slips_in_part(name.key()) <= slips;
}

NameSieve::Fit NameSieve::of_name(const ComparedName& name) const {
    constexpr std::size_t shortest = 3;
    const auto same_look = [](char a, char b) { return look_of(a) == look_of(b); };
    auto fit = Fit::none;
    for (const auto& form : forms_) {
        if (form.parts == name.parts() && !form.parts.empty()) {
            return Fit::named;
        }
        if (form.letters.lacking(name.letters()) == 0) {
            const bool whole = form.key.size() == name.key().size();
            if (whole && (form.key == name.key() || (form.key.size() >= shortest &&
                                                     std::ranges::equal(form.key, name.key(), same_look)))) {
                return Fit::named;
            }
            fit = name.key().find(form.key) != std::string_view::npos ? std::max(fit, Fit::part) : fit;
        }
        if (fit == Fit::none && has_slips(form.likeness, form.slips, form.key, form.letters, name)) {
            fit = Fit::like;
        }
    }
    const bool is_run = std::ranges::any_of(
        telling_, [&](const Run& run) { return run.parts == name.parts() && !run.parts.empty(); });
    return is_run ? Fit::named : fit;
}

NameSieve::Fit NameSieve::of_accession(const ComparedName& name) const {
    auto fit = of_name(name);
    for (const auto& run : telling_) {
        if (fit == Fit::named || !run.abbreviates || !has_word(name.key())) {
            continue;
        }
        if (run.letters.lacking(name.letters()) == 0 && run.key.size() <= name.key().size() &&
            begin_words(run.tokens, split_parts(name.parts()))) {
            return Fit::named;
        }
        if (fit == Fit::none && has_slips(run.likeness, run.slips, run.key, run.letters, name)) {
            fit = Fit::like;
        }
    }
    return fit;
}

unsigned NameSieve::begun_by(const ComparedName& name) const {
    unsigned bits = 0;
    for (std::size_t i = 0; i < forms_.size(); ++i) {
        bits |= name.key().starts_with(forms_[i].key) ? 1U << i : 0U;
    }
    return bits;
}

bool NameSieve::has_run(std::string_view key) const {
    return std::ranges::any_of(telling_, [&](const Run& run) { return run.key == key; });
}

}  // namespace pipward::place::detail
