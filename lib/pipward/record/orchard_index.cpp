// SPDX-License-Identifier: MIT
#include "pipward/record/orchard_index.h"

#include <algorithm>

#include "pipward/record/presence.h"

namespace pipward::record {

std::vector<Share> blend_shares(std::span<const BlendMember* const> members) {
    double told = 0;
    int missing = 0;
    for (const auto* member : members) {
        told += member->share ? std::max(0.0, member->share->value) : 0;
        missing += member->share ? 0 : 1;
    }
    const double each = missing > 0 ? std::max(0.0, 1 - told) / missing : 0;
    std::vector<Share> shares;
    for (const auto* member : members) {
        const double share = member->share ? std::max(0.0, member->share->value) : each;
        shares.push_back({share / std::max(1.0, told)});
    }
    return shares;
}

OrchardIndex::OrchardIndex(const Orchard& orchard)
    : orchard_(&orchard),
      blocks_(orchard.blocks, &Block::name),
      trees_(orchard.trees, &Tree::label),
      accessions_(orchard.accessions, &Accession::name),
      stations_(orchard.stations, &Station::name),
      goals_(orchard.goals, &CrossGoal::code),
      pollen_lots_(orchard.pollen_lots, &PollenLot::code),
      pollinations_(orchard.pollinations, &Pollination::tag),
      seed_lots_(orchard.seed_lots, &SeedLot::code),
      trees_of_(orchard.trees, &Tree::accession),
      blends_(orchard.blend_members, &BlendMember::name) {
    for (const auto& row : orchard.rows) {
        rows_.try_emplace({row.block, row.name}, &row);
    }
}

const TreeRow* OrchardIndex::row(std::string_view block, std::string_view name) const {
    const auto found = rows_.find({block, name});
    return found == rows_.end() ? nullptr : found->second;
}

std::span<const Tree* const> OrchardIndex::trees_of(std::string_view accession) const {
    return trees_of_.find(accession);
}

std::vector<const Tree*> OrchardIndex::trees_of(std::string_view accession, Day day) const {
    std::vector<const Tree*> standing;
    std::ranges::copy_if(trees_of(accession), std::back_inserter(standing),
                         [&](const Tree* tree) { return stands_on(*tree, day); });
    return standing;
}

bool OrchardIndex::has_tree(std::string_view accession, Day day) const {
    return std::ranges::any_of(trees_of(accession), [&](const Tree* tree) { return stands_on(*tree, day); });
}

bool OrchardIndex::is_blend(std::string_view name) const {
    return accession(name) == nullptr && !blend(name).empty();
}

std::vector<DonorShare> OrchardIndex::donors(std::string_view name) const {
    if (!is_blend(name)) {
        return {{std::string(name)}};
    }
    const auto members = blend(name);
    const auto shares = blend_shares(members);
    std::vector<DonorShare> donors;
    for (std::size_t i = 0; i < members.size(); ++i) {
        donors.push_back({members[i]->member, shares[i]});
    }
    return donors;
}

}  // namespace pipward::record
