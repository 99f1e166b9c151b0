// SPDX-License-Identifier: MIT
#include "pipward/lineage/line_text.h"

#include <fmt/format.h>

namespace pipward::lineage {

LineText::LineText(std::span<const Accession> accessions, std::span<const BlendMember> blends) {
    for (const auto& accession : accessions) {
        accessions_.try_emplace(accession.name, &accession);
    }
    for (const auto& member : blends) {
        blends_[member.name].push_back(member.member);
    }
}

Sentence LineText::of(const std::string& accession) const {
    return parents_of(accession, true);
}

Sentence LineText::parents_of(const std::string& accession, bool with_theirs) const {
    const auto found = accessions_.find(accession);
    if (found == accessions_.end()) {
        return {};
    }
    const auto& seed = found->second->seed_parent;
    const auto& pollen = found->second->pollen_parent;
    if (!seed && !pollen) {
        return {};
    }
    return joined({parent_text(seed, with_theirs), parent_text(pollen, with_theirs)}, verbatim(" × "));
}

Sentence LineText::parent_text(const std::optional<std::string>& name, bool with_theirs) const {
    if (!name) {
        return say("unknown");
    }
    const auto blend = blends_.find(*name);
    const auto theirs = !with_theirs ? Sentence{}
                        : blend == blends_.end()
                            ? parents_of(*name, false)
                            : verbatim(fmt::format("{}", fmt::join(blend->second, ", ")));
    return theirs.empty() ? verbatim(*name) : joined({verbatim(*name + " ("), theirs, verbatim(")")}, {});
}

}  // namespace pipward::lineage
