// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "pipward/book/check.h"

namespace pipward {
namespace {

template <class Row, class Member>
std::map<std::string, const Row*> index(const std::vector<Row>& rows, Member member) {
    std::map<std::string, const Row*> found;
    for (const auto& row : rows) {
        found.emplace(row.*member, &row);
    }
    return found;
}

template <class Number>
void check_not_negative(const Whereabouts& place, Number number, Findings& findings) {
    if (number < Number{}) {
        auto where = place;
        where.value = fmt::format("{}", number);
        findings.push_back(
            error(where, "The number is below zero.", "Correct it, or clear it if it is not known."));
    }
}

void check_order(const Whereabouts& place, Day earlier, std::string_view what, Day later,
                 Findings& findings) {
    if (later < earlier) {
        findings.push_back(error(place, fmt::format("The day lies before {}, {}.", what, to_iso(earlier)),
                                 "Correct one of the two days."));
    }
}

void check_not_future(const Whereabouts& place, Day day, Day as_of, Findings& findings) {
    if (day > as_of) {
        findings.push_back(warning(place, fmt::format("The day lies in the future of {}.", to_iso(as_of)),
                                   "Correct the day if it is wrong."));
    }
}

void check_tests(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto lots = index(orchard.pollen_lots, &PollenLot::code);
    for (const auto& test : orchard.pollen_tests) {
        const auto row = fid_name(test.fid);
        check_not_negative({"pollen_test", row, "grains"}, test.grains, findings);
        check_not_negative({"pollen_test", row, "germinated"}, test.germinated, findings);
        check_not_future({"pollen_test", row, "tested_on", to_iso(test.tested_on)}, test.tested_on, as_of,
                         findings);
        if (test.grains == 0 && test.germinated == 0) {
            findings.push_back(warning({"pollen_test", row, "grains", "0"},
                                       "A test in which no grains were counted tells nothing.",
                                       "Count 100 or more, or remove the test."));
        }
        if (test.germinated > test.grains) {
            findings.push_back(error({"pollen_test", row, "germinated", std::to_string(test.germinated)},
                                     fmt::format("More grains germinated than the {} counted.", test.grains),
                                     "Correct one of the two numbers."));
        }
        if (const auto lot = lots.find(test.lot); lot != lots.end()) {
            check_order({"pollen_test", row, "tested_on", to_iso(test.tested_on)}, lot->second->gathered_on,
                        "the lot was gathered", test.tested_on, findings);
        }
    }
}

void check_lots(const Orchard& orchard, Day as_of, Findings& findings) {
    for (const auto& lot : orchard.pollen_lots) {
        check_not_negative({"pollen_lot", lot.code, "flowers"}, lot.flowers.value_or(0), findings);
        check_not_negative({"pollen_lot", lot.code, "mass_mg"}, lot.mass.value_or(Milligrams{}).value,
                           findings);
        check_not_future({"pollen_lot", lot.code, "gathered_on", to_iso(lot.gathered_on)}, lot.gathered_on,
                         as_of, findings);
        if (lot.used_up_on) {
            check_order({"pollen_lot", lot.code, "used_up_on", to_iso(*lot.used_up_on)}, lot.gathered_on,
                        "the lot was gathered", *lot.used_up_on, findings);
        }
    }
}

struct Books {
    std::map<std::string, const Tree*> trees;
    std::map<std::string, const CrossGoal*> goals;
    std::map<std::string, const PollenLot*> lots;
    std::map<std::string, std::set<std::string>> members;
};

void check_tree_of(const Pollination& work, const Books& books, Findings& findings) {
    const auto tree = books.trees.find(work.tree);
    const auto goal = books.goals.find(work.cross);
    if (tree == books.trees.end() || goal == books.goals.end() || !tree->second->accession) {
        return;
    }
    if (*tree->second->accession != goal->second->seed_parent) {
        findings.push_back(error({"pollination", work.tag, "tree", work.tree},
                                 fmt::format("The tree is {}, but the seed parent of {} is {}.",
                                             *tree->second->accession, work.cross, goal->second->seed_parent),
                                 "Correct the tree or the cross."));
    }
}

void check_lot_of(const Pollination& work, const Books& books, Findings& findings) {
    const auto lot = work.lot ? books.lots.find(*work.lot) : books.lots.end();
    if (lot == books.lots.end()) {
        return;
    }
    check_order({"pollination", work.tag, "worked_on", to_iso(work.worked_on)}, lot->second->gathered_on,
                "the lot was gathered", work.worked_on, findings);
    const auto goal = books.goals.find(work.cross);
    if (goal == books.goals.end()) {
        return;
    }
    const auto& wanted = goal->second->pollen_parent;
    const auto blend = books.members.find(wanted);
    const bool fits = lot->second->donor == wanted ||
                      (blend != books.members.end() && blend->second.contains(lot->second->donor));
    if (!fits) {
        findings.push_back(warning({"pollination", work.tag, "lot", *work.lot},
                                   fmt::format("The lot is pollen of {}, but the cross {} wants {}.",
                                               lot->second->donor, work.cross, wanted),
                                   "Correct the lot or the cross."));
    }
}

void check_work(const Orchard& orchard, Day as_of, Findings& findings) {
    Books books{index(orchard.trees, &Tree::label),
                index(orchard.goals, &CrossGoal::code),
                index(orchard.pollen_lots, &PollenLot::code),
                {}};
    for (const auto& member : orchard.blend_members) {
        books.members[member.name].insert(member.member);
    }
    for (const auto& work : orchard.pollinations) {
        check_not_negative({"pollination", work.tag, "flowers"}, work.flowers, findings);
        check_not_future({"pollination", work.tag, "worked_on", to_iso(work.worked_on)}, work.worked_on,
                         as_of, findings);
        check_tree_of(work, books, findings);
        check_lot_of(work, books, findings);
    }
}

void check_fruit(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto work = index(orchard.pollinations, &Pollination::tag);
    std::map<std::string, int> fruits;
    for (const auto& fruit : orchard.fruits) {
        const auto row = fid_name(fruit.fid);
        check_not_negative({"fruit", row, "fruits"}, fruit.fruits, findings);
        check_not_negative({"fruit", row, "seeds_sound"}, fruit.seeds_sound.value_or(0), findings);
        check_not_negative({"fruit", row, "seeds_empty"}, fruit.seeds_empty.value_or(0), findings);
        check_not_future({"fruit", row, "picked_on", to_iso(fruit.picked_on)}, fruit.picked_on, as_of,
                         findings);
        fruits[fruit.tag] += fruit.fruits;
        if (const auto found = work.find(fruit.tag); found != work.end()) {
            check_order({"fruit", row, "picked_on", to_iso(fruit.picked_on)}, found->second->worked_on,
                        "the flowers were pollinated", fruit.picked_on, findings);
        }
    }
    for (const auto& [tag, count] : fruits) {
        if (const auto found = work.find(tag); found != work.end() && count > found->second->flowers) {
            findings.push_back(warning(
                {"fruit", tag, "fruits", std::to_string(count)},
                fmt::format("More fruits were picked than the {} flowers worked.", found->second->flowers),
                "Correct one of the two numbers."));
        }
    }
}

void check_sprouts(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto lots = index(orchard.seed_lots, &SeedLot::code);
    for (const auto& count : orchard.sprout_counts) {
        const auto row = fid_name(count.fid);
        check_not_negative({"sprout_count", row, "sprouted"}, count.sprouted, findings);
        check_not_future({"sprout_count", row, "counted_on", to_iso(count.counted_on)}, count.counted_on,
                         as_of, findings);
        if (const auto lot = lots.find(count.lot); lot != lots.end() && count.sprouted > lot->second->seeds) {
            findings.push_back(error(
                {"sprout_count", row, "sprouted", std::to_string(count.sprouted)},
                fmt::format("More seeds sprouted than the {} of lot {}.", lot->second->seeds, count.lot),
                "Correct one of the two numbers."));
        }
    }
}

void check_out(const Orchard& orchard, Findings& findings) {
    const auto lots = index(orchard.seed_lots, &SeedLot::code);
    std::map<std::string, int> out;
    for (const auto& row : orchard.seeds_out) {
        check_not_negative({"seed_out", fid_name(row.fid), "seeds"}, row.seeds, findings);
        out[row.lot] += row.seeds;
    }
    for (const auto& [code, count] : out) {
        if (const auto lot = lots.find(code); lot != lots.end() && count > lot->second->seeds) {
            findings.push_back(
                error({"seed_out", code, "seeds", std::to_string(count)},
                      fmt::format("More seeds left the lot than the {} that it had.", lot->second->seeds),
                      "Correct one of the numbers."));
        }
    }
}

void check_seed_lots(const Orchard& orchard, Findings& findings) {
    for (const auto& lot : orchard.seed_lots) {
        check_not_negative({"seed_lot", lot.code, "seeds"}, lot.seeds, findings);
        if (lot.cold_from && lot.cold_to) {
            check_order({"seed_lot", lot.code, "cold_to", to_iso(*lot.cold_to)}, *lot.cold_from,
                        "the seed went into the cold", *lot.cold_to, findings);
        }
        if (lot.washed_on && lot.cold_from) {
            check_order({"seed_lot", lot.code, "cold_from", to_iso(*lot.cold_from)}, *lot.washed_on,
                        "the seed was washed", *lot.cold_from, findings);
        }
    }
}

}  // namespace

void check_pollen(const Orchard& orchard, Day as_of, Findings& findings) {
    check_lots(orchard, as_of, findings);
    check_tests(orchard, as_of, findings);
    check_work(orchard, as_of, findings);
}

void check_seed(const Orchard& orchard, Day as_of, Findings& findings) {
    check_fruit(orchard, as_of, findings);
    check_seed_lots(orchard, findings);
    check_sprouts(orchard, as_of, findings);
    check_out(orchard, findings);
}

}  // namespace pipward
