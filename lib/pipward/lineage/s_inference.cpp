// SPDX-License-Identifier: MIT
#include "pipward/lineage/s_inference.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>

namespace pipward::lineage {
namespace {

using Pool = std::map<std::string, double>;  // weight by allele

const std::string nobody_knows{unknown_allele};

struct WeightedPool {
    Pool pool;
    double chance = 1;
};

std::vector<SGenotype> genotypes_or_unknown(const SKnowledge& knowledge, const PedigreeMember& member) {
    return knowledge.genotypes.empty() || !member.diploid ? std::vector{SGenotype{{nobody_knows}, 1}}
                                                          : knowledge.genotypes;
}

void add_gametes(Pool& pool, const SAlleles& alleles, double weight) {
    for (const auto& allele : alleles) {
        pool[allele] += weight / static_cast<double>(alleles.size());
    }
}

class Inference {
  public:
    Inference(const PedigreeOrder& order, std::span<const std::optional<SAlleles>> recorded) : order_(order) {
        for (std::size_t i = 0; i < order.members.size(); ++i) {
            known_.push_back(recorded[i] ? SKnowledge{SSource::recorded, {{*recorded[i], 1}}}
                                         : of_parents(order.members[i]));
        }
    }

    std::vector<SKnowledge> known() && { return std::move(known_); }

  private:
    std::vector<SGenotype> of_parent(int parent) const {
        return genotypes_or_unknown(known_[parent], order_.members[parent]);
    }

    // One tree has one of its possible genotypes; the members of a blend are one pool.
    std::vector<WeightedPool> pools_of(const std::vector<ParentShare>& parents) const {
        std::vector<WeightedPool> pools;
        if (parents.size() == 1 && parents.front().share == 1) {
            for (const auto& genotype : of_parent(parents.front().parent)) {
                pools.push_back({{}, genotype.chance});
                add_gametes(pools.back().pool, genotype.alleles, 1);
            }
            return pools;
        }
        Pool pool;
        double told = 0;
        for (const auto& parent : parents) {
            for (const auto& genotype : of_parent(parent.parent)) {
                add_gametes(pool, genotype.alleles, parent.share * genotype.chance);
            }
            told += parent.share;
        }
        if (told < 1 - 1e-9) {
            pool[nobody_knows] += 1 - told;
        }
        return {{pool, 1}};
    }

    SKnowledge of_parents(const PedigreeMember& member) const {
        if (!member.diploid || (member.seed.empty() && member.pollen.empty())) {
            return {};
        }
        std::map<SAlleles, double> chances;
        for (const auto& seed : pools_of(member.seed)) {
            for (const auto& pollen : pools_of(member.pollen)) {
                add_children(chances, seed, pollen);
            }
        }
        return as_knowledge(chances);
    }

    static void add_children(std::map<SAlleles, double>& chances, const WeightedPool& seed,
                             const WeightedPool& pollen) {
        double passing = 0;
        for (const auto& [allele, weight] : pollen.pool) {
            passing += passes(seed, allele) ? weight : 0;
        }
        for (const auto& [of_seed, seed_weight] : seed.pool) {
            for (const auto& [of_pollen, weight] : pollen.pool) {
                if (passing > 0 && passes(seed, of_pollen)) {
                    chances[{of_seed, of_pollen}] +=
                        seed.chance * pollen.chance * seed_weight * weight / passing;
                }
            }
        }
    }

    static bool passes(const WeightedPool& style, const std::string& allele) {
        return allele == unknown_allele || !style.pool.contains(allele);
    }

    static SKnowledge as_knowledge(const std::map<SAlleles, double>& chances) {
        double sum = 0;
        for (const auto& [alleles, chance] : chances) {
            sum += chance;
        }
        const bool tells = std::ranges::any_of(
            chances, [](const auto& entry) { return entry.first != SAlleles{nobody_knows}; });
        if (!tells || sum <= 0) {
            return {};
        }
        SKnowledge knowledge{SSource::parents, {}};
        for (const auto& [alleles, chance] : chances) {
            knowledge.genotypes.push_back({alleles, chance / sum});
        }
        std::ranges::stable_sort(knowledge.genotypes, std::greater<>(), &SGenotype::chance);
        return knowledge;
    }

    const PedigreeOrder& order_;
    std::vector<SKnowledge> known_;
};

bool is_whole(const SAlleles& alleles) {
    return alleles.size() > 1 && !alleles.contains(nobody_knows);
}

}  // namespace

std::span<const Word<SSource>> words(SSource) {
    static constexpr std::array<Word<SSource>, 3> all{{{SSource::recorded, "recorded", "recorded"},
                                                       {SSource::parents, "parents", "from its parents"},
                                                       {SSource::nothing, "nothing", "not known"}}};
    return all;
}

std::vector<std::optional<SAlleles>> recorded_s_alleles(std::span<const Accession> accessions,
                                                        const PedigreeOrder& order) {
    std::vector<std::optional<SAlleles>> recorded(order.members.size());
    for (const bool sports : {false, true}) {
        for (const auto& accession : accessions) {
            const int member = order.number.at(accession.name);
            const bool sport = order.members[member].name != accession.name;
            if (sport == sports && !recorded[member] && accession.s_alleles) {
                const auto alleles = parse_s_alleles(*accession.s_alleles);
                recorded[member] = alleles && is_whole(*alleles) ? alleles : std::nullopt;
            }
        }
    }
    return recorded;
}

std::vector<SKnowledge> s_knowledge(const PedigreeOrder& order,
                                    std::span<const std::optional<SAlleles>> recorded) {
    return Inference(order, recorded).known();
}

SMatchChances s_match_chances(const SKnowledge& seed_parent, const SKnowledge& donor) {
    SMatchChances chances;
    if (seed_parent.genotypes.empty() || donor.genotypes.empty()) {
        chances.unknown = 1;
        return chances;
    }
    for (const auto& style : seed_parent.genotypes) {
        for (const auto& pollen : donor.genotypes) {
            const double chance = style.chance * pollen.chance;
            const auto met = is_whole(style.alleles) && is_whole(pollen.alleles)
                                 ? s_compatibility(style.alleles, pollen.alleles)
                                 : SCompatibility{};
            auto& sum = met.match == SMatch::full   ? chances.full
                        : met.match == SMatch::half ? chances.half
                        : met.match == SMatch::none ? chances.none
                                                    : chances.unknown;
            sum += chance;
            chances.share += chance * met.pollen_share.value;
        }
    }
    return chances;
}

}  // namespace pipward::lineage
