// SPDX-License-Identifier: MIT
#include "pipward/seed/picking.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "pipward/record/orchard_index.h"

namespace pipward::seed {
namespace {

/// The last work on each tag that still hangs.
std::map<std::string, const Pollination*> hanging(const Orchard& orchard, Day as_of) {
    std::set<std::string> picked;
    for (const auto& fruit : orchard.fruits) {
        if (fruit.picked_on <= as_of) {
            picked.insert(fruit.tag);
        }
    }
    std::map<std::string, const Pollination*> tags;
    for (const auto& work : orchard.pollinations) {
        const bool hangs = work.worked_on <= as_of && work.worked_on > as_of - longest_hanging_days;
        if (hangs && !picked.contains(work.tag)) {
            auto& last = tags[work.tag];
            last = last == nullptr || last->worked_on < work.worked_on ? &work : last;
        }
    }
    return tags;
}

TagToPick tag_of(const Pollination& work, const OrchardIndex& book, const FullBloomOf& bloom_of) {
    TagToPick tag;
    tag.work = &work;
    tag.goal = book.goal(work.cross);
    const FullBloomSpan by_work{work.worked_on - days_around_full_bloom,
                                work.worked_on + days_around_full_bloom};
    const auto told = bloom_of(work.tree);
    tag.bloom_by_work = !told || told->late - told->early > by_work.late - by_work.early;
    tag.bloom = tag.bloom_by_work ? by_work : *told;
    const auto* mother = tag.goal == nullptr ? nullptr : book.accession(tag.goal->seed_parent);
    tag.days = pick_days(mother == nullptr ? Accession{} : *mother, tag.bloom.early, tag.bloom.late);
    return tag;
}

}  // namespace

std::vector<TagToPick> tags_to_pick(const Orchard& orchard, Day as_of, const FullBloomOf& bloom_of) {
    const OrchardIndex book(orchard);
    std::vector<TagToPick> tags;
    for (const auto& [tag, work] : hanging(orchard, as_of)) {
        tags.push_back(tag_of(*work, book, bloom_of));
    }
    std::ranges::stable_sort(tags, {}, [](const TagToPick& tag) { return tag.days.from; });
    return tags;
}

Sentence picking_caution(const TagToPick& tag) {
    if (tag.is_early()) {
        return say(
            "Early fruit: it is ripe before its seed is full-grown. Let it stand two to four weeks "
            "before it is opened; open rotten fruit at once.");
    }
    if (tag.hangs_late()) {
        return say(
            "Hangs late: guard it from frost, birds and wind, and pick before a hard frost. Open fruit "
            "with a rotten core at once and keep its seed apart.");
    }
    return {};
}

}  // namespace pipward::seed
