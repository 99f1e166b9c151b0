// SPDX-License-Identifier: MIT
#include "pipward/bloom/detail/borrow.h"

#include <cmath>
#include <optional>

#include "pipward/math/squared.h"
#include "pipward/record/name_index.h"

namespace pipward::bloom::detail {
namespace {

// Seedlings about the mid-parent: most within 3 to 4 days, progeny means follow the parents with r = 0.93
// (Czech J. Genet. Plant Breed. 2014, 715 apple seedlings): a standard deviation of 2 days.
constexpr double segregation_sd = 2.0;  // days

std::vector<double> mean_of(const std::vector<double>& a, const std::vector<double>& b) {
    std::vector<double> mean(a.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        mean[i] = (a[i] + b[i]) / 2;
    }
    return mean;
}

// The unknown accession lies somewhere about a mean that is itself not known for sure.
Need from_orchard(const OrchardMean& orchard) {
    Need need;
    need.source = NeedSource::orchard_mean;
    need.amount = orchard.amount;
    need.sd_days = std::hypot(orchard.between_sd_days, orchard.luck_sd_days);
    return need;
}

// Half the parent, half the orchard: of each variance a quarter stays (variance of a mean of two).
Need from_one_parent(const Need& parent, const OrchardMean& orchard) {
    Need need;
    need.source = NeedSource::one_parent;
    need.amount = mean_of(parent.amount, orchard.amount);
    need.sd_days = std::sqrt(math::squared(segregation_sd) + math::squared(parent.sd_days) / 4 +
                             math::squared(orchard.between_sd_days) / 4);
    return need;
}

// What two parents share of the seasons' luck does not average out, so their spreads are averaged whole.
Need from_both(const Need& a, const Need& b) {
    Need need;
    need.source = NeedSource::mid_parent;
    need.amount = mean_of(a.amount, b.amount);
    need.sd_days =
        std::sqrt(math::squared(segregation_sd) + (math::squared(a.sd_days) + math::squared(b.sd_days)) / 2);
    return need;
}

// The need is known, borrowed in vain (nothing), or not yet settled (absent from the map).
using Settled = std::map<std::string, std::optional<Need>>;

struct Parents {
    std::vector<const Need*> known;
    bool open = false;  // one of them is not settled yet
};

void look_up(Parents& parents, const std::optional<std::string>& name, const Settled& settled,
             const ByName<Accession>& book) {
    if (!name) {
        return;
    }
    const auto found = settled.find(*name);
    if (found == settled.end()) {
        parents.open = parents.open || book.find(*name) != nullptr;
    } else if (found->second) {
        parents.known.push_back(&*found->second);
    }
}

std::optional<Need> from_parents(const Parents& parents, const OrchardMean& orchard) {
    if (parents.known.size() == 2) {
        return from_both(*parents.known[0], *parents.known[1]);
    }
    return parents.known.empty() ? std::nullopt : std::optional{from_one_parent(*parents.known[0], orchard)};
}

// One generation: settles every open accession whose parents are settled (or all of them, at the end).
Settled next_generation(const Settled& settled, std::span<const Accession> accessions,
                        const ByName<Accession>& book, const MeanOf& mean_of_kind, bool last) {
    Settled added;
    for (const auto& accession : accessions) {
        if (settled.contains(accession.name)) {
            continue;
        }
        Parents parents;
        look_up(parents, accession.seed_parent, settled, book);
        look_up(parents, accession.pollen_parent, settled, book);
        if (last || !parents.open) {
            added.emplace(accession.name, from_parents(parents, mean_of_kind(accession)));
        }
    }
    return added;
}

}  // namespace

void borrow_needs(std::map<std::string, Need>& needs, std::span<const Accession> accessions,
                  const MeanOf& mean_of_kind) {
    const ByName<Accession> book(accessions, &Accession::name);
    Settled settled;
    for (const auto& [name, need] : needs) {
        settled.emplace(name, need);
    }
    for (bool last = false;;) {
        auto added = next_generation(settled, accessions, book, mean_of_kind, last);
        if (added.empty() && last) {
            break;
        }
        last = added.empty();
        settled.merge(added);
    }
    for (auto& [name, need] : settled) {
        if (!needs.contains(name)) {
            auto borrowed = need ? std::move(*need) : from_orchard(mean_of_kind(*book.find(name)));
            borrowed.accession = name;
            needs.emplace(name, std::move(borrowed));
        }
    }
}

}  // namespace pipward::bloom::detail
