// SPDX-License-Identifier: MIT
#include "pipward/season/suggestion_parents.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "pipward/lineage/trait_values.h"
#include "pipward/record/descent.h"
#include "pipward/seed/stratification_need.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"
#include "pipward/value/nearest.h"

namespace pipward::season {
namespace {

/// Less than this the scores tell nothing of an accession.
constexpr double least_reliability = 0.005;

std::vector<std::string> usual_parents(const OrchardIndex& book, Day as_of) {
    std::vector<std::string> names;
    for (const auto& accession : book.orchard().accessions) {
        const bool is_parent =
            accession.kind == AccessionKind::cultivar || accession.kind == AccessionKind::selection;
        if (is_parent && (book.orchard().trees.empty() || book.has_tree(accession.name, as_of))) {
            names.push_back(accession.name);
        }
    }
    return names;
}

Finding unknown_name(const std::string& key, const std::string& name, const Orchard& orchard) {
    std::vector<std::string> known;
    for (const auto& accession : orchard.accessions) {
        known.push_back(accession.name);
    }
    const auto near = nearest_few(name, known);
    return about_parameter(key, name, say("The book has no such accession."),
                           near.empty()
                               ? say("Name accessions as in the book.")
                               : say("The nearest are: {}.", fmt::format("{}", fmt::join(near, ", "))));
}

std::vector<cross::ParentCandidate> candidates_of(const ParentWish& wish, const OrchardIndex& book,
                                                  Findings& findings) {
    const auto names = wish.names.empty() ? usual_parents(book, wish.as_of) : listed_names(wish.names);
    std::vector<cross::ParentCandidate> candidates;
    std::set<std::string> taken;
    for (const auto& name : names) {
        const auto* accession = book.accession(name);
        if (accession == nullptr) {
            findings.push_back(unknown_name("parents", name, book.orchard()));
        } else if (taken.insert(name).second) {
            cross::ParentCandidate candidate;
            candidate.name = name;
            candidate.ploidy = accession->ploidy;
            candidate.alleles =
                accession->s_alleles ? lineage::parse_s_alleles(*accession->s_alleles) : std::nullopt;
            candidate.genus = genus_of(book, name);
            candidates.push_back(std::move(candidate));
        }
    }
    return candidates;
}

/// A merit that grows trait by trait.
struct Merit {
    double value = 0;
    double doubt_squared = 0;
    bool known = true;
};

class Merits {
  public:
    Merits(const ParentWish& wish, const Orchard& orchard)
        : wish_(wish),
          orchard_(orchard),
          order_(lineage::pedigree_order(orchard.accessions, orchard.blend_members)),
          factors_(lineage::kinship_factors(order_.members)),
          merits_(order_.members.size()) {}

    void add(const lineage::TraitWeight& weight, Findings& findings) {
        const lineage::TraitQuestion question{weight.trait, wish_.as_of, "weights"};
        const auto scores = lineage::scores_of(orchard_, order_, question);
        findings.insert(findings.end(), scores.left_out.begin(), scores.left_out.end());
        const auto values =
            lineage::values_of(scores, factors_, lineage::usual_variance(wish_.heritability), question);
        const double spread = std::sqrt(lineage::score_variance(scores));
        for (std::size_t i = 0; i < merits_.size(); ++i) {
            const auto& value = values.values[i];
            merits_[i].value += spread > 0 ? weight.weight * value.value / spread : 0;
            merits_[i].doubt_squared +=
                weight.weight * weight.weight * wish_.heritability * (1 - value.reliability);
            merits_[i].known =
                merits_[i].known && order_.members[i].calculated && value.reliability >= least_reliability;
        }
        additive_variance_ += weight.weight * weight.weight * wish_.heritability;
    }

    void tell(cross::ParentCandidate& candidate) const {
        const auto found = order_.number.find(candidate.name);
        if (found == order_.number.end()) {
            return;
        }
        const auto& merit = merits_[static_cast<std::size_t>(found->second)];
        candidate.inbreeding = factors_.inbreeding[static_cast<std::size_t>(found->second)];
        candidate.doubt = std::sqrt(merit.doubt_squared);
        candidate.merit = merit.known ? std::optional{merit.value} : std::nullopt;
    }

    double additive_variance() const { return additive_variance_; }

  private:
    const ParentWish& wish_;
    const Orchard& orchard_;
    lineage::PedigreeOrder order_;
    lineage::KinshipFactors factors_;
    std::vector<Merit> merits_;
    double additive_variance_ = 0;
};

void set_bar(SuggestionParents& parents, const ParentWish& wish, const Merits& merits,
             const OrchardIndex& book, Findings& findings) {
    if (!wish.better_than.empty()) {
        cross::ParentCandidate bar;
        bar.name = wish.better_than;
        merits.tell(bar);
        if (book.accession(bar.name) == nullptr) {
            findings.push_back(unknown_name("better-than", bar.name, book.orchard()));
        } else if (!bar.merit) {
            findings.push_back(about_parameter("better-than", bar.name,
                                               say("The scores have no information on this accession."),
                                               say("Name one that was scored, or whose relatives were.")));
        }
        parents.bar = bar.merit;
        parents.bar_name = bar.name;
        return;
    }
    for (const auto& candidate : parents.candidates) {
        if (candidate.merit && (!parents.bar || *candidate.merit > *parents.bar)) {
            parents.bar = candidate.merit;
            parents.bar_name = candidate.name;
        }
    }
}

}  // namespace

SuggestionParents suggestion_parents(const ParentWish& wish, const Orchard& orchard, Findings& findings) {
    const OrchardIndex book(orchard);
    SuggestionParents parents;
    parents.candidates = candidates_of(wish, book, findings);
    if (parents.candidates.size() < 2 && !has_errors(findings)) {
        findings.push_back(about_parameter("accessions", wish.names, say("A cross needs two parents."),
                                           say("Name at least two accessions.")));
    }
    if (wish.weights.empty()) {
        return parents;
    }
    Merits merits(wish, orchard);
    for (const auto& weight : wish.weights) {
        merits.add(weight, findings);
    }
    for (auto& candidate : parents.candidates) {
        merits.tell(candidate);
    }
    parents.additive_variance = merits.additive_variance();
    set_bar(parents, wish, merits, book, findings);
    return parents;
}

}  // namespace pipward::season
