// SPDX-License-Identifier: MIT
#include "pipward/lineage/detail/blend_mixtures.h"

#include <vector>

#include "pipward/record/orchard_index.h"

namespace pipward::lineage::detail {

BlendMixtures blend_mixtures(std::span<const BlendMember> blends) {
    std::map<std::string, std::vector<const BlendMember*>> members;
    for (const auto& blend : blends) {
        members[blend.name].push_back(&blend);
    }
    BlendMixtures mixtures;
    for (const auto& [name, of_blend] : members) {
        const auto shares = blend_shares(of_blend);
        for (std::size_t i = 0; i < of_blend.size(); ++i) {
            mixtures[name][of_blend[i]->member] += shares[i].value;
        }
    }
    return mixtures;
}

}  // namespace pipward::lineage::detail
