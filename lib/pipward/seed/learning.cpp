// SPDX-License-Identifier: MIT
#include "pipward/seed/learning.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "pipward/lineage/s_alleles.h"
#include "pipward/record/descent.h"
#include "pipward/seed/cross_tally.h"

namespace pipward::seed {
namespace {

constexpr double flowers_of_handbook = 50;
constexpr double crosses_of_handbook = 5;
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

std::optional<lineage::SAlleles> alleles_of(const OrchardIndex& book, const std::string& name) {
    const auto* accession = book.accession(name);
    return accession != nullptr && accession->s_alleles ? lineage::parse_s_alleles(*accession->s_alleles)
                                                        : std::nullopt;
}

bool is_forbidden(const OrchardIndex& book, const std::string& seed_parent, const std::string& donor) {
    const auto seed_genus = genus_of(book, seed_parent);
    const auto donor_genus = genus_of(book, donor);
    const bool far = !seed_genus.empty() && !donor_genus.empty() && seed_genus != donor_genus;
    return far || seed_parent == donor ||
           lineage::s_compatibility(alleles_of(book, seed_parent), alleles_of(book, donor)).match ==
               lineage::SMatch::none;
}

// Of a blend, every member must be refused.
bool is_forbidden(const OrchardIndex& book, const CrossGoal& goal) {
    return std::ranges::all_of(book.donors(goal.pollen_parent), [&](const DonorShare& donor) {
        return is_forbidden(book, goal.seed_parent, donor.donor);
    });
}

using SetCounts = std::map<std::string, std::vector<Counted>>;  // by genus, one a cross

SetCounts set_counts(const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    SetCounts counts;
    for (const auto& tally : tally_crosses(orchard, as_of)) {
        const bool counted = tally.fruits.count && tally.fruits.whole && tally.flowers.count.value_or(0) > 0;
        if (counted && !is_forbidden(book, *tally.goal)) {
            counts[genus_of(book, tally.goal->seed_parent)].push_back(
                {std::min(*tally.fruits.count, *tally.flowers.count), *tally.flowers.count});
        }
    }
    return counts;
}

Counted sum_of(const std::vector<Counted>& crosses) {
    Counted sum;
    for (const auto& cross : crosses) {
        sum.hits += cross.hits;
        sum.of += cross.of;
    }
    return sum;
}

// Variance of set between crosses, chance apart, times their degrees of freedom; below 0 where they differ
// less than chance alone would have it.
double between_crosses(const std::vector<Counted>& crosses) {
    const auto sum = sum_of(crosses);
    const double mean = static_cast<double>(sum.hits) / sum.of;
    const auto freedom = static_cast<double>(crosses.size()) - 1;
    double squares = 0;
    double sizes = 0;
    for (const auto& cross : crosses) {
        const double off = static_cast<double>(cross.hits) / cross.of - mean;
        squares += cross.of * off * off;
        sizes += cross.of * (1 - static_cast<double>(cross.of) / sum.of);
    }
    const double room = sizes - freedom;
    return room > 0 ? freedom * (squares - mean * (1 - mean) * freedom) / room : 0;
}

LearnedFigure learned_spread(double handbook, const SetCounts& counts) {
    double variance = 0;
    int freedom = 0;
    for (const auto& [genus, crosses] : counts) {
        if (crosses.size() > 1) {
            variance += between_crosses(crosses);
            freedom += static_cast<int>(crosses.size()) - 1;
        }
    }
    LearnedFigure figure{handbook, crosses_of_handbook, freedom, 0, handbook};
    if (freedom > 0) {
        figure.yours = std::sqrt(std::max(0.0, variance / freedom));
        figure.used = std::sqrt((handbook * handbook * crosses_of_handbook + std::max(0.0, variance)) /
                                (crosses_of_handbook + freedom));
    }
    return figure;
}

void learn_set(Learned& all, const SetCounts& counts, const cross::CrossingAssumptions& handbook) {
    Counted together;
    for (const auto& [genus, crosses] : counts) {
        const auto sum = sum_of(crosses);
        together.hits += sum.hits;
        together.of += sum.of;
        all.fruit_set_of_genus[genus] = learned(handbook.fruit_set.value, flowers_of_handbook, sum);
    }
    all.fruit_set = learned(handbook.fruit_set.value, flowers_of_handbook, together);
    all.fruit_set_sd = learned_spread(handbook.fruit_set_sd, counts);
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
    Learned all;
    learn_set(all, set_counts(orchard, as_of), handbook);
    all.seeds_per_fruit =
        learned(handbook.seeds_per_fruit, fruits_of_handbook, seeds_in_fruit(orchard, as_of));
    all.germination = learned(handbook_germination, seeds_of_handbook, germination(orchard, as_of));
    all.survival = handbook.seed_to_seedling.value / handbook_germination;
    all.seeds_variance =
        handbook.seeds_per_fruit_variance / handbook.seeds_per_fruit * all.seeds_per_fruit.used;
    return all;
}

cross::CrossingAssumptions with_learned(cross::CrossingAssumptions assumptions, const Learned& learned) {
    for (const auto& [genus, set] : learned.fruit_set_of_genus) {
        assumptions.fruit_set_of_genus[genus] = {set.used};
    }
    assumptions.fruit_set_sd = learned.fruit_set_sd.used;
    assumptions.seeds_per_fruit = learned.seeds_per_fruit.used;
    assumptions.seeds_per_fruit_variance = learned.seeds_variance;
    assumptions.seed_to_seedling = {learned.germination.used * learned.survival};
    return assumptions;
}

}  // namespace pipward::seed
