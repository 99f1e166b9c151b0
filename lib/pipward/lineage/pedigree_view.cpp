// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_view.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>

namespace pipward::lineage {
namespace {

constexpr int unrelated = -1;
using Generations = std::vector<int>;  // by node; unrelated for who is not of the line

Generations ancestors_of(const PedigreeGraph& graph, int subject) {
    Generations generation(graph.nodes.size(), unrelated);
    generation[subject] = 0;
    for (int node = subject; node >= 0; --node) {
        for (const auto& link : graph.parents[node]) {
            const int there = generation[node] + generations_of(link);
            auto& known = generation[link.parent];
            if (generation[node] != unrelated && (known == unrelated || there < known)) {
                known = there;
            }
        }
    }
    return generation;
}

Generations descendants_of(const PedigreeGraph& graph, int subject) {
    Generations generation(graph.nodes.size(), unrelated);
    generation[subject] = 0;
    for (std::size_t node = static_cast<std::size_t>(subject) + 1; node < graph.nodes.size(); ++node) {
        for (const auto& link : graph.parents[node]) {
            const int there = generation[link.parent] + generations_of(link);
            auto& known = generation[node];
            if (generation[link.parent] != unrelated && (known == unrelated || there < known)) {
                known = there;
            }
        }
    }
    return generation;
}

bool is_within(int generation, int limit) {
    return generation != unrelated && generation <= limit;
}

// Boxes of one view while it is made.
class Viewing {
  public:
    Viewing(const PedigreeGraph& graph, int subject, const PedigreeLimits& limits)
        : graph_(graph),
          limits_(limits),
          up_(ancestors_of(graph, subject)),
          down_(descendants_of(graph, subject)),
          box_(graph.nodes.size(), -1) {
        box_[subject] = 0;
        view.boxes.push_back({.node = subject});
        add_ancestors(subject);
        std::vector<int> younger;
        for (std::size_t node = 0; node < graph.nodes.size(); ++node) {
            const bool is_subject = static_cast<int>(node) == subject;
            view.ancestors_left_out += !is_subject && up_[node] > limits.up && !graph.nodes[node].is_blend;
            view.descendants_left_out += down_[node] > limits.down && !graph.nodes[node].is_blend;
            if (!is_subject && is_descendant(static_cast<int>(node))) {
                younger.push_back(static_cast<int>(node));
            }
        }
        std::ranges::sort(younger, {},
                          [&](int node) { return std::pair(down_[node], graph.nodes[node].name); });
        add_descendants(younger);
        add_links();
        add_columns();
    }

    PedigreeView view;

  private:
    int add_box(PedigreeBox box) {
        if (box.node >= 0) {
            box_[box.node] = static_cast<int>(view.boxes.size());
        }
        view.boxes.push_back(std::move(box));
        return static_cast<int>(view.boxes.size()) - 1;
    }

    // Depth first, seed side first, with a stack of its own: the order in which one reads.
    void add_ancestors(int subject) {
        std::vector<PedigreeLink> open(graph_.parents[subject].rbegin(), graph_.parents[subject].rend());
        while (!open.empty()) {
            const int node = open.back().parent;
            open.pop_back();
            if (box_[node] < 0 && is_within(up_[node], limits_.up)) {
                add_box({.node = node, .side = PedigreeSide::ancestor, .generation = up_[node]});
                open.insert(open.end(), graph_.parents[node].rbegin(), graph_.parents[node].rend());
            }
        }
    }

    bool has_children_in_view(int node) const {
        return std::ranges::any_of(graph_.children[node], [&](const PedigreeLink& link) {
            return is_within(down_[link.child], limits_.down);
        });
    }

    // A blend that nothing in the view came from would tell nothing.
    bool is_descendant(int node) const {
        return limits_.down > 0 && is_within(down_[node], limits_.down) &&
               (!graph_.nodes[node].is_blend || has_children_in_view(node));
    }

    bool may_stand_in_family(int node) const {
        const auto* record = graph_.nodes[node].record;
        return record != nullptr && record->kind == AccessionKind::seedling &&
               graph_.parents[node].size() == 2 && !has_children_in_view(node);
    }

    using Parents = std::pair<int, int>;
    Parents parents_of(int node) const {
        return {graph_.parents[node][0].parent, graph_.parents[node][1].parent};
    }

    std::vector<PedigreeBox> boxes_of(const std::vector<int>& nodes) const {
        std::map<Parents, std::vector<int>> families;
        for (const int node : nodes) {
            if (may_stand_in_family(node)) {
                families[parents_of(node)].push_back(node);
            }
        }
        std::vector<PedigreeBox> boxes;
        for (const int node : nodes) {
            PedigreeBox box{.node = node, .side = PedigreeSide::descendant, .generation = down_[node]};
            if (may_stand_in_family(node)) {
                auto& family = families[parents_of(node)];
                if (static_cast<int>(family.size()) >= family_of_seedlings && family.front() != node) {
                    continue;
                }
                box.family =
                    static_cast<int>(family.size()) >= family_of_seedlings ? family : std::vector<int>{};
            }
            boxes.push_back(std::move(box));
        }
        return boxes;
    }

