// SPDX-License-Identifier: MIT
#pragma once

#include <deque>
#include <functional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "pipward/place/detail/hits.h"

/// Inside of the room: seedlings by their parents and their number in the family.
namespace pipward::place::detail {

struct Sibling {
    std::uint32_t tree = 0;
    std::string_view number;  ///< digits without leading zeros; empty where it has none
    std::string_view code{};  ///< of its cross, as compared; empty where nobody knows it
};

struct Family {
    std::string seed_parent;  ///< as written
    std::string pollen_parent;
    std::string seed_key;  ///< as compared
    std::string pollen_key;
    std::vector<Sibling> siblings;
    std::set<std::string, std::less<>> codes{};  ///< of the crosses, as compared; siblings point into it
};

/// What a search text asks for: names of parents as families have them.
struct ParentsSought {
    std::string seed;
    std::string pollen;
    std::string number{};
    bool slips = true;  ///< whether the pollen parent's name may have any: its number could be taken for one

    /// Whether a parent's name is like enough to the first, or the second.
    bool is_seed(const std::string& key) const;
    bool is_pollen(const std::string& key) const;
};
/// Every way to understand it; none where it has no sign between two names.
std::vector<ParentsSought> parents_sought(std::string_view query);
/// The code of a cross before a number, as compared; empty where there is none.
std::string code_sought(std::string_view query);

class FamilyTable {
  public:
    void add(Family family) { families_.push_back(std::move(family)); }

    /// "A x B 17", "A × B no. 17", "A x B": the names may be parts or have slips, and stand the other way
    /// round.
    void find(std::string_view query, Hits& hits) const;

    /// "A × B no. 17" for the hit.
    Sentence shown(std::uint32_t family, std::uint32_t tree) const;

  private:
    void find_by_code(std::string_view query, Hits& hits) const;

    std::deque<Family> families_;  // siblings point into their family: it must not move
};

/// The number of a seedling in its family: the digits at the end of its accession's name; of its label where
/// the whole family has one name, such as the cross's `code`. Without leading zeros; empty where there is
/// none.
std::string_view sibling_number(const Accession& accession, const Tree& tree, std::string_view code);

}  // namespace pipward::place::detail
