// SPDX-License-Identifier: MIT
#pragma once

#include <fmt/format.h>

#include <string>

#include "pipward/record/orchard.h"

/// A small made-up orchard in which the same tree can be looked for in many ways.
namespace pipward::testing {

inline Tree made_tree(const std::string& label, const std::string& accession, const std::string& block,
                      const std::string& row, int position) {
    Tree tree;
    tree.label = label;
    tree.accession = accession;
    tree.block = block;
    tree.row = row;
    tree.position = position;
    tree.at = MapPoint{10.0 * position, 4.0 * static_cast<double>(row.back() - '0'), {}};
    return tree;
}

inline Accession made_accession(const std::string& name, AccessionKind kind,
                                std::optional<std::string> seed = {},
                                std::optional<std::string> pollen = {}) {
    Accession accession;
    accession.name = name;
    accession.kind = kind;
    accession.seed_parent = std::move(seed);
    accession.pollen_parent = std::move(pollen);
    return accession;
}

inline CrossGoal made_goal(const std::string& code, const std::string& seed, const std::string& pollen) {
    CrossGoal goal;
    goal.code = code;
    goal.seed_parent = seed;
    goal.pollen_parent = pollen;
    return goal;
}

inline Pollination made_work(const std::string& tag, const std::string& cross, const std::string& tree) {
    Pollination work;
    work.tag = tag;
    work.cross = cross;
    work.tree = tree;
    return work;
}

inline Orchard made_orchard() {
    using enum AccessionKind;
    Orchard orchard;
    orchard.accessions = {made_accession("Tansy Lane", cultivar), made_accession("Wrenlea", cultivar),
                          made_accession("Été d'Orme", cultivar),
                          made_accession("LF 08-041", selection, "Tansy Lane", "Old Mix"),
                          made_accession("18-02", seedling, "Wrenlea", "Tansy Lane")};
    orchard.trees = {made_tree("UP-01-01", "Tansy Lane", "Upper", "1", 1),
                     made_tree("UP-01-02", "Tansy Lane", "Upper", "1", 2),
                     made_tree("UP-01-03", "Wrenlea", "Upper", "1", 3),
                     made_tree("LO-01-03", "Été d'Orme", "Lower", "Row 1", 3),
                     made_tree("LO-01-04", "LF 08-041", "Lower", "Row 1", 4)};
    for (int i = 1; i <= 20; ++i) {
        const auto name = fmt::format("16-01-{:02}", i);
        orchard.accessions.push_back(made_accession(name, seedling, "Tansy Lane", "Wrenlea"));
        orchard.trees.push_back(made_tree(fmt::format("UP-04-{:02}", i + 5), name, "Upper", "4", i + 5));
        orchard.trees.push_back(made_tree(fmt::format("K-{}", i), "18-02", "Knoll", "2", i));
    }
    orchard.trees[0].removed_on = make_day({2021, 11, 18});
    orchard.trees[0].remark = "Roots eaten by voles.";
    orchard.trees[3].remark = "Grafted for the river garden; canker in 2019.";
    orchard.goals = {made_goal("16-01", "Tansy Lane", "Wrenlea"), made_goal("18-02", "Wrenlea", "Tansy Lane"),
                     made_goal("26-01", "Wrenlea", "LF 08-041"), made_goal("27-01", "Été d'Orme", "Wrenlea")};
    orchard.pollinations = {made_work("16-01-a", "16-01", "UP-01-02"),
                            made_work("26-01-a", "26-01", "UP-01-03")};
    return orchard;
}

}  // namespace pipward::testing
