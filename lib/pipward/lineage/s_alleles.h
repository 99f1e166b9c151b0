// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>

#include "pipward/value/quantity.h"

namespace pipward::lineage {

/// The self-incompatibility alleles of one accession, as a set of names without the leading S ("2", "3",
/// "j"). Names are in small letters, numbers without leading zeros.
using SAlleles = std::set<std::string>;

/// Reads "S2 S3", "S2S3", "2 3", "s2/s3", "S101, S102", "S24sm" and the letters of a laboratory one by one
/// ("j k" or "SjSk"). Nothing for text that holds anything else: half a genotype is not a genotype, and words
/// such as "na" are not alleles.
std::optional<SAlleles> parse_s_alleles(std::string_view text);

/// "S2 S3", numbers by size.
std::string to_text(const SAlleles& alleles);

/// How much of a donor's pollen a style lets through.
enum class SMatch {
    full,    ///< all of it
    half,    ///< some of it
    none,    ///< no grain but by leaking
    unknown  ///< the alleles of one side are not known well enough
};
/// "full", "half", "none" or "unknown".
std::string_view to_text(SMatch match);

/// What comes of two sets of alleles.
struct SCompatibility {
    SMatch match = SMatch::unknown;  ///< `unknown` unless both sides have two alleles or more
    Share pollen_share{1};           ///< of the donor's pollen that the style lets through; 1 where unknown
};

/// One S locus; a style rejects any grain whose allele it carries (gametophytic incompatibility, de
/// Nettancourt). The share is the donor's alleles absent from the seed parent over the donor's alleles;
/// "half" is anything between. No pome fruit carries one allele twice, so fewer than two alleles on either
/// side is a record half written: unknown. A share of 0 means that no seed is to be expected, not that none
/// can come: styles leak. Letters of a laboratory against numbers
/// are unknown too: one allele may stand there under two names.
SCompatibility s_compatibility(const std::optional<SAlleles>& seed_parent,
                               const std::optional<SAlleles>& donor);

}  // namespace pipward::lineage
