// SPDX-License-Identifier: MIT
#include <algorithm>

#include "pipward/operation/seed/detail/wanted_crosses.h"
#include "pipward/value/complaint.h"
#include "pipward/value/listed_names.h"

namespace pipward::operation::detail {

std::vector<std::string> wanted_crosses(const std::string& list, const Orchard& orchard) {
    auto names = listed_names(list);
    Findings findings;
    for (const auto& name : names) {
        if (std::ranges::find(orchard.goals, name, &CrossGoal::code) == orchard.goals.end()) {
            findings.push_back(about_parameter("crosses", name, say("The book has no cross of this name."),
                                               say("Name crosses by their codes.")));
        }
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, std::move(findings));
    }
    return names;
}

bool is_wanted(const std::vector<std::string>& wanted, const std::string& cross) {
    return wanted.empty() || std::ranges::find(wanted, cross) != wanted.end();
}

}  // namespace pipward::operation::detail
