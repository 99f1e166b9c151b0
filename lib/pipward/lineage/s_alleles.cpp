// SPDX-License-Identifier: MIT
#include "pipward/lineage/s_alleles.h"

#include <algorithm>
#include <vector>

#include "pipward/value/plain_text.h"

namespace pipward::lineage {
namespace {

bool is_small_letter(char c) {
    return c >= 'a' && c <= 'z';
}
bool is_separator(char c) {
    return std::string_view(" \t\r\n,;/|+-.:()[]").find(c) != std::string_view::npos;
}

// "S₂S₃": a subscript digit is three bytes long, and its place in the list is its value.
constexpr std::string_view subscripts = "₀₁₂₃₄₅₆₇₈₉";
constexpr std::size_t subscript_bytes = 3;

std::string plain(std::string_view text) {
    std::string folded;
    while (!text.empty()) {
        const std::size_t digit = subscripts.find(text.substr(0, subscript_bytes));
        const bool subscript = text.size() >= subscript_bytes && digit != std::string_view::npos;
        const char c = text.front();
        if (subscript) {
            folded += static_cast<char>('0' + static_cast<int>(digit / subscript_bytes));
        } else {
            folded += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
        text.remove_prefix(subscript ? subscript_bytes : 1);
    }
    return folded;
}

bool is_numbered(const std::string& allele) {
    return is_digit(allele.front());
}

bool mix_names(const SAlleles& a, const SAlleles& b) {
    return is_numbered(*a.begin()) != is_numbered(*b.begin());
}

constexpr int longest_suffix = 2;

// Walks over the text, one allele at a time.
class AlleleReader {
  public:
    explicit AlleleReader(std::string_view text) : text_(text) {}

    std::optional<SAlleles> read() {
        SAlleles alleles;
        for (skip_separators(); at_ < text_.size(); skip_separators()) {
            const auto allele = next();
            if (!allele) {
                return std::nullopt;
            }
            alleles.insert(*allele);
        }
        return alleles.empty() ? std::nullopt : std::optional{alleles};
    }

  private:
    std::optional<std::string> next() {
        const bool marked = skip_mark();
        if (at_ < text_.size() && is_digit(text_[at_])) {
            return numbered();
        }
        return lettered(marked);
    }

    // The S before an allele: it may stand apart from a number ("S: 2, 3") but not from a letter.
    bool skip_mark() {
        if (text_[at_] != 's') {
            return false;
        }
        const std::size_t after = ++at_;
        skip_separators();
        if (at_ < text_.size() && !is_digit(text_[at_])) {
            at_ = after;
        }
        return true;
    }

    std::optional<std::string> numbered() {
        const std::size_t begin = text_.find_first_not_of('0', at_);
        at_ = std::min(begin, text_.size());
        std::string name;
        while (at_ < text_.size() && is_digit(text_[at_])) {
            name += text_[at_++];
        }
        if (name.empty()) {
            return std::nullopt;
        }
        for (int i = 0; i < longest_suffix && at_ < text_.size() && is_suffix(); ++i) {
            name += text_[at_++];
        }
        return name;
    }

    std::optional<std::string> lettered(bool marked) {
        if (at_ >= text_.size() || !is_small_letter(text_[at_])) {
            return std::nullopt;
        }
        const std::string name(1, text_[at_++]);
        const bool ends = at_ == text_.size() || is_separator(text_[at_]);
        const bool goes_on = marked && !ends && text_[at_] == 's';
        return ends || goes_on ? std::optional{name} : std::nullopt;
    }

    // "24sm", "10a"; the s of "S2S3" belongs to the next allele.
    bool is_suffix() const {
        const bool next_mark = text_[at_] == 's' && at_ + 1 < text_.size() && is_digit(text_[at_ + 1]);
        return is_small_letter(text_[at_]) && !next_mark;
    }

    void skip_separators() {
        while (at_ < text_.size() && is_separator(text_[at_])) {
            ++at_;
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

}  // namespace

std::optional<SAlleles> parse_s_alleles(std::string_view text) {
    const std::string folded = plain(text);
    return AlleleReader(folded).read();
}

std::string to_text(const SAlleles& alleles) {
    std::vector<std::string> sorted(alleles.begin(), alleles.end());
    std::ranges::stable_sort(sorted, {}, [](const std::string& allele) {
        return is_numbered(allele) ? std::min(allele.find_first_not_of("0123456789"), allele.size())
                                   : std::string::npos;
    });
    std::string text;
    for (const auto& allele : sorted) {
        text += (text.empty() ? "S" : " S") + allele;
    }
    return text;
}

std::string_view to_text(SMatch match) {
    switch (match) {
        case SMatch::full:
            return "full";
        case SMatch::half:
            return "half";
        case SMatch::none:
            return "none";
        case SMatch::unknown:
            break;
    }
    return "unknown";
}

SCompatibility s_compatibility(const std::optional<SAlleles>& seed_parent,
                               const std::optional<SAlleles>& donor) {
    constexpr std::size_t least = 2;
    if (!seed_parent || !donor || seed_parent->size() < least || donor->size() < least ||
        mix_names(*seed_parent, *donor)) {
        return {SMatch::unknown, {1}};
    }
    const auto passing =
        std::ranges::count_if(*donor, [&](const auto& allele) { return !seed_parent->contains(allele); });
    if (passing == 0) {
        return {SMatch::none, {0}};
    }
    const double share = static_cast<double>(passing) / static_cast<double>(donor->size());
    return {share == 1 ? SMatch::full : SMatch::half, {share}};
}

}  // namespace pipward::lineage
