// SPDX-License-Identifier: MIT
// find_speed [TREES]: builds an index over made-up trees and prints how long look-ups of each kind take.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <vector>

#include "pipward/place/tree_index.h"

namespace pipward::place {
namespace {

using Clock = std::chrono::steady_clock;

double milliseconds_since(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

constexpr int family_size = 200;

// Half the trees are seedlings with an accession of their own, half are grafted from 300 parents; one in
// fifty has a note. Numbers are scattered by multiplication, so that labels share most of their letters.
Orchard many_trees(int count) {
    Orchard orchard;
    for (int parent = 0; parent < 300; ++parent) {
        Accession accession;
        accession.name = fmt::format("Parent {:03} {}", parent, parent % 7 == 0 ? "Red" : "Late");
        orchard.accessions.push_back(accession);
    }
    for (int i = 0; i < count; ++i) {
        Tree tree;
        tree.label = fmt::format("B{:02}-{:03}-{:04}", i / 50000, i / 250 % 200, i % 250 + 1);
        tree.block = fmt::format("Block {:02}", i / 50000);
        tree.row = std::to_string(i / 250 % 200);
        tree.position = i % 250 + 1;
        tree.at = MapPoint{3.0 * (i % 250), 4.0 * (i / 250), {}};
        if (i % 2 == 0) {
            const int family = i / 2 / family_size;
            Accession seedling;
            seedling.name =
                fmt::format("{:02}-{:03}-{:03}", family % 25, family / 25, i / 2 % family_size + 1);
            seedling.kind = AccessionKind::seedling;
            seedling.seed_parent = orchard.accessions[static_cast<std::size_t>(family % 300)].name;
            seedling.pollen_parent = orchard.accessions[static_cast<std::size_t>(family * 7 % 300)].name;
            tree.accession = seedling.name;
            orchard.accessions.push_back(seedling);
        } else {
            tree.accession = orchard.accessions[static_cast<std::size_t>(i % 300)].name;
        }
        if (i % 50 == 0) {
            tree.remark = fmt::format("Seen {} times, a little canker below graft {}.", i % 13, i % 997);
        }
        orchard.trees.push_back(std::move(tree));
    }
    return orchard;
}

struct Ask {
    const char* kind;
    const char* query;
};

void measure(const TreeIndex& index, const Ask& ask) {
    constexpr int times = 15;
    std::vector<double> took;
    std::size_t found = 0;
    for (int i = 0; i < times; ++i) {
        const auto start = Clock::now();
        found = index.find(ask.query).size();
        took.push_back(milliseconds_since(start));
    }
    std::ranges::sort(took);
    fmt::print("{:28} {:26} {:3} found  least {:6.1f} ms  median {:6.1f} ms\n", ask.kind, ask.query, found,
               took.front(), took[times / 2]);
}

}  // namespace
}  // namespace pipward::place

int main(int argc, char** argv) {
    using namespace pipward;
    using namespace pipward::place;
    const int count = argc > 1 ? std::atoi(argv[1]) : 1'000'000;
    auto orchard = many_trees(count);
    const auto start = Clock::now();
    const TreeIndex index(std::move(orchard));
    fmt::print("{} trees, {} accessions: index built in {:.1f} s\n", count, index.orchard().accessions.size(),
               milliseconds_since(start) / 1000);
    for (const Ask& ask :
         {Ask{"label", "B07-123-0045"}, Ask{"label, other zeros", "b7 123 45"},
          Ask{"part of a label", "07-123"}, Ask{"part of every label", "B"},
          Ask{"label, a slip", "B07-1Z3-0045"}, Ask{"label, two neighbours swapped", "B07-123-0405X"},
          Ask{"accession, whole", "Parent 133 Red"}, Ask{"accession, part", "parent 133"},
          Ask{"accession, misspelt", "Parnet 133 Red"}, Ask{"seedling's accession", "12-034-056"},
          Ask{"parents and number", "Parent 012 Late x Parent 084 Red 17"},
          Ask{"row and position", "block 07 row 123 45"}, Ask{"words of a note", "canker graft 500"},
          Ask{"nothing at all", "qqqqqqqqqqqq"}}) {
        measure(index, ask);
    }
    return 0;
}
