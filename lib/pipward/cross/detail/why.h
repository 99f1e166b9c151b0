// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/cross/detail/crossing.h"
#include "pipward/cross/detail/lot_outlook.h"

/// The plan's reasons, in sentences for people in an orchard.
namespace pipward::cross::detail {

Sentence days_text(int days);         ///< "1 day", "9 days"
Sentence percent_text(double share);  ///< "58 %"
Sentence store_text(Store store);     ///< "the refrigerator"
Sentence way_text(PollenWay way);     ///< as the tables name it

/// Why no way at all can work. Nothing where one may.
std::optional<Sentence> blocked_text(const Bench& bench, const Crossing& crossing);

/// How the donor's balloon flowers lie to the flowers that can take pollen, by their median days.
Sentence meeting_text(const Crossing& crossing, const DonorTree& donor);
/// The same for pollen that is kept: only too late matters.
Sentence too_late_text(const Crossing& crossing, const DonorTree& donor);

/// Of a lot: its store, its age or last test, and what should germinate on the day of use.
Sentence lot_text(const LotOutlook& lot, Day use, Share usable);
/// Whose bloom is calculated without notes of its own, and from what. Nothing where both have notes.
std::optional<Sentence> borrowed_text(const Bench& bench, const Crossing& crossing);
/// Why there is no lot of an earlier year.
Sentence no_lot_text(const Bench& bench, const Crossing& crossing);

/// What is true of the cross by every way: S-alleles, ploidy, kinship, cold, the guide to a season to come.
std::vector<Sentence> parentage_sentences(const Bench& bench, const Crossing& crossing);

}  // namespace pipward::cross::detail
