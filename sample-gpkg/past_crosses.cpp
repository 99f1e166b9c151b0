// SPDX-License-Identifier: MIT
#include "past_crosses.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "parents.h"
#include "planting.h"
#include "random_source.h"

namespace pipward::larkfold {
namespace {

/// What was done to one part of a cross's seed, and how well it germinated for it.
struct Treatment {
    std::string words;
    std::string medium;
    double germination = 0.8;
};

struct Story {
    std::string cross;
    std::string seed_parent;
    int spring = 0;
    int tags = 2;
    std::string lot;  ///< empty for pollen straight from the tree
    double fruit_set = 0.35;
    double sound_seeds = 5;  ///< a fruit
    std::vector<Treatment> treatments;
};

const std::vector<Story>& stories() {
    const Treatment plain{"", "moist sand", 0.78};
    const Treatment soaked{"water, 24 h, changed twice", "moist sand", 0.88};
    const Treatment on_paper{"", "moist paper", 0.70};
    static const std::vector<Story> all{
        {"16-01", "Tansy Lane", 2016, 2, "", 0.28, 5.0, {plain}},
        {"17-01", "Larkfold Red", 2017, 3, "", 0.34, 5.5, {plain}},
        {"17-02", "Dapplestead", 2017, 2, "", 0.24, 4.5, {plain}},
        {"24-01", "Kettlefen", 2024, 3, "", 0.36, 6.0, {plain, soaked, on_paper}},
        {"24-02", "Larkfold Red", 2024, 2, "", 0.33, 5.5, {plain}},
        {"25-01", "Larkfold Red", 2025, 3, "P-24-01", 0.30, 5.0, {plain, soaked}},
        {"25-02", "Mossgate Late", 2025, 2, "P-25-01", 0.22, 4.5, {plain}},
        {"25-03", "Amberwell", 2025, 2, "", 0.20, 4.0, {plain}},
    };
    return all;
}

constexpr double empty_seeds = 1.2;   // a fruit
constexpr int possible_seeds = 10;    // two in each of five cells
constexpr int seed_drying_days = 60;  // from washing to the cold, at the least
constexpr int stratified_days = 84;
constexpr double lost_after_germination = 0.08;

bool has_happened(Day day) {
    return day <= demonstration_day();
}

const Tree& tree_named(const std::vector<Tree>& trees, const std::string& label) {
    return *std::ranges::find(trees, label, &Tree::label);
}

void work_flowers(const Story& story, const std::vector<Tree>& trees, TrueBloom& bloom, PastCrosses& past) {
    RandomSource source("pollination " + story.cross);
    const auto& parent = parent_named(story.seed_parent);
    const auto labels = trees_of(trees, story.seed_parent, *make_day({story.spring, 5, 1}));
    for (int tag = 0; tag < story.tags; ++tag) {
        const auto& label = labels[static_cast<std::size_t>(tag) % labels.size()];
        const double warmer = warmer_than_station(*tree_named(trees, label).elevation);
        Pollination work;
        work.tag = fmt::format("{}-{}", story.cross, static_cast<char>('a' + tag));
        work.cross = story.cross;
        work.tree = label;
        work.pollinated_on = bloom.day_at(parent, story.spring, warmer, -18) + source.whole(0, 2);
        work.flowers = source.whole(40, 75);
        work.pass = 1;
        if (!story.lot.empty()) {
            work.lot = story.lot;
        }
        past.pollinations.push_back(work);
    }
}

Fruit fruit_of(const Story& story, const Pollination& work, RandomSource& source) {
    Fruit fruit;
    fruit.tag = work.tag;
    fruit.harvested_on = work.pollinated_on + *accession_of(parent_named(story.seed_parent)).seed_ripe_days +
                         source.whole(0, 6);
    fruit.fruits = source.successes(work.flowers, story.fruit_set);
    fruit.seeds_sound = source.successes(fruit.fruits * possible_seeds, story.sound_seeds / possible_seeds);
    fruit.seeds_empty = source.successes(fruit.fruits * possible_seeds, empty_seeds / possible_seeds);
    return fruit;
}

void harvest_fruit(const Story& story, PastCrosses& past) {
    RandomSource source("fruit " + story.cross);
    for (const auto& work : past.pollinations) {
        if (work.cross == story.cross) {
            past.fruits.push_back(fruit_of(story, work, source));
        }
    }
}

/// Seed of a cross, all tags together.
struct Harvest {
    int seeds = 0;
    Day last_harvested;
    std::string tags;
};

Harvest harvest_of(const Story& story, const PastCrosses& past) {
    Harvest harvest;
    for (const auto& fruit : past.fruits) {
        if (fruit.tag.starts_with(story.cross + "-")) {
            harvest.seeds += *fruit.seeds_sound;
            harvest.last_harvested = std::max(harvest.last_harvested, fruit.harvested_on);
            harvest.tags += (harvest.tags.empty() ? "" : " ") + fruit.tag;
        }
    }
    return harvest;
}

void count_germinated(const SeedLot& lot, const Treatment& treatment, PastCrosses& past) {
    RandomSource source("germinates " + lot.code);
    const int in_the_end = source.successes(lot.seeds, treatment.germination);
    struct Count {
        int days_after_stratification;
        double share;  // of the seeds that germinate in the end
    };
    constexpr std::array<Count, 4> counts{{{-14, 0.10}, {0, 0.42}, {14, 0.82}, {28, 1.0}}};
    for (const auto& [after_stratification, share] : counts) {
        const Day day = *lot.stratified_to + after_stratification;
        if (has_happened(day)) {
            past.germination_counts.push_back(
                {.lot = lot.code, .counted_on = day, .germinated = static_cast<int>(in_the_end * share)});
        }
    }
}

SeedWithdrawal seed_withdrawal(const std::string& lot, Day day, int seeds, const std::string& remark) {
    SeedWithdrawal out;
    out.lot = lot;
    out.withdrawn_on = day;
    out.seeds = seeds;
    out.remark = remark;
    return out;
}

/// Germinated seed is potted after the last count; what has not germinated by then is thrown away.
void take_out(const SeedLot& lot, PastCrosses& past) {
    const Day day = *lot.stratified_to + 35;
    if (!has_happened(day)) {
        return;
    }
    RandomSource source("potted " + lot.code);
    const int germinated = past.germination_counts.back().germinated;
    const int broken = source.successes(germinated, lost_after_germination);
    past.seed_withdrawals.push_back(seed_withdrawal(lot.code, day, germinated - broken, "potted"));
    past.seed_withdrawals.push_back(
        seed_withdrawal(lot.code, day, lot.seeds - germinated + broken, "not germinated, rotten or broken"));
}

SeedLot lot_of(const Story& story, const Harvest& harvest, std::size_t part) {
    const auto& treatment = story.treatments[part];
    const int parts = static_cast<int>(story.treatments.size());
    SeedLot lot;
    lot.code =
        parts == 1 ? "S-" + story.cross : fmt::format("S-{}-{}", story.cross, static_cast<char>('A' + part));
    lot.cross = story.cross;
    lot.seeds = harvest.seeds / parts + (static_cast<int>(part) < harvest.seeds % parts ? 1 : 0);
    lot.from_tags = harvest.tags;
    lot.washed_on = harvest.last_harvested + 5;
    lot.stratified_from = std::max(*make_day({story.spring, 11, 25}), *lot.washed_on + seed_drying_days);
    lot.cold = Celsius{3};
    lot.stratified_to = *lot.stratified_from + stratified_days;
    lot.medium = treatment.medium;
    if (!treatment.words.empty()) {
        lot.treatment = treatment.words;
    }
    return lot;
}

void sow(const Story& story, PastCrosses& past) {
    const auto harvest = harvest_of(story, past);
    for (std::size_t part = 0; part < story.treatments.size(); ++part) {
        const auto lot = lot_of(story, harvest, part);
        past.seed_lots.push_back(lot);
        count_germinated(lot, story.treatments[part], past);
        take_out(lot, past);
    }
}

}  // namespace

PastCrosses past_crosses(const std::vector<Tree>& trees, TrueBloom& bloom) {
    PastCrosses past;
    for (const auto& story : stories()) {
        work_flowers(story, trees, bloom, past);
        harvest_fruit(story, past);
        sow(story, past);
    }
    return past;
}

}  // namespace pipward::larkfold
