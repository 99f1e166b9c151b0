// SPDX-License-Identifier: MIT
#include "pipward/seed/waiting_tags.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <utility>

#include "pipward/record/presence.h"

namespace pipward::seed {
namespace {

using Branch = std::pair<std::string_view, std::string_view>;  // cross and tree

// Rounds on the same flowers are so close. Common practice, no source.
constexpr int days_between_passes = 30;

std::set<std::string_view> done_tags(const Orchard& orchard, Day as_of) {
    std::set<std::string_view> done;
    for (const auto& fruit : orchard.fruits) {
        if (fruit.harvested_on <= as_of) {
            done.insert(fruit.tag);
        }
    }
    for (const auto& count : orchard.fruit_set_counts) {
        if (count.counted_on <= as_of && count.fruits == 0) {
            done.insert(count.tag);
        }
    }
    return done;
}

std::multimap<Branch, Day> first_passes(const Orchard& orchard, const std::vector<int>& passes) {
    std::multimap<Branch, Day> first;
    for (std::size_t i = 0; i < passes.size(); ++i) {
        const auto& work = orchard.pollinations[i];
        if (passes[i] == 1) {
            first.emplace(Branch{work.cross, work.tree}, work.pollinated_on);
        }
    }
    return first;
}

// Its tag names no other pass than later ones, and the branch has a tag of its first.
bool repeats_another_tag(const Pollination& work, const std::multimap<Branch, Day>& first) {
    const auto [begin, end] = first.equal_range(Branch{work.cross, work.tree});
    return std::any_of(begin, end, [&](const auto& other) {
        const int days = work.pollinated_on - other.second;
        return days >= 0 && days <= days_between_passes;
    });
}

std::set<std::string_view> tags_of_first_passes(const Orchard& orchard, const std::vector<int>& passes) {
    std::set<std::string_view> tags;
    for (std::size_t i = 0; i < passes.size(); ++i) {
        if (passes[i] == 1) {
            tags.insert(orchard.pollinations[i].tag);
        }
    }
    return tags;
}

}  // namespace

std::map<std::string, const Pollination*> waiting_tags(const Orchard& orchard, Day as_of, int longest_days) {
    const auto done = done_tags(orchard, as_of);
    const auto passes = passes_of(orchard.pollinations);
    const auto first = first_passes(orchard, passes);
    const auto own = tags_of_first_passes(orchard, passes);
    std::map<std::string, const Pollination*> tags;
    for (const auto& work : orchard.pollinations) {
        const bool hangs = work.pollinated_on <= as_of && as_of - work.pollinated_on < longest_days;
        if (!hangs || done.contains(work.tag) ||
            (!own.contains(work.tag) && repeats_another_tag(work, first))) {
            continue;
        }
        auto& last = tags[work.tag];
        last = last == nullptr || last->pollinated_on < work.pollinated_on ? &work : last;
    }
    return tags;
}

}  // namespace pipward::seed
