// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "pipward/record/name_index.h"
#include "pipward/record/orchard.h"
#include "pipward/value/sentence.h"

namespace pipward::lineage {

/// Lineages in one line, as breeders write them: seed parent first.
class PedigreeText {
  public:
    /// The records must outlive this. Of a name that stands twice the first record counts.
    PedigreeText(std::span<const Accession> accessions, std::span<const BlendMember> blends);

    /// "Tansy Lane × Wrenlea", and where a parent's own parents are known "Tansy Lane (A × B) × Wrenlea". A
    /// blend names its members; a parent that nobody knows is "unknown". Empty where neither is known.
    Sentence of(const std::string& accession) const;

  private:
    Sentence parents_of(const std::string& accession, bool with_theirs) const;
    Sentence parent_text(const std::optional<std::string>& name, bool with_theirs) const;

    ByName<Accession> accessions_;
    GroupedByName<BlendMember> blends_;
};

}  // namespace pipward::lineage
