// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "pipward/place/detail/hits.h"
#include "pipward/place/detail/name_list.h"
#include "pipward/place/detail/name_pool.h"

/// Inside of the room: trees by the fields of their records, one or several at once: "B3-12", "row 3 tree 12
/// Upper", "Wrenlea on M9 in Upper".
namespace pipward::place::detail {

class FieldTable : Vocabulary {
  public:
    /// `trees` and `names` must outlive the table; labels are the first of the names, in the order of the
    /// trees.
    FieldTable(const std::vector<Tree>& trees, const NamePool& names);

    /// To be called when the names are complete.
    void fill();

    void find(std::string_view query, Effort effort, Hits& hits) const;

    /// The fields of trees that find() would look for: of each way to understand the search text the names,
    /// or numbers, by facet. Those of a block or row that is written in several ways are all there.
    using FieldsSought = std::map<Facet, std::set<std::string>>;
    std::vector<FieldsSought> sought(std::string_view query, Effort effort) const;

    /// "accession Wrenlea, block Upper, planted 2019": the fields of a hit of kind MatchKind::record.
    Sentence shown(const Hit& hit, const Orchard& orchard) const;

  private:
    Values called(Facet facet, std::span<const Token> tokens, Effort effort) const override;
    void learn_codes(const std::vector<std::uint32_t>& blocks);
    std::vector<Reading> readings(const std::vector<Token>& tokens, Effort effort) const;
    std::set<std::string> names_of(Facet facet, std::uint32_t value) const;
    void find_tokens(const std::vector<Token>& tokens, Effort effort, float worth, Hits& hits) const;
    void find_reading(const Reading& reading, float worth, Hits& hits) const;
    template <class Use>
    void each_candidate(const Reading& reading, Use use) const;
    std::uint32_t value_of(Facet facet, std::uint32_t tree) const;

    static constexpr std::uint32_t none = 0xFFFFFFFF;

    const std::vector<Tree>& trees_;
    const NamePool& names_;
    NameList blocks_;
    NameList rows_;
    NameList rootstocks_;
    Lists by_position_;
    std::uint32_t positions_ = 0;                                  // that have a list
    std::array<std::vector<std::uint32_t>, facet_count> columns_;  // by tree; none for labels
};

}  // namespace pipward::place::detail
