// SPDX-License-Identifier: MIT
#include "crosses.h"

#include <utility>

#include "parents.h"

namespace pipward::larkfold {
namespace {

CrossGoal goal(std::string code, int season, std::string seed_parent, std::string pollen_parent, int wanted,
               int priority, std::string remark = {}) {
    CrossGoal made;
    made.code = std::move(code);
    made.season = {season};
    made.seed_parent = std::move(seed_parent);
    made.pollen_parent = std::move(pollen_parent);
    made.seedlings_wanted = wanted;
    made.priority = priority;
    if (!remark.empty()) {
        made.remark = std::move(remark);
    }
    return made;
}

constexpr double balloon_degree_days = -85;

struct LotStory {
    std::string code;
    std::string donor;
    int spring = 0;
    int flowers = 0;
    double mass_mg = 0;
    Store store = Store::freezer;
    double humidity_percent = 0;
    std::string used_up_on;  ///< empty while there is some
    std::string remark;
};

const std::vector<LotStory>& lot_stories() {
    using enum Store;
    static const std::vector<LotStory> all{
        {"P-24-01", "Ridgewhistle", 2024, 120, 105, freezer, 20, "2025-05-14", ""},
        {"P-24-02", "Greywether", 2024, 90, 80, refrigerator, 35, "",
         "Left in the door of the refrigerator."},
        {"P-25-01", "Greywether", 2025, 80, 75, refrigerator, 30, "2025-05-22", ""},
        {"P-25-02", "Ridgewhistle", 2025, 160, 150, freezer, 20, "", ""},
    };
    return all;
}

PollenLot lot_of(const LotStory& story, TrueBloom& bloom) {
    PollenLot lot;
    lot.code = story.code;
    lot.donor = story.donor;
    lot.collected_on = bloom.day_at(parent_named(story.donor), story.spring, 0, balloon_degree_days);
    lot.flowers = story.flowers;
    lot.mass = Milligrams{story.mass_mg};
    lot.store = story.store;
    lot.humidity_percent = story.humidity_percent;
    lot.used_up_on = parse_iso_day(story.used_up_on);
    if (!story.remark.empty()) {
        lot.remark = story.remark;
    }
    return lot;
}

PollenTest test(std::string lot, Day day, int grains, int germinated) {
    PollenTest made;
    made.lot = std::move(lot);
    made.tested_on = day;
    made.grains = grains;
    made.germinated = germinated;
    return made;
}

/// The first test of a lot is made once it has dried.
constexpr int drying_days = 3;

}  // namespace

std::vector<CrossGoal> cross_goals() {
    return {
        goal("16-01", 2016, "Tansy Lane", "Wrenlea", 40, 1),
        goal("17-01", 2017, "Larkfold Red", "Larkfold Mix", 60, 1),
        goal("17-02", 2017, "Dapplestead", "Greywether", 30, 2),
        goal("24-01", 2024, "Kettlefen", "Marlside", 80, 1, "Seed treatments compared."),
        goal("24-02", 2024, "Larkfold Red", "Wrenlea", 60, 2),
        goal("25-01", 2025, "Larkfold Red", "Ridgewhistle", 80, 1, "Seed treatments compared."),
        goal("25-02", 2025, "Mossgate Late", "Greywether", 50, 2),
        goal("25-03", 2025, "Amberwell", "Swanmarsh", 40, 2, "Pear."),
        goal("26-01", 2026, "Marlside", "Kettlefen", 60, 1, "They bloom together."),
        goal("26-02", 2026, "Larkfold Red", "Wrenlea", 60, 2),
        goal("26-03", 2026, "Mossgate Late", "Owlcombe", 80, 1, "A late keeper with early fruit set."),
        goal("26-04", 2026, "Larkfold Early", "Ridgewhistle", 50, 1, "The two ends of the bloom."),
        goal("26-05", 2026, "Owlcombe", "Mossgate Late", 40, 2, "No pollen of Mossgate Late was kept."),
        goal("26-06", 2026, "Kettlefen", "Larkfold Mix", 100, 2),
        goal("26-07", 2026, "Larkfold Red", "Tansy Lane", 40, 3, "They share S3."),
        goal("26-08", 2026, "Dapplestead", "LF 08-041", 40, 3),
        goal("26-09", 2026, "Greywether", "Quillet", 20, 3, "To see whether any seed comes."),
        goal("26-10", 2026, "Amberwell", "Tillowby", 40, 2, "Pear."),
        goal("26-11", 2026, "Larkfold Early", "Greywether", 40, 2, "Is the old lot still good enough?"),
        goal("26-12", 2026, "LF 11-023", "Marlside", 30, 3),
        goal("26-13", 2026, "Ridgewhistle", "16-01-04", 60, 2, "The first cross with our own seedling."),
        goal("26-14", 2026, "Mirkendell", "Dapplestead", 20, 3),
        goal("27-01", 2027, "Larkfold Early", "Mossgate Late", 60, 1),
        goal("27-02", 2027, "Owlcombe", "Ridgewhistle", 40, 2),
        goal("27-03", 2027, "Mossgate Late", "LF 09-117", 50, 2, "Mother and child."),
        goal("27-04", 2027, "Swanmarsh", "Amberwell", 40, 3, "Pear. Mother and child."),
    };
}

PollenStore pollen_store(TrueBloom& bloom) {
    PollenStore store;
    for (const auto& story : lot_stories()) {
        store.lots.push_back(lot_of(story, bloom));
    }
    const auto fresh = [&](std::size_t lot) { return store.lots[lot].collected_on + drying_days; };
    store.tests = {
        test("P-24-01", fresh(0), 200, 161),
        test("P-24-01", *make_day({2025, 4, 10}), 200, 132),
        test("P-24-02", fresh(1), 200, 142),
        test("P-24-02", *make_day({2025, 4, 10}), 200, 21),
        test("P-24-02", *make_day({2026, 3, 11}), 200, 7),
        test("P-25-01", fresh(2), 150, 111),
        test("P-25-02", fresh(3), 300, 243),
        test("P-25-02", *make_day({2026, 3, 11}), 300, 204),
    };
    return store;
}

}  // namespace pipward::larkfold
