// SPDX-License-Identifier: MIT
#include "pipward/seed/harvest.h"

#include <algorithm>

#include "pipward/record/orchard_index.h"
#include "pipward/seed/waiting_tags.h"

namespace pipward::seed {
namespace {

TagToHarvest tag_of(const Pollination& work, const OrchardIndex& book, const FullBloomOf& bloom_of) {
    TagToHarvest tag;
    tag.work = &work;
    tag.goal = book.goal(work.cross);
    const FullBloomSpan by_work{work.pollinated_on - days_around_full_bloom,
                                work.pollinated_on + days_around_full_bloom};
    const auto told = bloom_of(work.tree);
    tag.bloom_by_work = !told || told->late - told->early > by_work.late - by_work.early;
    tag.bloom = tag.bloom_by_work ? by_work : *told;
    const auto* mother = tag.goal == nullptr ? nullptr : book.accession(tag.goal->seed_parent);
    tag.days = harvest_days(mother == nullptr ? Accession{} : *mother, tag.bloom.early, tag.bloom.late);
    return tag;
}

}  // namespace

std::vector<TagToHarvest> tags_to_harvest(const Orchard& orchard, Day as_of, const FullBloomOf& bloom_of) {
    const OrchardIndex book(orchard);
    std::vector<TagToHarvest> tags;
    for (const auto& [tag, work] : waiting_tags(orchard, as_of, longest_hanging_days)) {
        tags.push_back(tag_of(*work, book, bloom_of));
    }
    std::ranges::stable_sort(tags, {}, [](const TagToHarvest& tag) { return tag.days.from; });
    return tags;
}

Sentence harvest_caution(const TagToHarvest& tag) {
    if (tag.is_early()) {
        return say(
            "Early cultivar: its fruit is ripe before its seed. Store it for two to four weeks before "
            "opening; open rotten fruit at once.");
    }
    if (tag.hangs_late()) {
        return say(
            "Late cultivar: protect the fruit from frost, birds and wind, and harvest before a hard frost. "
            "Open fruit with a rotten core at once and keep its seed separate.");
    }
    return {};
}

}  // namespace pipward::seed
