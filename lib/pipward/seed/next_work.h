// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "pipward/record/orchard_index.h"
#include "pipward/seed/cross_tally.h"
#include "pipward/value/sentence.h"

namespace pipward::seed {

/// The steps from fruit to a numbered place, in their order.
enum class SeedWork {
    harvest,               ///< fruit of tagged branches
    wash,                  ///< take the seed out of the fruit
    start_stratification,  ///< put it moist and cold
    sow,                   ///< take it out of the cold: it is ready to germinate
    pot,                   ///< germinated seed
    plant,                 ///< seedlings into numbered places
    nothing,               ///< done, or come to nothing
};

/// What is to be done next with a cross, and when.
struct NextWork {
    SeedWork work = SeedWork::nothing;  ///< nothing where the cross is done or has failed
    std::optional<Day> from;            ///< unknown where nothing tells it
    std::optional<Day> to;              ///< after that it is late
    bool late = false;                  ///< whether `to` is past
    Sentence why;                       ///< whole sentences, for people
    std::string lot{};                  ///< the seed lot that it is done to; empty where there is none yet
};

/// The earliest step that is still to do. Harvest days are calculated from the days on which the flowers were
/// worked, which is full bloom give or take a few days; washing within four weeks of harvest; cold early
/// enough to end half a year after harvest; potting within two weeks of the count; seedlings left over from a
/// planted family are planted within 400 days of the last count or not at all (common practice, no source).
NextWork next_work(const CrossTally& tally, const OrchardIndex& book, Day as_of);

/// All that is to be done with a cross now, lot by lot, the earliest step first. Harvest is told of the cross
/// as a whole; tags_to_harvest() tells it of every branch.
std::vector<NextWork> work_of_cross(const CrossTally& tally, const OrchardIndex& book, Day as_of);

/// Days of stratification for the seed of a cross: its seed parent's species, an apple's where nothing tells
/// it.
struct CrossStratificationNeed {
    int least_days = 0;    ///< until some seed is ready
    int full_days = 0;     ///< until most of it is, not fewer
    bool guessed = false;  ///< the species is not known
};
/// By stratification_need.h; the species as species_of() tells it.
CrossStratificationNeed stratification_need_of_cross(const CrossGoal& goal, const OrchardIndex& book);

}  // namespace pipward::seed
