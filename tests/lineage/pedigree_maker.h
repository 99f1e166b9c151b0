// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "pipward/lineage/pedigree_order.h"
#include "testing.h"

/// Pedigrees for the tests of the room: from files of rows, and made by a seed.
namespace pipward::testing {

inline Accession child_of(const std::string& name, const std::string& seed, const std::string& pollen) {
    const auto known = [](const std::string& parent) {
        return parent == "-" || parent.empty() ? std::nullopt : std::optional{parent};
    };
    Accession accession;
    accession.name = name;
    accession.seed_parent = known(seed);
    accession.pollen_parent = known(pollen);
    return accession;
}

inline Accession sport_of(const std::string& name, const std::string& original) {
    Accession accession;
    accession.name = name;
    accession.sport_of = original;
    return accession;
}

inline std::vector<Accession> pedigree_in(const Rows& rows, bool swapped = false) {
    std::vector<Accession> accessions;
    for (const auto& row : rows) {
        if (row.at(0) == "parents") {
            accessions.push_back(swapped ? child_of(row.at(1), row.at(3), row.at(2))
                                         : child_of(row.at(1), row.at(2), row.at(3)));
        }
    }
    return accessions;
}

inline std::vector<BlendMember> blends_in(const Rows& rows) {
    std::vector<BlendMember> blends;
    for (const auto& row : rows) {
        if (row.at(0) == "blend") {
            blends.push_back({0, row.at(1), row.at(2), Share{std::stod(row.at(3))}});
        }
    }
    return blends;
}

struct MadePedigree {
    std::vector<Accession> accessions;
    std::vector<BlendMember> blends;
};

/// Founders, selfs, backcrosses, single parents, blends and crosses by chance, `members` in all.
inline MadePedigree made_pedigree(unsigned seed, int members) {
    std::mt19937 draw(seed);
    MadePedigree made;
    const auto name = [](std::uint_fast32_t number) { return "m" + std::to_string(number); };
    for (std::uint_fast32_t i = 0; i < static_cast<std::uint_fast32_t>(members); ++i) {
        if (i < 4) {
            made.accessions.push_back(child_of(name(i), "-", "-"));
            continue;
        }
        const auto one = name(draw() % i);
        auto other = name(draw() % i);
        switch (draw() % 6) {
            case 0:
                other = one;
                break;
            case 1:
                other = "-";
                break;
            case 2: {
                const auto blend = "blend" + std::to_string(i);
                const double first = 0.1 * static_cast<double>(1 + draw() % 6);
                made.blends.push_back({0, blend, name(draw() % i), Share{first}});
                made.blends.push_back({0, blend, other, Share{0.9 - first}});
                other = blend;
                break;
            }
            default:
                break;
        }
        made.accessions.push_back(child_of(name(i), one, other));
    }
    return made;
}

/// The relationships by the tabular method, every pair written down.
inline std::vector<std::vector<double>> tabular(const std::vector<lineage::PedigreeMember>& members) {
    const auto count = members.size();
    std::vector<std::vector<double>> a(count, std::vector<double>(count));
    const auto mean = [&](const std::vector<lineage::ParentShare>& parents, std::size_t other) {
        double sum = 0;
        for (const auto& parent : parents) {
            sum += parent.share * a[parent.parent][other];
        }
        return sum;
    };
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            a[i][j] = a[j][i] = (mean(members[i].seed, j) + mean(members[i].pollen, j)) / 2;
        }
        double of_parents = 0;
        for (const auto& parent : members[i].seed) {
            of_parents += parent.share * mean(members[i].pollen, parent.parent) / 2;
        }
        a[i][i] = 1 + of_parents;
    }
    return a;
}

}  // namespace pipward::testing
