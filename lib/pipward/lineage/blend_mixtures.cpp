// SPDX-License-Identifier: MIT
#include "pipward/lineage/blend_mixtures.h"

#include <algorithm>
#include <vector>

namespace pipward::lineage {
namespace {

double share_of(const BlendMember& member, double when_missing) {
    return member.share ? std::max(0.0, member.share->value) : when_missing;
}

BlendMixture mixture_of(const std::vector<const BlendMember*>& members) {
    double told = 0;
    int missing = 0;
    for (const auto* member : members) {
        told += share_of(*member, 0);
        missing += member->share ? 0 : 1;
    }
    const double each = missing > 0 ? std::max(0.0, 1 - told) / missing : 0;
    BlendMixture mixture;
    for (const auto* member : members) {
        mixture[member->member] += share_of(*member, each) / std::max(1.0, told);
    }
    return mixture;
}

}  // namespace

BlendMixtures blend_mixtures(std::span<const BlendMember> blends) {
    std::map<std::string, std::vector<const BlendMember*>> members;
    for (const auto& blend : blends) {
        members[blend.name].push_back(&blend);
    }
    BlendMixtures mixtures;
    for (const auto& [name, of_blend] : members) {
        mixtures[name] = mixture_of(of_blend);
    }
    return mixtures;
}

}  // namespace pipward::lineage
