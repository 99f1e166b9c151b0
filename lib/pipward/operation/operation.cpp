// SPDX-License-Identifier: MIT
#include "pipward/operation/operation.h"

#include <algorithm>
#include <stdexcept>

#include "pipward/value/complaint.h"

namespace pipward::operation {

void Run::step(double share, const Sentence& what) const {
    if (cancelled()) {
        throw Error(Trouble::cancelled,
                    about_table(Level::error, "", say("Stopped as you asked."), say("Nothing was written.")));
    }
    progress(share, what.in(wording));
}

const Operation* find_operation(std::string_view id) {
    const auto all = operations();
    const auto found =
        std::ranges::find_if(all, [&](const auto& operation) { return operation->about().id == id; });
    return found == all.end() ? nullptr : found->get();
}

const Operation& operation_for(Role role) {
    const auto all = operations();
    const auto found =
        std::ranges::find_if(all, [&](const auto& operation) { return operation->about().role == role; });
    if (found == all.end()) {
        throw std::logic_error("a role is played by no operation of the list");
    }
    return **found;
}

}  // namespace pipward::operation
