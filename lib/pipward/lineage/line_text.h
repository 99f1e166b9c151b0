// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/record/orchard.h"
#include "pipward/value/sentence.h"

namespace pipward::lineage {

/// Lineages in one line, as breeders write them: seed parent first.
class LineText {
  public:
    /// The records must outlive this. Of a name that stands twice the first record counts.
    LineText(std::span<const Accession> accessions, std::span<const BlendMember> blends);

    /// "Tansy Lane × Wrenlea", and where a parent's own parents are known "Tansy Lane (A × B) × Wrenlea". A
    /// blend names its members; a parent that nobody knows is "unknown". Empty where neither is known.
    Sentence of(const std::string& accession) const;

  private:
    Sentence parents_of(const std::string& accession, bool with_theirs) const;
    Sentence parent_text(const std::optional<std::string>& name, bool with_theirs) const;

    std::map<std::string_view, const Accession*> accessions_;
    std::map<std::string_view, std::vector<std::string_view>> blends_;
};

}  // namespace pipward::lineage