    static int count_in(const PedigreeBox& box) {
        return box.family.empty() ? 1 : static_cast<int>(box.family.size());
    }

    void add_descendants(const std::vector<int>& nodes) {
        std::map<int, int> shown;  // boxes by generation
        std::map<int, int> more;   // descendants without a box
        for (auto& box : boxes_of(nodes)) {
            const bool fits = limits_.most_children == 0 || shown[box.generation] < limits_.most_children;
            if (fits) {
                ++shown[box.generation];
                add_box(std::move(box));
            } else {
                more[box.generation] += count_in(box);
            }
        }
        for (const auto& [generation, count] : more) {
            add_box({.side = PedigreeSide::descendant, .generation = generation, .more = count});
            view.descendants_left_out += count;
        }
    }

    bool has_children_out_of_view(int node) const {
        return std::ranges::any_of(graph_.children[node], [&](const PedigreeLink& link) {
            return !is_within(down_[link.child], limits_.down);
        });
    }

    void add_link(PedigreeLink link, int child, int parent) {
        link.child = child;
        link.parent = parent;
        view.links.push_back(link);
    }

    void add_links() {
        const auto count = static_cast<int>(view.boxes.size());
        for (int child = 0; child < count; ++child) {
            const int node = view.boxes[child].node;
            if (node < 0) {
                continue;
            }
            for (const auto& link : graph_.parents[node]) {
                const int parent = box_[link.parent];
                if (parent >= 0) {
                    add_link(link, child, parent);
                } else if (view.boxes[child].side != PedigreeSide::descendant) {
                    view.boxes[child].goes_on = true;
                }
            }
            if (view.boxes[child].side == PedigreeSide::descendant) {
                view.boxes[child].goes_on = has_children_out_of_view(node);
            }
            add_unknown_parent(child);
        }
        mark_shared();
    }

    // Beside a known parent an unknown one stands as such; of a founder both would tell nothing.
    void add_unknown_parent(int child) {
        const auto box = view.boxes[child];
        const bool of_cross =
            graph_.parents[box.node].size() == 1 && generations_of(graph_.parents[box.node].front()) == 1;
        if (!of_cross || box.side == PedigreeSide::descendant || box.generation >= limits_.up) {
            return;
        }
        const auto known = graph_.parents[box.node].front().role;
        const auto role = known == PedigreeRole::seed ? PedigreeRole::pollen : PedigreeRole::seed;
        const int unknown = add_box({.side = PedigreeSide::ancestor, .generation = box.generation + 1});
        add_link({.role = role}, child, unknown);
    }

    void mark_shared() {
        std::vector<int> links(view.boxes.size());
        for (const auto& link : view.links) {
            if (view.boxes[link.child].side != PedigreeSide::descendant) {
                ++links[link.parent];
            }
        }
        for (std::size_t i = 0; i < links.size(); ++i) {
            view.boxes[i].is_shared = view.boxes[i].side == PedigreeSide::ancestor && links[i] > 1;
        }
    }

    bool is_older_side(int box) const { return view.boxes[box].side != PedigreeSide::descendant; }

    // Every parent right of its children, as near as they let it; descendants as near to the subject as
    // their own children let them.
    void add_columns() {
        auto& columns = view.columns;
        columns.assign(view.boxes.size(), 0);
        auto links = view.links;
        const auto place = [&](int box) { return view.boxes[box].node; };
        std::ranges::sort(
            links, [&](const BoxLink& a, const BoxLink& b) { return place(a.child) > place(b.child); });
        for (const auto& link : links) {
            if (is_older_side(link.child)) {
                columns[link.parent] = std::max(columns[link.parent], columns[link.child] + 1);
            }
        }
        for (auto link = links.rbegin(); link != links.rend(); ++link) {
            if (!is_older_side(link->child)) {
                columns[link->child] = std::min(columns[link->child], columns[link->parent] - 1);
            }
        }
        int youngest = 0;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            columns[i] = view.boxes[i].more > 0 ? -view.boxes[i].generation : columns[i];
            youngest = std::min(youngest, columns[i]);
        }
        for (auto& column : columns) {
            column -= youngest;
        }
        view.column_count = *std::ranges::max_element(columns) + 1;
    }

    const PedigreeGraph& graph_;
    PedigreeLimits limits_;
    Generations up_;
    Generations down_;
    std::vector<int> box_;  // of each node
};

}  // namespace

PedigreeView pedigree_view(const PedigreeGraph& graph, int subject, const PedigreeLimits& limits) {
    return Viewing(graph, subject, limits).view;
}

}  // namespace pipward::lineage
