// SPDX-License-Identifier: MIT
#include "pipward/record/presence.h"

namespace pipward::record {
namespace {

bool is_gone_before(const Tree& one, const Tree& other) {
    return one.removed_on && other.planted_on && *one.removed_on <= *other.planted_on;
}

}  // namespace

bool planted_by(const Tree& tree, Day day) {
    return !tree.planted_on || *tree.planted_on <= day;
}

bool removed_by(const Tree& tree, Day day) {
    return tree.removed_on && *tree.removed_on <= day;
}

bool stands_on(const Tree& tree, Day day) {
    return planted_by(tree, day) && !removed_by(tree, day);
}

bool in_hand(const PollenLot& lot, Day day) {
    return lot.collected_on <= day && (!lot.used_up_on || *lot.used_up_on > day);
}

bool stand_together(const Tree& one, const Tree& other) {
    return !is_gone_before(one, other) && !is_gone_before(other, one);
}

}  // namespace pipward::record
