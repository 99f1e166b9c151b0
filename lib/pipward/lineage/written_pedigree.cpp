// SPDX-License-Identifier: MIT
#include "pipward/lineage/detail/written_pedigree.h"

#include <algorithm>
#include <optional>
#include <set>

#include "pipward/lineage/detail/blend_mixtures.h"
#include "pipward/record/name_index.h"

namespace pipward::lineage::detail {
namespace {

using Records = ByName<Accession>;

bool is_diploid(const Accession& accession) {
    return accession.ploidy.value_or(2) == 2;
}

bool has_parents(const Accession& accession) {
    const auto named = [](const std::optional<std::string>& name) { return name && !name->empty(); };
    return named(accession.seed_parent) || named(accession.pollen_parent);
}

bool is_sport(const Accession& accession) {
    return accession.sport_of && !accession.sport_of->empty() && is_diploid(accession);
}

Finding circle_finding(const std::vector<std::string>& way, const std::string& back_at) {
    const auto begin = std::ranges::find(way, back_at);
    std::string text;
    for (auto name = begin; name != way.end(); ++name) {
        text += *name + " -> ";
    }
    return {Level::error,
            "accession",
            back_at,
            "sport_of",
            text + back_at,
            say("An accession is recorded as a sport of itself, each the sport of the next."),
            say("Clear this field of the one that the others came from.")};
}

// Where each sport leads in the end.
class Originals {
  public:
    explicit Originals(const Records& records) : records_(records) {}

    std::string of(const std::string& name) {
        std::vector<std::string> way{name};
        std::set<std::string> seen{name};
        while (!known_.contains(way.back())) {
            const auto* record = records_.find(way.back());
            if (record == nullptr || !is_sport(*record)) {
                known_[way.back()] = way.back();
            } else if (seen.insert(*record->sport_of).second) {
                way.push_back(*record->sport_of);
            } else {
                circles.push_back(circle_finding(way, *record->sport_of));
                known_[way.back()] = way.back();
            }
        }
        const auto original = known_.at(way.back());
        for (const auto& passed : way) {
            known_[passed] = original;
        }
        return original;
    }

    Findings circles;

  private:
    const Records& records_;
    std::map<std::string, std::string> known_;
};

class Writer {
  public:
    Writer(std::span<const Accession> accessions, std::span<const BlendMember> blends)
        : blends_(blend_mixtures(blends)), records_(accessions, &Accession::name), originals_(records_) {
        std::vector<const Accession*> first_records;
        for (const auto& accession : accessions) {
            if (records_.find(accession.name) == &accession) {
                first_records.push_back(&accession);
                if (originals_.of(accession.name) == accession.name) {
                    add(accession.name, is_diploid(accession));
                }
            }
        }
        for (const bool sports : {false, true}) {
            for (const auto* accession : first_records) {
                if ((originals_.of(accession->name) != accession->name) == sports) {
                    write_parents(*accession);
                }
            }
        }
        written.circles = std::move(originals_.circles);
    }

    WrittenPedigree written;

  private:
    int add(const std::string& name, bool diploid) {
        const auto number = static_cast<int>(written.members.size());
        written.members.push_back({name, {}, {}, diploid});
        written.number[name] = number;
        return number;
    }

    int number_of(const std::string& name) {
        const auto found = written.number.find(name);
        if (found != written.number.end()) {
            return found->second;
        }
        const auto original = originals_.of(name);
        const int number = original == name ? add(name, true) : number_of(original);
        return written.number[name] = number;
    }

    void write_parents(const Accession& accession) {
        const auto place = number_of(accession.name);
        const bool told = !written.members[place].seed.empty() || !written.members[place].pollen.empty();
        if (told || !has_parents(accession)) {
            return;
        }
        auto seed = parents_of(accession.seed_parent);
        auto pollen = parents_of(accession.pollen_parent);
        written.members[place].seed = std::move(seed);
        written.members[place].pollen = std::move(pollen);
    }

    std::vector<ParentShare> parents_of(const std::optional<std::string>& name) {
        if (!name || name->empty()) {
            return {};
        }
        const auto blend = blends_.find(*name);
        if (records_.find(*name) != nullptr || blend == blends_.end()) {
            return {{number_of(*name), 1.0}};
        }
        std::map<int, double> shares;  // two sports of one original are one parent
        for (const auto& [member, share] : blend->second) {
            shares[number_of(member)] += share;
        }
        std::vector<ParentShare> parents;
        for (const auto& [member, share] : shares) {
            parents.push_back({member, share});
        }
        return parents;
    }

    BlendMixtures blends_;
    Records records_;
    Originals originals_;
};

}  // namespace

WrittenPedigree written_pedigree(std::span<const Accession> accessions, std::span<const BlendMember> blends) {
    return Writer(accessions, blends).written;
}

}  // namespace pipward::lineage::detail
