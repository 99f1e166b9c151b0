// SPDX-License-Identifier: MIT
#include "pipward/intake/record_prefill.h"

#include <algorithm>
#include <set>

#include "pipward/place/address.h"
#include "pipward/place/address_order.h"
#include "pipward/record/orchard_index.h"
#include "pipward/record/presence.h"
#include "pipward/record/words.h"
#include "pipward/seed/lot_course.h"
#include "pipward/seed/waiting_tags.h"
#include "pipward/value/season.h"

namespace pipward::intake {
namespace {

// Fruit and seed of work longer ago than this are not waited for any more. Common practice, no source.
constexpr int days_until_seed = 400;

Hemisphere half_of(const Orchard& orchard) {
    const auto placed = std::ranges::find_if(
        orchard.stations, [](const Station& station) { return station.latitude.has_value(); });
    return placed == orchard.stations.end() ? Hemisphere::north : hemisphere_of(*placed->latitude);
}

template <class Wanted>
std::vector<KnownCells> trees_in_order(const Orchard& orchard, Day as_of, const Wanted& wanted) {
    std::vector<std::uint32_t> trees;
    for (std::uint32_t i = 0; i < orchard.trees.size(); ++i) {
        if (stands_on(orchard.trees[i], as_of) && wanted(orchard.trees[i])) {
            trees.push_back(i);
        }
    }
    std::vector<KnownCells> lines;
    for (const auto i : place::in_order(orchard, std::move(trees), place::LabelOrder::to_and_fro)) {
        const auto& tree = orchard.trees[i];
        lines.push_back({{"tree", tree.label},
                         {std::string(where_column), place::address_of(tree, orchard.rows).text()}});
    }
    return lines;
}

std::vector<KnownCells> bloom_lines(const Orchard& orchard, Day as_of) {
    return trees_in_order(orchard, as_of,
                          [](const Tree& tree) { return tree.purpose != TreePurpose::seedling; });
}

std::vector<KnownCells> score_lines(const Orchard& orchard, Day as_of, const std::string& trait) {
    auto lines = trees_in_order(orchard, as_of,
                                [](const Tree& tree) { return tree.purpose == TreePurpose::seedling; });
    for (auto& line : lines) {
        line["trait"] = trait;
    }
    return lines;
}

/// "26-04-c" where a and b hang already.
std::string next_tag(const std::string& cross, const std::set<std::string>& tags) {
    for (char letter = 'a'; letter <= 'z'; ++letter) {
        const auto tag = cross + "-" + letter;
        if (!tags.contains(tag)) {
            return tag;
        }
    }
    return {};
}

std::vector<KnownCells> pollination_lines(const Orchard& orchard, Day as_of) {
    const auto season = season_of(as_of, half_of(orchard));
    std::set<std::string> tags;
    for (const auto& work : orchard.pollinations) {
        tags.insert(work.tag);
    }
    std::vector<KnownCells> lines;
    for (const auto& goal : orchard.goals) {
        if (goal.season != season) {
            continue;
        }
        for (auto line : trees_in_order(orchard, as_of, [&](const Tree& tree) {
                 return tree.purpose != TreePurpose::seedling && tree.accession == goal.seed_parent;
             })) {
            line["cross"] = goal.code;
            line["tag"] = next_tag(goal.code, tags);
            tags.insert(line["tag"]);
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

std::vector<KnownCells> pollen_test_lines(const Orchard& orchard, Day as_of) {
    std::vector<KnownCells> lines;
    for (const auto& lot : orchard.pollen_lots) {
        if (in_hand(lot, as_of)) {
            lines.push_back({{"lot", lot.code}});
        }
    }
    return lines;
}

bool is_waited_for(const Pollination& work, Day as_of) {
    return work.pollinated_on <= as_of && as_of - work.pollinated_on <= days_until_seed;
}

std::vector<KnownCells> tag_lines(const Orchard& orchard, Day as_of) {
    std::vector<KnownCells> lines;
    for (const auto& [tag, work] : seed::waiting_tags(orchard, as_of, days_until_seed)) {
        lines.push_back({{"tag", tag}, {std::string(where_column), work->tree}});
    }
    return lines;
}

std::vector<KnownCells> pollen_lot_lines(const Orchard& orchard, Day as_of) {
    const OrchardIndex book(orchard);
    const auto season = season_of(as_of, half_of(orchard));
    std::set<std::string> donors;
    for (const auto& goal : orchard.goals) {
        if (goal.season == season) {
            for (const auto& share : book.donors(goal.pollen_parent)) {
                donors.insert(share.donor);
            }
        }
    }
    std::vector<KnownCells> lines;
    for (const auto& donor : donors) {
        lines.push_back({{"donor", donor}});
    }
    return lines;
}

std::vector<KnownCells> pollen_move_lines(const Orchard& orchard, Day as_of) {
    std::vector<KnownCells> lines;
    for (const auto& lot : orchard.pollen_lots) {
        if (in_hand(lot, as_of)) {
            lines.push_back({{"lot", lot.code},
                             {std::string(where_column),
                              std::string(to_word(store_on(lot, orchard.pollen_moves, as_of)))}});
        }
    }
    return lines;
}

bool was_pollinated(const Orchard& orchard, const std::string& cross, const std::string& tree) {
    return std::ranges::any_of(orchard.pollinations, [&](const Pollination& work) {
        return work.cross == cross && work.tree == tree;
    });
}

bool was_done(const Orchard& orchard, BranchTask task, const std::string& cross, const std::string& tree) {
    return std::ranges::any_of(orchard.branch_works, [&](const BranchWork& work) {
        return work.task == task && work.cross == cross && work.tree == tree;
    });
}

// Bags to hang at the seed parents of the season, and bags to take off where flowers were pollinated.
std::vector<KnownCells> branch_work_lines(const Orchard& orchard, Day as_of) {
    std::vector<KnownCells> lines;
    for (const auto task : {BranchTask::bag, BranchTask::unbag}) {
        std::set<std::string> seen;
        for (auto line : pollination_lines(orchard, as_of)) {
            const bool is_new = seen.insert(line["cross"] + '\n' + line["tree"]).second;
            const bool waits =
                task == BranchTask::bag || was_pollinated(orchard, line["cross"], line["tree"]);
            if (is_new && waits && !was_done(orchard, task, line["cross"], line["tree"])) {
                line.erase("tag");
                line["task"] = to_word(task);
                lines.push_back(std::move(line));
            }
        }
    }
    return lines;
}

std::vector<KnownCells> stratification_lines(const Orchard& orchard, Day as_of) {
    std::vector<KnownCells> lines;
    for (const auto& course : seed::lot_courses(orchard, as_of)) {
        if (!course.lot->stratified_from && !course.germinated && course.out < course.lot->seeds) {
            lines.push_back({{"code", course.lot->code}});
        }
    }
    return lines;
}

// Traits that were scored and that the book does not describe.
std::vector<KnownCells> trait_lines(const Orchard& orchard) {
    std::set<std::string> traits;
    for (const auto& score : orchard.trait_scores) {
        traits.insert(score.trait);
    }
    for (const auto& trait : orchard.traits) {
        traits.erase(trait.name);
    }
    std::vector<KnownCells> lines;
    for (const auto& trait : traits) {
        lines.push_back({{"name", trait}});
    }
    return lines;
}

std::vector<KnownCells> seed_lot_lines(const Orchard& orchard, Day as_of) {
    std::set<std::string> done;
    for (const auto& lot : orchard.seed_lots) {
        done.insert(lot.cross);
    }
    std::set<std::string> harvested;
    for (const auto& fruit : orchard.fruits) {
        harvested.insert(fruit.tag);
    }
    std::map<std::string, std::string> tags;  // by cross
    for (const auto& work : orchard.pollinations) {
        if (is_waited_for(work, as_of) && harvested.contains(work.tag) && !done.contains(work.cross)) {
            auto& all = tags[work.cross];
            all += (all.empty() ? "" : " ") + work.tag;
        }
    }
    std::vector<KnownCells> lines;
    for (const auto& [cross, of_cross] : tags) {
        lines.push_back({{"cross", cross}, {"from_tags", of_cross}});
    }
    return lines;
}

std::vector<KnownCells> lots_with_seed_left(const Orchard& orchard, Day as_of, bool in_stratification) {
    std::vector<KnownCells> lines;
    for (const auto& course : seed::lot_courses(orchard, as_of)) {
        const bool waits =
            !in_stratification || (course.from && course.germinated.value_or(0) < course.lot->seeds);
        if (waits && course.out < course.lot->seeds) {
            lines.push_back({{"lot", course.lot->code}});
        }
    }
    return lines;
}

}  // namespace

std::vector<KnownCells> likely_lines(RecordKind kind, const Orchard& orchard, Day as_of,
                                     const std::string& trait) {
    switch (kind) {
        case RecordKind::bloom:
            return bloom_lines(orchard, as_of);
        case RecordKind::pollination:
            return pollination_lines(orchard, as_of);
        case RecordKind::pollen_test:
            return pollen_test_lines(orchard, as_of);
        case RecordKind::harvest:
        case RecordKind::fruit_set:
            return tag_lines(orchard, as_of);
        case RecordKind::pollen_lot:
            return pollen_lot_lines(orchard, as_of);
        case RecordKind::pollen_move:
            return pollen_move_lines(orchard, as_of);
        case RecordKind::branch_work:
            return branch_work_lines(orchard, as_of);
        case RecordKind::stratification:
            return stratification_lines(orchard, as_of);
        case RecordKind::trait:
            return trait_lines(orchard);
        case RecordKind::seed_lot:
            return seed_lot_lines(orchard, as_of);
        case RecordKind::germination:
            return lots_with_seed_left(orchard, as_of, true);
        case RecordKind::seed_withdrawal:
            return lots_with_seed_left(orchard, as_of, false);
        case RecordKind::score:
            return score_lines(orchard, as_of, trait);
        case RecordKind::goal:
        case RecordKind::accession:
        case RecordKind::blend:
        case RecordKind::tree:
        case RecordKind::station:
            return {};
    }
    return {};
}

}  // namespace pipward::intake
