// SPDX-License-Identifier: MIT
#include "pipward/seed/detail/trait_kind.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <vector>

namespace pipward::seed::detail {
namespace {

struct UsualWord {
    std::string_view word;
    TraitKind kind;
};

constexpr std::array usual_words{
    UsualWord{"taste", TraitKind::fruit},     UsualWord{"flavour", TraitKind::fruit},
    UsualWord{"flavor", TraitKind::fruit},    UsualWord{"size", TraitKind::fruit},
    UsualWord{"colour", TraitKind::fruit},    UsualWord{"color", TraitKind::fruit},
    UsualWord{"firmness", TraitKind::fruit},  UsualWord{"crispness", TraitKind::fruit},
    UsualWord{"juiciness", TraitKind::fruit}, UsualWord{"sugar", TraitKind::fruit},
    UsualWord{"acid", TraitKind::fruit},      UsualWord{"acidity", TraitKind::fruit},
    UsualWord{"brix", TraitKind::fruit},      UsualWord{"fruit", TraitKind::fruit},
    UsualWord{"russet", TraitKind::fruit},    UsualWord{"yield", TraitKind::fruit},
    UsualWord{"storage", TraitKind::fruit},   UsualWord{"ripening", TraitKind::fruit},
    UsualWord{"geschmack", TraitKind::fruit}, UsualWord{"ertrag", TraitKind::fruit},
    UsualWord{"frucht", TraitKind::fruit},    UsualWord{"bloom", TraitKind::bloom},
    UsualWord{"flower", TraitKind::bloom},    UsualWord{"flowers", TraitKind::bloom},
    UsualWord{"flowering", TraitKind::bloom}, UsualWord{"leaf", TraitKind::leaf},
    UsualWord{"leaves", TraitKind::leaf},     UsualWord{"shoot", TraitKind::leaf},
    UsualWord{"mildew", TraitKind::leaf},     UsualWord{"scab", TraitKind::leaf},
    UsualWord{"rust", TraitKind::leaf},       UsualWord{"mehltau", TraitKind::leaf},
    UsualWord{"schorf", TraitKind::leaf},     UsualWord{"vigour", TraitKind::tree},
    UsualWord{"vigor", TraitKind::tree},      UsualWord{"habit", TraitKind::tree},
    UsualWord{"canker", TraitKind::tree},     UsualWord{"height", TraitKind::tree},
    UsualWord{"wuchs", TraitKind::tree},
};

std::vector<std::string> words_in(std::string_view text) {
    std::vector<std::string> words(1);
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 || std::isalpha(byte) != 0) {
            words.back() += static_cast<char>(std::tolower(byte));
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    return words;
}

// "scab on fruit" is of fruit, "fruit" being said; where words differ, the part of the tree goes first.
bool names_a_part(std::string_view word) {
    return word == "fruit" || word == "frucht" || word == "leaf" || word == "leaves" || word == "shoot" ||
           word == "flower" || word == "flowers" || word == "bloom";
}

std::optional<TraitKind> kind_by_words(std::string_view trait) {
    std::optional<TraitKind> kind;
    for (const auto& word : words_in(trait)) {
        const auto* const known = std::ranges::find(usual_words, std::string_view(word), &UsualWord::word);
        if (known != usual_words.end() && (!kind || names_a_part(word))) {
            kind = known->kind;
        }
    }
    return kind;
}

}  // namespace

std::optional<TraitKind> kind_of_trait(const Orchard& orchard, std::string_view trait) {
    const auto told = std::ranges::find(orchard.traits, trait, &Trait::name);
    return told != orchard.traits.end() ? std::optional{told->kind} : kind_by_words(trait);
}

bool shows_bloom(std::optional<TraitKind> kind) {
    return kind == TraitKind::fruit || kind == TraitKind::bloom;
}

}  // namespace pipward::seed::detail
