// SPDX-License-Identifier: MIT
#include "pipward/lineage/pedigree_tree_text.h"

#include <algorithm>
#include <set>

namespace pipward::lineage {
namespace {

class Writing {
  public:
    Writing(const PedigreeGraph& graph, const PedigreeLimits& limits, const Wording& wording)
        : graph_(graph), limits_(limits), wording_(wording) {}

    void ancestors(int subject) {
        text += graph_.nodes[subject].name + "\n";
        told_.insert(subject);
        parents_of(subject, 0, "");
    }

    void descendants(int subject) {
        if (limits_.down == 0 || graph_.children[subject].empty()) {
            return;
        }
        text += "\n" + say("Descendants of {}", graph_.nodes[subject].name).in(wording_) + "\n";
        told_ = {subject};
        children_of(subject, 0, "");
    }

    std::string text;

  private:
    void line(const std::string& before, bool is_last, const Sentence& role, const std::string& name,
              bool is_told) {
        text += before + (is_last ? "└─ " : "├─ ") + role.in(wording_) + ": " + name;
        text += is_told ? " " + say("(see above)").in(wording_) : "";
        text += "\n";
    }

    void parents_of(int node, int generation, const std::string& before) {
        const auto& links = graph_.parents[node];
        const bool one_unknown = links.size() == 1 && generations_of(links.front()) == 1;
        for (std::size_t i = 0; i < links.size(); ++i) {
            const int there = generation + generations_of(links[i]);
            if (there > limits_.up) {
                line(before, true, say("further"), "…", false);
                return;
            }
            if (one_unknown && links[i].role == PedigreeRole::pollen) {
                unknown(before, false, PedigreeRole::seed);
            }
            const bool is_last =
                i + 1 == links.size() && !(one_unknown && links[i].role == PedigreeRole::seed);
            parent(links[i], there, before, is_last);
        }
        if (one_unknown && links.front().role == PedigreeRole::seed) {
            unknown(before, true, PedigreeRole::pollen);
        }
    }

    void unknown(const std::string& before, bool is_last, PedigreeRole role) {
        line(before, is_last, role_words({.role = role}), say("unknown").in(wording_), false);
    }

    void parent(const PedigreeLink& link, int generation, const std::string& before, bool is_last) {
        const bool is_told = !told_.insert(link.parent).second && !graph_.parents[link.parent].empty();
        line(before, is_last, role_words(link), graph_.nodes[link.parent].name, is_told);
        if (!is_told) {
            parents_of(link.parent, generation, before + (is_last ? "   " : "│  "));
        }
    }

    void children_of(int node, int generation, const std::string& before) {
        auto links = graph_.children[node];
        std::ranges::stable_sort(links, {},
                                 [&](const PedigreeLink& link) { return graph_.nodes[link.child].name; });
        for (std::size_t i = 0; i < links.size(); ++i) {
            const int there = generation + generations_of(links[i]);
            if (there > limits_.down) {
                line(before, true, say("further"), "…", false);
                return;
            }
            const bool is_last = i + 1 == links.size();
            const bool is_told =
                !told_.insert(links[i].child).second && !graph_.children[links[i].child].empty();
            line(before, is_last, child_words(links[i]), graph_.nodes[links[i].child].name, is_told);
            if (!is_told) {
                children_of(links[i].child, there, before + (is_last ? "   " : "│  "));
            }
        }
    }

    static Sentence child_words(const PedigreeLink& link) {
        switch (link.role) {
            case PedigreeRole::seed:
                return say("by its seed");
            case PedigreeRole::pollen:
                return say("by its pollen");
            case PedigreeRole::member:
                return say("member of the blend");
            case PedigreeRole::sport:
                break;
        }
        return say("its sport");
    }

    const PedigreeGraph& graph_;
    PedigreeLimits limits_;
    const Wording& wording_;
    std::set<int> told_;
};

}  // namespace

Sentence role_words(const PedigreeLink& link) {
    switch (link.role) {
        case PedigreeRole::seed:
            return say("seed parent");
        case PedigreeRole::pollen:
            return say("pollen parent");
        case PedigreeRole::member:
            return say("in the blend, {:.3g} %", 100 * link.share);
        case PedigreeRole::sport:
            break;
    }
    return say("sport of");
}

std::string pedigree_tree_text(const PedigreeGraph& graph, int subject, const PedigreeLimits& limits,
                               const Wording& wording) {
    Writing writing(graph, limits, wording);
    writing.ancestors(subject);
    writing.descendants(subject);
    return writing.text;
}

}  // namespace pipward::lineage
