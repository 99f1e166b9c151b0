// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "pipward/book/detail/check.h"
#include "pipward/book/detail/entry_rules.h"
#include "pipward/record/name_index.h"
#include "pipward/value/plain_text.h"

namespace pipward::book::detail {
namespace {

std::vector<std::string> tags_of(const Orchard& orchard, const std::string& cross) {
    std::vector<std::string> tags;
    for (const auto& work : orchard.pollinations) {
        if (work.cross == cross) {
            tags.push_back(work.tag);
        }
    }
    return tags;
}

void check_tag(const SeedLot& lot, const std::string& tag, const Orchard& orchard, Findings& findings) {
    const Whereabouts place{"seed_lot", lot.code, "from_tags", tag};
    const auto* work = first_named(orchard.pollinations, &Pollination::tag, tag);
    if (work == nullptr) {
        findings.push_back(error(place, say("The book has no pollination tag of this name."),
                                 say("Tags of {}: {}.", lot.cross,
                                     fmt::format("{}", fmt::join(tags_of(orchard, lot.cross), ", ")))));
    } else if (work->cross != lot.cross) {
        findings.push_back(error(place, say("The tag is of cross {}, the lot of {}.", work->cross, lot.cross),
                                 say("Keep the seed of each cross in a lot of its own.")));
    }
}

// Sound seeds of the tags; nothing where those of one were not counted.
std::optional<int> sound_seeds(const std::vector<std::string>& tags, const Orchard& orchard) {
    int seeds = 0;
    for (const auto& fruit : orchard.fruits) {
        if (std::ranges::find(tags, fruit.tag) == tags.end()) {
            continue;
        }
        if (!fruit.seeds_sound) {
            return std::nullopt;
        }
        seeds += *fruit.seeds_sound;
    }
    return seeds;
}

void check_seeds(const SeedLot& lot, const std::vector<std::string>& tags, const Orchard& orchard,
                 Findings& findings) {
    const auto sound = sound_seeds(tags, orchard);
    if (!tags.empty() && sound && lot.seeds > *sound) {
        findings.push_back(warning({"seed_lot", lot.code, "seeds", std::to_string(lot.seeds)},
                                   say("Only {} sound seeds were counted in the fruit of its tags.", *sound),
                                   say("Count again, or record the fruit first.")));
    }
}

void check_growing(const GerminationCount& count, const GerminationCount& other, Findings& findings) {
    const bool fewer = count.counted_on > other.counted_on && count.germinated < other.germinated;
    const bool more = count.counted_on < other.counted_on && count.germinated > other.germinated;
    const bool twice = count.counted_on == other.counted_on;
    if (fewer || more || twice) {
        findings.push_back(
            warning({"germination_count", new_row, "germinated", std::to_string(count.germinated)},
                    say("On {} {} had germinated; the count is cumulative.", to_iso(other.counted_on),
                        other.germinated),
                    say("Count all seeds germinated so far, with one count per day.")));
    }
}

}  // namespace

void judge(const SeedLot& lot, const Orchard& orchard, Findings& findings) {
    const auto tags = words_in(lot.from_tags.value_or(""));
    for (const auto& tag : tags) {
        check_tag(lot, tag, orchard, findings);
    }
    check_seeds(lot, tags, orchard, findings);
}

void judge(const GerminationCount& count, const Orchard& orchard, Findings& findings) {
    for (const auto& other : orchard.germination_counts) {
        if (other.lot == count.lot) {
            check_growing(count, other, findings);
        }
    }
    const auto* lot = first_named(orchard.seed_lots, &SeedLot::code, count.lot);
    if (lot != nullptr && lot->stratified_from && count.counted_on < *lot->stratified_from) {
        findings.push_back(warning({"germination_count", new_row, "counted_on", to_iso(count.counted_on)},
                                   say("Stratification began only on {}.", to_iso(*lot->stratified_from)),
                                   say("Correct one of the two days.")));
    }
}

}  // namespace pipward::book::detail
