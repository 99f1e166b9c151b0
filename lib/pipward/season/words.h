// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "pipward/cross/plan.h"

/// The plan's enums and numbers as people say them. Not escaped.
namespace pipward::season {

/// "collect this spring, dry and keep".
Sentence way_words(cross::PollenWay way);
/// "good".
Sentence verdict_words(cross::Verdict verdict);
/// "half: part of its pollen can grow".
Sentence s_match_words(lineage::SMatch match);
/// "this week".
Sentence urgency_words(cross::Urgency urgency);
/// "borrowed from both parents".
Sentence source_words(bloom::NeedSource source);
/// "deep freezer".
Sentence store_words(Store store);
/// "long-run mean day".
Sentence method_words(bloom::BloomMethod method);

/// "8 in 10"; "over 19 in 20" and "under 1 in 20" at the ends, "no chance" for none, "not known" for NaN.
Sentence chance_words(Share chance);
/// Whole tenths of a chance, 0..10: how many pips of ten to fill.
int chance_tenths(Share chance);
/// "74 of 100".
Sentence of_hundred(double share);
/// "kinship 0.125", "no kinship in the pedigree" for none, "kinship not known" for nothing.
Sentence kinship_words(const std::optional<double>& kinship);
/// "3.5 mg", "120 mg"; nothing for none.
Sentence milligram_words(Milligrams mass);
/// "in refrigerator".
Sentence in_store_words(Store store);
/// "1 flower", "40 flowers".
Sentence flowers_words(int number);

}  // namespace pipward::season
