// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

/// Inside of the room: what it costs to have read or written one text for another, by how alike the
/// characters are. Texts are as NamePool compares them: small letters and digits.
namespace pipward::place::detail {

/// The characters that are taken for this one on a label, itself among them: "0o" for both. Empty for those
/// that stand alone.
std::string_view looks_like(char c);
/// One character for all that look alike.
char look_of(char c);

struct Misreading {
    float cost = 0;   ///< 1 for a character like any other, less for likely slips
    int letters = 0;  ///< that differ; a swap is one
};

/// Between the search text and the part of `name` that is most like it. Costs are our own figures, in the
/// order that studies of slips agree on: characters of like shape or sound, doubled and swapped ones come
/// before all others (Damerau 1964, Commun. ACM 7:171; Kukich 1992, ACM Comput. Surv. 24:377; from memory).
/// What is longer than Likeness::longest is cut.
Misreading misread_part(std::string_view query, std::string_view name);
/// Between the two as wholes.
Misreading misread_whole(std::string_view query, std::string_view name);

}  // namespace pipward::place::detail
