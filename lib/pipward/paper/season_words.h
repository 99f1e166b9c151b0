// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "pipward/cross/plan.h"

/// The plan's enums and numbers as people say them. Plain text, not escaped.
namespace pipward {

std::string_view way_words(PollenWay way);
std::string_view verdict_words(Verdict verdict);
std::string_view s_match_words(SMatch match);
std::string_view urgency_words(Urgency urgency);
std::string_view source_words(NeedSource source);
std::string_view store_words(Store store);
std::string_view method_words(BloomMethod method);

/// "8 in 10"; "over 19 in 20" and "under 1 in 20" at the ends, "no chance" for none, "not known" for NaN.
std::string chance_words(Share chance);
/// Whole tenths of a chance, 0..10: how many pips of ten to fill.
int chance_tenths(Share chance);
/// "74 of 100".
std::string of_hundred(double share);
/// "kinship 0.125", "no kinship in the pedigree" for none, "kinship not known" for nothing.
std::string kinship_words(const std::optional<double>& kinship);
/// "3.5 mg", "120 mg"; nothing for none.
std::string milligram_words(Milligrams mass);
/// "1 flower", "40 flowers".
std::string counted(int number, std::string_view one, std::string_view many);
/// "20 March 2026".
std::string long_day(Day day);
/// "Fri 20 Mar".
std::string work_day(Day day);

}  // namespace pipward
