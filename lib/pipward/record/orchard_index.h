// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "pipward/record/name_index.h"
#include "pipward/record/orchard.h"
#include "pipward/value/spoken.h"

namespace pipward::record {

/// Who gives pollen, and how much of the whole.
struct DonorShare {
    std::string donor;  ///< an accession
    Share share{1};     ///< of the pollen, 0..1
};

/// The shares of a blend's members, one each, none below 0. Shares that are missing divide what the others
/// leave; shares that fall short of 1 stay so; shares above 1 in all are scaled down to it.
std::vector<Share> blend_shares(std::span<const BlendMember* const> members);

/// A book that answers questions by name. Of a name that stands twice the first row counts; where nothing
/// answers to a name the answer is null or empty. Lists are in the order of the book.
class OrchardIndex {
  public:
    /// `orchard` is lent: it must outlive the index and stay as it is.
    explicit OrchardIndex(const Orchard& orchard);
    explicit OrchardIndex(const Orchard&& orchard) = delete;

    const Orchard& orchard() const { return *orchard_; }  ///< the one that was lent

    /// A part of the orchard.
    const Block* block(std::string_view name) const { return blocks_.find(name); }
    /// A planted row: those of two blocks may share a name.
    const TreeRow* row(std::string_view block, std::string_view name) const;
    /// A tree that stands, stood or is to stand.
    const Tree* tree(std::string_view label) const { return trees_.find(label); }
    /// An accession; for the name of a blend null, unless one bears it too.
    const Accession* accession(std::string_view name) const { return accessions_.find(name); }
    /// The weather station of that name.
    const Station* station(std::string_view name) const { return stations_.find(name); }
    /// The goal of that code, of whatever season.
    const CrossGoal* goal(std::string_view code) const { return goals_.find(code); }
    /// A lot of pollen, used up or not.
    const PollenLot* pollen_lot(std::string_view code) const { return pollen_lots_.find(code); }
    /// The first work on the flowers of a tag, which may be worked again.
    const Pollination* pollination(std::string_view tag) const { return pollinations_.find(tag); }
    /// A lot of seed, done or not.
    const SeedLot* seed_lot(std::string_view code) const { return seed_lots_.find(code); }

    /// Every tree that the accession ever had or is to have.
    std::span<const Tree* const> trees_of(std::string_view accession) const;
    /// Those that stand on the day.
    std::vector<const Tree*> trees_of(std::string_view accession, Day day) const;
    /// Whether a tree of it stands on the day.
    bool has_tree(std::string_view accession, Day day) const;

    /// The rows of a blend; empty for any other name.
    std::span<const BlendMember* const> blend(std::string_view name) const { return blends_.find(name); }
    /// An accession's name goes before a blend's.
    bool is_blend(std::string_view name) const;
    /// Who the pollen of that name comes from: the members of a blend, else the name itself.
    std::vector<DonorShare> donors(std::string_view name) const;

  private:
    const Orchard* orchard_;
    ByName<Block> blocks_;
    std::map<std::pair<std::string_view, std::string_view>, const TreeRow*> rows_;
    ByName<Tree> trees_;
    ByName<Accession> accessions_;
    ByName<Station> stations_;
    ByName<CrossGoal> goals_;
    ByName<PollenLot> pollen_lots_;
    ByName<Pollination> pollinations_;
    ByName<SeedLot> seed_lots_;
    GroupedByName<Tree> trees_of_;
    GroupedByName<BlendMember> blends_;
};

}  // namespace pipward::record
