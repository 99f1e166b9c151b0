// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "pipward/record/orchard.h"

/// The accessions of the made-up orchard and what the book does not tell of them.
namespace pipward::larkfold {

/// One accession as the book has it, and the hidden need that its true bloom follows. Empty text and zero
/// stand for what the book does not know.
struct Parent {
    std::string name{};
    AccessionKind kind = AccessionKind::cultivar;
    std::string seed_parent{};
    std::string pollen_parent{};
    std::string s_alleles{};
    int ploidy = 0;
    int seed_ripe_days = 0;
    std::string protected_until{};
    std::string remark{};
    double chill_portions = 0;  ///< hidden: winter chill before warmth counts
    double heat = 0;            ///< hidden: growing degree hours (ASYMCUR) from then to full bloom
    int observed_from = 0;      ///< hidden: the first spring in which anyone notes its bloom; 0 for never
};

std::span<const Parent> parents();
/// The parent of that name; throws std::out_of_range for a name that is none.
const Parent& parent_named(const std::string& name);

bool is_pear(const Parent& parent);

Accession accession_of(const Parent& parent);
std::vector<BlendMember> pollen_blends();

}  // namespace pipward::larkfold
