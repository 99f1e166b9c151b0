// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/book/detail/check_counts.h"

namespace pipward::book::detail {
namespace {

void check_tests(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& test : book.orchard().pollen_tests) {
        const auto row = fid_name(test.fid);
        check_not_future({"pollen_test", row, "tested_on", to_iso(test.tested_on)}, test.tested_on, as_of,
                         findings);
        if (test.grains == 0 && test.germinated == 0) {
            findings.push_back(warning({"pollen_test", row, "grains", "0"},
                                       say("A test in which no grains were counted shows nothing."),
                                       say("Count 100 or more, or remove the test.")));
        }
        if (test.germinated > test.grains) {
            findings.push_back(error({"pollen_test", row, "germinated", std::to_string(test.germinated)},
                                     say("More grains germinated than the {} counted.", test.grains),
                                     say("Correct one of the two numbers.")));
        }
        if (const auto* lot = book.pollen_lot(test.lot)) {
            check_order({"pollen_test", row, "tested_on", to_iso(test.tested_on)}, lot->collected_on,
                        say("The date lies before the lot was collected, {}.", to_iso(lot->collected_on)),
                        test.tested_on, findings);
        }
    }
}

void check_lots(const Orchard& orchard, Day as_of, Findings& findings) {
    for (const auto& lot : orchard.pollen_lots) {
        check_not_future({"pollen_lot", lot.code, "collected_on", to_iso(lot.collected_on)}, lot.collected_on,
                         as_of, findings);
        if (lot.used_up_on) {
            check_order({"pollen_lot", lot.code, "used_up_on", to_iso(*lot.used_up_on)}, lot.collected_on,
                        say("The date lies before the lot was collected, {}.", to_iso(lot.collected_on)),
                        *lot.used_up_on, findings);
        }
    }
}

void check_tree_of(const Pollination& work, const OrchardIndex& book, Findings& findings) {
    const auto* tree = book.tree(work.tree);
    const auto* goal = book.goal(work.cross);
    if (tree != nullptr && goal != nullptr && tree->accession && *tree->accession != goal->seed_parent) {
        findings.push_back(error({"pollination", work.tag, "tree", work.tree},
                                 say("The tree is {}, but the seed parent of {} is {}.", *tree->accession,
                                     work.cross, goal->seed_parent),
                                 say("Correct the tree or the cross.")));
    }
}

bool gives_pollen_for(const PollenLot& lot, const CrossGoal& goal, const OrchardIndex& book) {
    const auto members = book.blend(goal.pollen_parent);
    return lot.donor == goal.pollen_parent ||
           std::ranges::find(members, lot.donor, &BlendMember::member) != members.end();
}

void check_lot_of(const Pollination& work, const OrchardIndex& book, Findings& findings) {
    const auto* lot = book.pollen_lot(work.lot.value_or(""));
    if (lot == nullptr) {
        return;
    }
    check_order({"pollination", work.tag, "pollinated_on", to_iso(work.pollinated_on)}, lot->collected_on,
                say("The date lies before the lot was collected, {}.", to_iso(lot->collected_on)),
                work.pollinated_on, findings);
    const auto* goal = book.goal(work.cross);
    if (goal != nullptr && !gives_pollen_for(*lot, *goal, book)) {
        findings.push_back(warning({"pollination", work.tag, "lot", *work.lot},
                                   say("The lot is pollen of {}, but the cross {} wants {}.", lot->donor,
                                       work.cross, goal->pollen_parent),
                                   say("Correct the lot or the cross.")));
    }
}

void check_work(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& work : book.orchard().pollinations) {
        check_not_future({"pollination", work.tag, "pollinated_on", to_iso(work.pollinated_on)},
                         work.pollinated_on, as_of, findings);
        check_tree_of(work, book, findings);
        check_lot_of(work, book, findings);
    }
}

}  // namespace

void check_pollen(const OrchardIndex& book, Day as_of, Findings& findings) {
    check_lots(book.orchard(), as_of, findings);
    check_tests(book, as_of, findings);
    check_work(book, as_of, findings);
}

}  // namespace pipward::book::detail
