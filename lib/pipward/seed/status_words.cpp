// SPDX-License-Identifier: MIT
#include "pipward/seed/status_words.h"

#include "pipward/math/shares.h"

namespace pipward::seed {
namespace {

bool comparable(const StepCount& of, const StepCount& hits) {
    return of.count && hits.count && of.whole && hits.whole && *of.count > 0 && *hits.count <= *of.count;
}

}  // namespace

Sentence failed_words(SeedStep step) {
    switch (step) {
        case SeedStep::pollinated:
            return say("no flower was pollinated");
        case SeedStep::fruits:
            return say("no fruit set");
        case SeedStep::sound_seed:
            return say("no sound seed");
        case SeedStep::in_stratification:
            return say("no seed stratified");
        case SeedStep::germinated:
            return say("no seed germinated");
        case SeedStep::planted:
            return say("no seedling was planted");
        case SeedStep::alive:
            break;
    }
    return say("no seedling is left");
}

Sentence work_words(SeedWork work) {
    switch (work) {
        case SeedWork::harvest:
            return say("harvest the fruit");
        case SeedWork::wash:
            return say("wash the seed");
        case SeedWork::start_stratification:
            return say("stratify the seed");
        case SeedWork::sow:
            return say("check germination");
        case SeedWork::pot:
            return say("pot the germinated seed");
        case SeedWork::plant:
            return say("plant the seedlings");
        case SeedWork::nothing:
            break;
    }
    return {};
}

Sentence count_words(const StepCount& step) {
    if (!step.count) {
        return {};
    }
    return step.whole ? verbatim(std::to_string(*step.count)) : say("{} or more", *step.count);
}

Sentence share_words(const StepCount& of, const StepCount& hits) {
    if (!comparable(of, hits)) {
        return {};
    }
    const auto interval = math::wilson_interval(*hits.count, *of.count);
    return say("{:.0f} % ({:.0f} to {:.0f})", 100.0 * *hits.count / *of.count, 100 * interval.low,
               100 * interval.high);
}

std::optional<double> seeds_per_fruit(const CrossTally& tally) {
    const bool known = tally.fruits.count.value_or(0) > 0 && tally.fruits.whole && tally.sound_seed.count &&
                       tally.sound_seed.whole;
    return known ? std::optional{static_cast<double>(*tally.sound_seed.count) / *tally.fruits.count}
                 : std::nullopt;
}

}  // namespace pipward::seed
