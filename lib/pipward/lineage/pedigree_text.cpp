// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_text.h"

#include <fmt/format.h>

namespace pipward::lineage {

PedigreeText::PedigreeText(std::span<const Accession> accessions, std::span<const BlendMember> blends)
    : accessions_(accessions, &Accession::name), blends_(blends, &BlendMember::name) {}

Sentence PedigreeText::of(const std::string& accession) const {
    return parents_of(accession, true);
}

Sentence PedigreeText::parents_of(const std::string& accession, bool with_theirs) const {
    const auto* record = accessions_.find(accession);
    if (record == nullptr) {
        return {};
    }
    const auto& seed = record->seed_parent;
    const auto& pollen = record->pollen_parent;
    if (!seed && !pollen) {
        return {};
    }
    return joined({parent_text(seed, with_theirs), parent_text(pollen, with_theirs)}, verbatim(" × "));
}

Sentence PedigreeText::parent_text(const std::optional<std::string>& name, bool with_theirs) const {
    if (!name) {
        return say("unknown");
    }
    std::vector<Sentence> members;
    for (const auto* row : blends_.find(*name)) {
        members.push_back(verbatim(row->member));
    }
    const auto theirs = !with_theirs      ? Sentence{}
                        : members.empty() ? parents_of(*name, false)
                                          : joined(members, verbatim(", "));
    return theirs.empty() ? verbatim(*name) : joined({verbatim(*name + " ("), theirs, verbatim(")")}, {});
}

}  // namespace pipward::lineage
