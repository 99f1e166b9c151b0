// SPDX-License-Identifier: MIT
#include "pipward/lineage/relation.h"

#include <algorithm>
#include <array>

namespace pipward::lineage {
namespace {

bool is_single(const Gamete& gamete) {
    return gamete.size() == 1 && gamete.front().share == 1;
}

bool holds(const Gamete& gamete, int parent) {
    return std::ranges::find(gamete, parent, &ParentShare::parent) != gamete.end();
}

bool is_of(const PedigreeMember& child, int parent) {
    return holds(child.seed, parent) || holds(child.pollen, parent);
}

bool same_gamete(const Gamete& a, const Gamete& b) {
    return std::ranges::equal(a, b, [](const ParentShare& x, const ParentShare& y) {
        return x.parent == y.parent && x.share == y.share;
    });
}

bool is_selfed(const PedigreeMember& member) {
    return is_single(member.seed) && same_gamete(member.seed, member.pollen);
}

bool is_grandchild_of(const PedigreeOrder& order, const PedigreeMember& member, int other) {
    const auto of_one = [&](const ParentShare& parent) { return is_of(order.members[parent.parent], other); };
    return std::ranges::any_of(member.seed, of_one) || std::ranges::any_of(member.pollen, of_one);
}

bool have_both(const PedigreeMember& a, const PedigreeMember& b) {
    return !a.seed.empty() && !a.pollen.empty() &&
           ((same_gamete(a.seed, b.seed) && same_gamete(a.pollen, b.pollen)) ||
            (same_gamete(a.seed, b.pollen) && same_gamete(a.pollen, b.seed)));
}

bool is_surely_of(const PedigreeMember& child, int parent) {
    return (is_single(child.seed) && holds(child.seed, parent)) ||
           (is_single(child.pollen) && holds(child.pollen, parent));
}

bool have_one(const PedigreeMember& a, const PedigreeMember& b) {
    return std::ranges::any_of(std::array{&a.seed, &a.pollen}, [&](const Gamete* side) {
        return is_single(*side) && is_surely_of(b, side->front().parent);
    });
}

Relation child_words(const PedigreeMember& child, int parent) {
    if (is_selfed(child)) {
        return Relation::selfed;
    }
    return is_surely_of(child, parent) ? Relation::child : Relation::possible_child;
}

Relation turned(Relation relation) {
    switch (relation) {
        case Relation::selfed:
            return Relation::selfed_to;
        case Relation::child:
            return Relation::parent;
        default:
            return Relation::possible_parent;
    }
}

}  // namespace

std::span<const Word<Relation>> words(Relation) {
    static constexpr std::array<Word<Relation>, 15> all{
        {{Relation::same, "same", "the same, or its sport"},
         {Relation::parent, "parent", "parent"},
         {Relation::child, "child", "offspring"},
         {Relation::selfed, "selfed", "offspring by selfing"},
         {Relation::selfed_to, "selfed_to", "parent by selfing"},
         {Relation::full_sibs, "full_sibs", "full sibs"},
         {Relation::blend_sibs, "blend_sibs", "sibs of one pollen blend"},
         {Relation::half_sibs, "half_sibs", "half sibs"},
         {Relation::possible_parent, "possible_parent", "possible parent, by a blend"},
         {Relation::possible_child, "possible_child", "possible offspring, by a blend"},
         {Relation::grandparent, "grandparent", "grandparent"},
         {Relation::grandchild, "grandchild", "grandchild"},
         {Relation::related, "related", "related"},
         {Relation::unrelated, "unrelated", "not related, as far as is known"},
         {Relation::unknown, "unknown", "not known"}}};
    return all;
}

Relation relation_of(const PedigreeOrder& order, int one, int other, std::optional<double> kinship) {
    const auto& a = order.members[one];
    const auto& b = order.members[other];
    if (one == other) {
        return Relation::same;
    }
    if (is_of(a, other)) {
        return child_words(a, other);
    }
    if (is_of(b, one)) {
        return turned(child_words(b, one));
    }
    if (have_both(a, b)) {
        return is_single(a.seed) && is_single(a.pollen) ? Relation::full_sibs : Relation::blend_sibs;
    }
    if (have_one(a, b)) {
        return Relation::half_sibs;
    }
    if (is_grandchild_of(order, b, one)) {
        return Relation::grandparent;
    }
    if (is_grandchild_of(order, a, other)) {
        return Relation::grandchild;
    }
    if (kinship.value_or(0) > 0) {
        return Relation::related;
    }
    return !kinship || (a.is_founder() && b.is_founder()) ? Relation::unknown : Relation::unrelated;
}

}  // namespace pipward::lineage
