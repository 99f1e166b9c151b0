// SPDX-License-Identifier: MIT
#include <algorithm>
#include <utility>

#include "pipward/cross/detail/stock.h"
#include "pipward/record/orchard_index.h"

namespace pipward::cross::detail {
namespace {

// Work longer ago is of another spring. Common practice, no source.
constexpr int one_spring = 150;

// The tag tells cross and tree where it hangs.
CrossAtTree place_of(const BranchWork& work, const OrchardIndex& book) {
    const auto* tagged = book.pollination(work.tag.value_or(""));
    return tagged != nullptr ? CrossAtTree{tagged->cross, tagged->tree}
                             : CrossAtTree{work.cross.value_or(""), work.tree.value_or("")};
}

void add(DoneAtBranches& done, const BranchWork& work, const OrchardIndex& book) {
    auto place = place_of(work, book);
    switch (work.task) {
        case BranchTask::bag:
            done.bagged.insert(std::move(place));
            return;
        case BranchTask::unbag:
            done.unbagged.insert(std::move(place));
            return;
        case BranchTask::cut_branch:
            if (const auto* tree = book.tree(place.second); tree != nullptr && tree->accession) {
                auto& latest = done.cut.try_emplace(*tree->accession, work.done_on).first->second;
                latest = std::max(latest, work.done_on);
            }
            return;
        case BranchTask::emasculate:
        case BranchTask::indoor_bloom:
            return;
    }
}

}  // namespace

DoneAtBranches done_at_branches(const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    DoneAtBranches done;
    for (const auto& work : orchard.branch_works) {
        if (work.done_on <= as_of && as_of - work.done_on <= one_spring) {
            add(done, work, book);
        }
    }
    for (const auto& work : orchard.pollinations) {
        if (work.pollinated_on <= as_of) {
            done.pollinated.emplace(work.cross, work.tree);
        }
    }
    return done;
}

bool is_in(const std::set<CrossAtTree>& done, const std::string& cross, const std::string& tree) {
    return done.contains({cross, tree}) || done.contains({"", tree});
}

}  // namespace pipward::cross::detail
