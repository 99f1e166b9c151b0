// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/record/orchard_index.h"
#include "pipward/value/spoken.h"

/// What a book tells of where an accession comes from, without calculating any pedigree.
namespace pipward::record {

/// The botanical name of an accession: its own, else that of the one it is a sport of, else that of its
/// nearest ancestor by the seed side that has one. Nothing where none has, or where the book has no such
/// accession.
std::optional<std::string> species_of(const OrchardIndex& index, std::string_view accession);

/// The first word of the species; empty where it is not known.
std::string genus_of(const OrchardIndex& index, std::string_view accession);

/// The cross that a seedling came of, null where the book does not know it. A seedling's name begins with the
/// code of its cross and a dash, and it has the parents of the cross: "16-01-04" is of "16-01". Where several
/// codes fit, the first of the book.
const CrossGoal* cross_of_seedling(const OrchardIndex& index, const Accession& seedling);

/// Seed of a cross is sown in the spring after it.
inline constexpr int years_from_cross_to_sowing = 1;
/// An apple or pear from seed rarely flowers before its third year in the ground (yvapplebreeders.com,
/// Shortening the juvenile phase, citing Zimmerman 1973 and Hanke et al. 2007, looked up).
inline constexpr int years_from_sowing_to_flower = 3;

/// Whether a seedling sown in a year may flower in another.
constexpr bool old_enough_to_flower(int sown, int year) {
    return year - sown >= years_from_sowing_to_flower;
}

/// The first year in which seedlings of a cross of that season may flower.
constexpr int first_flower_of_cross(Season season) {
    return season.year + years_from_cross_to_sowing + years_from_sowing_to_flower;
}

}  // namespace pipward::record
