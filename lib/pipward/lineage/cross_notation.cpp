// SPDX-License-Identifier: MIT
#include "pipward/lineage/cross_notation.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace pipward::lineage {
namespace {

// A repeated backcross: the recurrent parent, its doses, and the plant that it was first crossed with.
struct Backcross {
    const CrossTree* recurrent = nullptr;
    const CrossTree* other = nullptr;
    int doses = 0;
    bool is_seed = false;  // the recurrent parent bore the seed
};

bool is_leaf(const CrossTree& tree) {
    return tree.parents.empty();
}

Backcross backcross_on(const CrossTree& tree, std::size_t side) {
    const auto& recurrent = tree.parents[side];
    Backcross found{&recurrent, &tree, 0, side == 0};
    while (!is_leaf(*found.other) && is_leaf(recurrent) && found.other->parents[side] == recurrent) {
        ++found.doses;
        found.other = &found.other->parents[1 - side];
    }
    return found;
}

std::optional<Backcross> backcross_of(const CrossTree& tree) {
    for (const std::size_t side : {0U, 1U}) {
        if (const auto found = backcross_on(tree, side); found.doses > 1) {
            return found;
        }
    }
    return std::nullopt;
}

// Names that would read as notation stand in quotes.
std::string leaf_text(const std::string& name) {
    const bool odd = name.find_first_of("/*\"") != name.npos || name.empty();
    if (!odd) {
        return name;
    }
    std::string text = "\"";
    for (const char letter : name) {
        text += letter == '"' ? "\"\"" : std::string(1, letter);
    }
    return text + "\"";
}

struct WrittenParents {
    std::string text;
    int crosses = 0;  // number of the last one
};

std::string slash(int cross, SlashStyle style) {
    if (cross == 1) {
        return "/";
    }
    return cross == 2 && style == SlashStyle::doubled ? "//" : fmt::format("/{}/", cross);
}

WrittenParents written(const CrossTree& tree, SlashStyle style) {
    if (is_leaf(tree)) {
        return {leaf_text(tree.name), 0};
    }
    if (const auto back = backcross_of(tree)) {
        const auto other = written(*back->other, style);
        const auto dose = fmt::format("{}*{}", leaf_text(back->recurrent->name), back->doses);
        const auto between = slash(other.crosses + 1, style);
        return {back->is_seed ? dose + between + other.text : other.text + between + dose, other.crosses + 1};
    }
    const auto seed = written(tree.parents[0], style);
    const auto pollen = written(tree.parents[1], style);
    const int cross = std::max(seed.crosses, pollen.crosses) + 1;
    return {seed.text + slash(cross, style) + pollen.text, cross};
}

void add_leaves(const CrossTree& tree, std::vector<std::string>& leaves) {
    if (is_leaf(tree)) {
        leaves.push_back(tree.name);
    }
    for (const auto& parent : tree.parents) {
        add_leaves(parent, leaves);
    }
}

std::string in_brackets(const CrossTree& tree) {
    return is_leaf(tree) ? tree.name : "(" + times_text(tree) + ")";
}

}  // namespace

CrossTree crossed(CrossTree seed, CrossTree pollen) {
    CrossTree tree;
    tree.parents.push_back(std::move(seed));
    tree.parents.push_back(std::move(pollen));
    return tree;
}

std::string purdy_text(const CrossTree& tree, SlashStyle style) {
    return written(tree, style).text;
}

std::string times_text(const CrossTree& tree) {
    return is_leaf(tree) ? tree.name : in_brackets(tree.parents[0]) + " × " + in_brackets(tree.parents[1]);
}

std::vector<std::string> leaves_of(const CrossTree& tree) {
    std::vector<std::string> leaves;
    add_leaves(tree, leaves);
    return leaves;
}

CrossTree cross_tree(const PedigreeGraph& graph, int node, int generations, const std::string& unknown) {
    while (const auto* sport = graph.parent(node, PedigreeRole::sport)) {
        node = sport->parent;
    }
    const auto* seed = graph.parent(node, PedigreeRole::seed);
    const auto* pollen = graph.parent(node, PedigreeRole::pollen);
    if (generations == 0 || (seed == nullptr && pollen == nullptr)) {
        return {graph.nodes[node].name, {}};
    }
    const auto side = [&](const PedigreeLink* link) {
        return link == nullptr ? CrossTree{unknown, {}}
                               : cross_tree(graph, link->parent, generations - 1, unknown);
    };
    return crossed(side(seed), side(pollen));
}

}  // namespace pipward::lineage
