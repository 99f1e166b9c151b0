// SPDX-License-Identifier: MIT
#include "pipward/cross/orchard_index.h"

#include <algorithm>
#include <tuple>

namespace pipward::cross {
namespace {

// Parents before other trees, then by label.
bool stands_before(const bloom::TreeBloom& a, const bloom::TreeBloom& b) {
    return std::tuple(a.tree->purpose != TreePurpose::parent, a.tree->label, a.tree->fid) <
           std::tuple(b.tree->purpose != TreePurpose::parent, b.tree->label, b.tree->fid);
}

void index_trees(OrchardIndex& index, const bloom::BloomForecast& forecast) {
    for (const auto& bloom : forecast.trees) {
        index.trees[forecast.windows[bloom.window].accession].push_back(bloom);
    }
    for (auto& [accession, trees] : index.trees) {
        std::ranges::sort(trees, stands_before);
    }
}

void index_names(OrchardIndex& index, const Orchard& orchard) {
    for (const auto& accession : orchard.accessions) {
        index.accessions.emplace(accession.name, &accession);
    }
    for (const auto& member : orchard.blend_members) {
        index.blends[member.name].push_back(&member);
    }
    for (auto& [name, members] : index.blends) {
        std::ranges::sort(members, {}, [](const BlendMember* m) { return std::tie(m->member, m->fid); });
    }
}

bool in_hand(const PollenLot& lot, Day as_of) {
    return lot.gathered_on <= as_of && (!lot.used_up_on || *lot.used_up_on > as_of);
}

void index_lots(OrchardIndex& index, const Orchard& orchard) {
    for (const auto& lot : orchard.pollen_lots) {
        if (in_hand(lot, index.as_of)) {
            index.lots[lot.donor].push_back(&lot);
        }
    }
    for (auto& [donor, lots] : index.lots) {
        std::ranges::sort(lots, {}, [](const PollenLot* l) { return std::tie(l->gathered_on, l->code); });
    }
    for (const auto& test : orchard.pollen_tests) {
        index.tests[test.lot].push_back(test);
    }
}

void index_pollinations(OrchardIndex& index, const Orchard& orchard) {
    for (const auto& work : orchard.pollinations) {
        if (work.worked_on > index.as_of) {
            continue;
        }
        if (work.pass.value_or(1) <= 1) {
            index.worked_for_cross[work.cross] += work.flowers;
        }
        if (work.lot) {
            index.worked_from_lot[*work.lot] += work.flowers;
        }
    }
}

void weigh_pollen(OrchardIndex& index, const Orchard& orchard) {
    std::map<std::string, std::pair<double, double>> weighed;  // mass and flowers, by donor
    double mass = 0;
    double flowers = 0;
    for (const auto& lot : orchard.pollen_lots) {
        if (lot.mass && lot.flowers && lot.mass->value > 0 && *lot.flowers > 0) {
            weighed[lot.donor].first += lot.mass->value;
            weighed[lot.donor].second += *lot.flowers;
            mass += lot.mass->value;
            flowers += *lot.flowers;
        }
    }
    for (const auto& [donor, sums] : weighed) {
        index.pollen_per_flower_mg[donor] = sums.first / sums.second;
    }
    if (flowers > 0) {
        index.usual_pollen_per_flower_mg = mass / flowers;
    }
}

}  // namespace

OrchardIndex index_orchard(const Orchard& orchard, const bloom::BloomForecast& forecast) {
    OrchardIndex index;
    index.as_of = forecast.as_of;
    index_names(index, orchard);
    index_trees(index, forecast);
    index_lots(index, orchard);
    index_pollinations(index, orchard);
    weigh_pollen(index, orchard);
    return index;
}

Milligrams pollen_per_flower(const OrchardIndex& index, const std::string& donor, Milligrams otherwise) {
    const auto own = index.pollen_per_flower_mg.find(donor);
    if (own != index.pollen_per_flower_mg.end()) {
        return {own->second};
    }
    return {index.usual_pollen_per_flower_mg.value_or(otherwise.value)};
}

const Accession* accession_named(const OrchardIndex& index, const std::string& name) {
    const auto found = index.accessions.find(name);
    return found == index.accessions.end() ? nullptr : found->second;
}

}  // namespace pipward::cross
