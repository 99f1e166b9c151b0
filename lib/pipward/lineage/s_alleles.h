// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>

#include "pipward/value/quantity.h"

namespace pipward {

/// The self-incompatibility alleles of one accession, as a set of names without the leading S ("2", "3",
/// "j").
using SAlleles = std::set<std::string>;

/// Reads "S2 S3", "S2S3", "2,3", "s2/s3", "jk" letters given one by one ("j k"). Nothing for text it cannot
/// read.
std::optional<SAlleles> parse_s_alleles(std::string_view text);

enum class SMatch { full, half, none, unknown };
std::string_view to_text(SMatch match);

struct SCompatibility {
    SMatch match = SMatch::unknown;
    Share pollen_share;  ///< of the donor's pollen that the style lets through; 1 where unknown
};

/// One S locus; a style rejects any grain whose allele it carries (gametophytic incompatibility, de
/// Nettancourt). The share is the donor's alleles absent from the seed parent over the donor's alleles;
/// "half" is anything between.
SCompatibility s_compatibility(const std::optional<SAlleles>& seed_parent,
                               const std::optional<SAlleles>& donor);

}  // namespace pipward
