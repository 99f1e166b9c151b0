// SPDX-License-Identifier: MIT
// What hangs at a branch: passes under one tag, bags, fruit that set; and pollen on its way to it.
#include <map>
#include <set>

#include "pipward/book/detail/check_counts.h"

namespace pipward::book::detail {
namespace {

using WorksByTag = std::map<std::string, std::vector<const Pollination*>>;

WorksByTag works_by_tag(const Orchard& orchard) {
    WorksByTag works;
    for (const auto& work : orchard.pollinations) {
        works[work.tag].push_back(&work);
    }
    return works;
}

// The row that is entered hears it, so the later one is told.
void check_pass(const Pollination& first, const Pollination& later, Findings& findings) {
    if (later.cross != first.cross || later.tree != first.tree) {
        findings.push_back(
            error({"pollination", later.tag, "tag", later.tag},
                  say("The tag hangs at {} for cross {}: a pass on another branch has a tag of "
                      "its own.",
                      first.tree, first.cross),
                  say("Correct tree and cross, or give the branch another tag.")));
    }
}

void check_passes(const Orchard& orchard, Findings& findings) {
    for (const auto& [tag, works] : works_by_tag(orchard)) {
        check_writing("pollination", "tag", tag, findings);
        std::set<Day> days;
        for (const auto* work : works) {
            check_pass(*works.front(), *work, findings);
            if (!days.insert(work->pollinated_on).second) {
                findings.push_back(error(
                    {"pollination", tag, "tag", tag}, say("The tag has a pollination of this day already."),
                    say("Record a second pass on its own day, or give another branch another tag.")));
            }
        }
    }
}

void check_moves(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& move : book.orchard().pollen_moves) {
        const Whereabouts place{"pollen_move", fid_name(move.fid), "moved_on", to_iso(move.moved_on)};
        check_not_future(place, move.moved_on, as_of, findings);
        if (const auto* lot = book.pollen_lot(move.lot)) {
            check_order(place, lot->collected_on,
                        say("The date lies before the lot was collected, {}.", to_iso(lot->collected_on)),
                        move.moved_on, findings);
        }
    }
}

void check_branch_work(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& work : book.orchard().branch_works) {
        const auto row = fid_name(work.fid);
        check_not_future({"branch_work", row, "done_on", to_iso(work.done_on)}, work.done_on, as_of,
                         findings);
        if (!work.tree && !work.tag) {
            findings.push_back(error({"branch_work", row, "tree"}, say("Nothing tells the branch."),
                                     say("Give its tag, or the tree and the cross.")));
        }
        const auto* tagged = book.pollination(work.tag.value_or(""));
        if (tagged != nullptr && work.tree && *work.tree != tagged->tree) {
            findings.push_back(error({"branch_work", row, "tree", *work.tree},
                                     say("The tag hangs at {}.", tagged->tree),
                                     say("Correct the tree or the tag.")));
        }
    }
}

void check_fruit_set(const OrchardIndex& book, Day as_of, Findings& findings) {
    for (const auto& count : book.orchard().fruit_set_counts) {
        const auto row = fid_name(count.fid);
        const Whereabouts place{"fruit_set", row, "counted_on", to_iso(count.counted_on)};
        check_not_future(place, count.counted_on, as_of, findings);
        const auto* work = book.pollination(count.tag);
        if (work == nullptr) {
            continue;
        }
        check_order(place, work->pollinated_on,
                    say("The day lies before the flowers were pollinated, {}.", to_iso(work->pollinated_on)),
                    count.counted_on, findings);
        if (count.fruits > work->flowers) {
            findings.push_back(
                warning({"fruit_set", row, "fruits_set", std::to_string(count.fruits)},
                        say("More fruits were counted than the {} flowers pollinated.", work->flowers),
                        say("Correct one of the two numbers.")));
        }
    }
}

}  // namespace

void check_branches(const OrchardIndex& book, Day as_of, Findings& findings) {
    check_passes(book.orchard(), findings);
    check_moves(book, as_of, findings);
    check_branch_work(book, as_of, findings);
    check_fruit_set(book, as_of, findings);
}

}  // namespace pipward::book::detail
