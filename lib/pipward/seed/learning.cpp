// SPDX-License-Identifier: MIT
#include "pipward/seed/learning.h"

#include <algorithm>

#include "pipward/seed/cross_tally.h"

namespace pipward::seed {
namespace {

constexpr double flowers_of_handbook = 50;
constexpr double fruits_of_handbook = 10;
constexpr double seeds_of_handbook = 50;
constexpr int days_without_count = 60;

struct Counted {
    int hits = 0;
    int of = 0;
};

LearnedFigure learned(double handbook, double weight, Counted counted) {
    LearnedFigure figure{handbook, weight, counted.of, 0, handbook};
    if (counted.of > 0) {
        figure.yours = static_cast<double>(counted.hits) / counted.of;
        figure.used = (handbook * weight + counted.hits) / (weight + counted.of);
    }
    return figure;
}

void add_set(Counted& counted, const CrossTally& tally) {
    if (tally.fruits.count && tally.fruits.whole && tally.flowers.count) {
        counted.hits += *tally.fruits.count;
        counted.of += *tally.flowers.count;
    }
}

Counted seeds_in_fruit(const Orchard& orchard, Day as_of) {
    Counted counted;
    for (const auto& fruit : orchard.fruits) {
        if (fruit.harvested_on <= as_of && fruit.seeds_sound && fruit.fruits > 0) {
            counted.hits += *fruit.seeds_sound;
            counted.of += fruit.fruits;
        }
    }
    return counted;
}

/// A lot that still germinates would teach too low a share.
bool is_done(const LotCourse& course, Day as_of) {
    return course.out >= course.lot->seeds || as_of - *course.counted_on >= days_without_count;
}

Counted germination(const Orchard& orchard, Day as_of) {
    Counted counted;
    for (const auto& course : lot_courses(orchard, as_of)) {
        if (course.germinated && course.lot->seeds > 0 && is_done(course, as_of)) {
            counted.hits += std::min(*course.germinated, course.lot->seeds);
            counted.of += course.lot->seeds;
        }
    }
    return counted;
}

}  // namespace

Learned learn(const Orchard& orchard, Day as_of, const cross::CrossingAssumptions& handbook) {
    Counted set;
    for (const auto& tally : tally_crosses(orchard, as_of)) {
        add_set(set, tally);
    }
    Learned all;
    all.fruit_set = learned(handbook.fruit_set.value, flowers_of_handbook, set);
    all.seeds_per_fruit =
        learned(handbook.seeds_per_fruit, fruits_of_handbook, seeds_in_fruit(orchard, as_of));
    all.germination = learned(handbook_germination, seeds_of_handbook, germination(orchard, as_of));
    all.survival = handbook.seed_to_seedling.value / handbook_germination;
    all.seeds_variance =
        handbook.seeds_per_fruit_variance / handbook.seeds_per_fruit * all.seeds_per_fruit.used;
    return all;
}

cross::CrossingAssumptions with_learned(cross::CrossingAssumptions assumptions, const Learned& learned) {
    assumptions.fruit_set = {learned.fruit_set.used};
    assumptions.seeds_per_fruit = learned.seeds_per_fruit.used;
    assumptions.seeds_per_fruit_variance = learned.seeds_variance;
    assumptions.seed_to_seedling = {learned.germination.used * learned.survival};
    return assumptions;
}

}  // namespace pipward::seed
