// SPDX-License-Identifier: MIT
#include "pipward/book/check_counts.h"

namespace pipward::book {
namespace {

void check_tests(const Orchard& orchard, Day as_of, Findings& findings) {
    const auto lots = index_by(orchard.pollen_lots, &PollenLot::code);
    for (const auto& test : orchard.pollen_tests) {
        const auto row = fid_name(test.fid);
        check_not_negative({"pollen_test", row, "grains"}, test.grains, findings);
        check_not_negative({"pollen_test", row, "germinated"}, test.germinated, findings);
        check_not_future({"pollen_test", row, "tested_on", to_iso(test.tested_on)}, test.tested_on, as_of,
                         findings);
        if (test.grains == 0 && test.germinated == 0) {
            findings.push_back(warning({"pollen_test", row, "grains", "0"},
                                       say("A test in which no grains were counted tells nothing."),
                                       say("Count 100 or more, or remove the test.")));
        }
        if (test.germinated > test.grains) {
            findings.push_back(error({"pollen_test", row, "germinated", std::to_string(test.germinated)},
                                     say("More grains germinated than the {} counted.", test.grains),
                                     say("Correct one of the two numbers.")));
        }
        if (const auto lot = lots.find(test.lot); lot != lots.end()) {
            check_order(
                {"pollen_test", row, "tested_on", to_iso(test.tested_on)}, lot->second->gathered_on,
                say("The day lies before the lot was gathered, {}.", to_iso(lot->second->gathered_on)),
                test.tested_on, findings);
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
                        say("The day lies before the lot was gathered, {}.", to_iso(lot.gathered_on)),
                        *lot.used_up_on, findings);
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
                                 say("The tree is {}, but the seed parent of {} is {}.",
                                     *tree->second->accession, work.cross, goal->second->seed_parent),
                                 say("Correct the tree or the cross.")));
    }
}

void check_lot_of(const Pollination& work, const Books& books, Findings& findings) {
    const auto lot = work.lot ? books.lots.find(*work.lot) : books.lots.end();
    if (lot == books.lots.end()) {
        return;
    }
    check_order({"pollination", work.tag, "worked_on", to_iso(work.worked_on)}, lot->second->gathered_on,
                say("The day lies before the lot was gathered, {}.", to_iso(lot->second->gathered_on)),
                work.worked_on, findings);
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
                                   say("The lot is pollen of {}, but the cross {} wants {}.",
                                       lot->second->donor, work.cross, wanted),
                                   say("Correct the lot or the cross.")));
    }
}

void check_work(const Orchard& orchard, Day as_of, Findings& findings) {
    Books books{index_by(orchard.trees, &Tree::label),
                index_by(orchard.goals, &CrossGoal::code),
                index_by(orchard.pollen_lots, &PollenLot::code),
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

}  // namespace

void check_pollen(const Orchard& orchard, Day as_of, Findings& findings) {
    check_lots(orchard, as_of, findings);
    check_tests(orchard, as_of, findings);
    check_work(orchard, as_of, findings);
}

}  // namespace pipward::book
