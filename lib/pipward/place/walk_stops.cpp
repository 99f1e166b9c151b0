// SPDX-License-Identifier: MIT
#include "pipward/place/walk_stops.h"

#include "pipward/place/address.h"
#include "pipward/place/sheet_walk.h"
#include "pipward/value/complaint.h"

namespace pipward::place {

std::vector<WalkStop> walk_stops(const Walk& walk, const Orchard& orchard) {
    std::vector<WalkStop> rows;
    double walked = 0;
    for (const auto& leg : walk.legs) {
        WalkStop row{static_cast<int>(rows.size()) + 1, nullptr, &leg};
        row.walked = walked += leg.metres;
        row.from = rows.empty() ? say("start") : verbatim(rows.back().tree->label);
        if (leg.tree) {
            row.tree = &orchard.trees[*leg.tree];
            row.address = address_of(*row.tree, orchard.rows);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

Findings barred_legs(const Walk& walk, const Orchard& orchard) {
    Findings findings;
    for (const auto& leg : walk.legs) {
        if (leg.through_rows) {
            findings.push_back(
                {Level::warning, "tree", leg.tree ? orchard.trees[*leg.tree].label : "", "", "",
                 say("No way round the rows leads there from the stop before it: the line goes straight."),
                 say("Check on the map whether trees of different rows overlap.")});
        }
    }
    return findings;
}

void expect_walkable(std::size_t trees) {
    if (trees > most_stops) {
        throw Error(Trouble::input,
                    about_table(Level::error, "tree",
                                say("{} trees are too many for one walk; {} is the most.", trees, most_stops),
                                say("Choose a block, an accession or fewer labels.")));
    }
}

Sentence walk_summary(const Walk& walk, std::size_t trees) {
    if (trees == 0) {
        return say("No tree is to be visited.");
    }
    const auto way = trees == 1 ? say("1 tree, {:.0f} m walk", walk.metres)
                                : say("{} trees, {:.0f} m walk", trees, walk.metres);
    return walk.is_shortest ? say("{}: no order is shorter.", way) : say("{}.", way);
}

}  // namespace pipward::place
