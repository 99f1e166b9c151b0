// SPDX-License-Identifier: MIT
#include "pipward/lineage/s_parentage.h"

#include <algorithm>
#include <array>

namespace pipward::lineage {
namespace {

bool share_one(const SAlleles& a, const SAlleles& b) {
    return std::ranges::any_of(a, [&](const auto& allele) { return b.contains(allele); });
}

}  // namespace

std::span<const Word<SContradiction>> words(SContradiction) {
    static constexpr std::array<Word<SContradiction>, 4> all{
        {{SContradiction::no_seed_allele, "no_seed_allele", "no allele of the seed parent"},
         {SContradiction::no_pollen_allele, "no_pollen_allele", "no allele of the pollen parent"},
         {SContradiction::no_pair, "no_pair", "not one allele of each parent"},
         {SContradiction::rejected_pollen, "rejected_pollen", "only by pollen that the style rejects"}}};
    return all;
}

std::optional<SContradiction> s_contradiction(const SAlleles& child, const std::optional<SAlleles>& seed,
                                              const std::optional<SAlleles>& pollen) {
    if (child.size() != 2) {
        return std::nullopt;
    }
    if (seed && !share_one(child, *seed)) {
        return SContradiction::no_seed_allele;
    }
    if (pollen && !share_one(child, *pollen)) {
        return SContradiction::no_pollen_allele;
    }
    bool paired = false;
    bool let_through = false;
    const auto& one = *child.begin();
    const auto& other = *child.rbegin();
    for (const auto& [of_seed, of_pollen] : {std::pair(one, other), std::pair(other, one)}) {
        if ((!seed || seed->contains(of_seed)) && (!pollen || pollen->contains(of_pollen))) {
            paired = true;
            let_through = let_through || !seed || !seed->contains(of_pollen);
        }
    }
    if (!paired) {
        return SContradiction::no_pair;
    }
    return let_through ? std::nullopt : std::optional{SContradiction::rejected_pollen};
}

}  // namespace pipward::lineage
