// SPDX-License-Identifier: MIT
#include "pipward/seed/waiting_families.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>

#include "pipward/seed/cross_tally.h"
#include "pipward/seed/unknown_cross.h"
#include "pipward/value/complaint.h"

namespace pipward::seed {
namespace {

std::string_view without_blanks(std::string_view text) {
    const auto first = text.find_first_not_of(' ');
    return first == text.npos ? std::string_view{}
                              : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// "24-01=12; 24-02": so many of each, or all that germinated and have no place.
std::optional<std::map<std::string, std::optional<int>>> parse_crosses(std::string_view text) {
    std::map<std::string, std::optional<int>> wanted;
    while (!text.empty()) {
        const auto end = std::min(text.find(';'), text.size());
        auto part = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        part = without_blanks(part);
        if (part.empty()) {
            continue;
        }
        const auto sign = part.find('=');
        std::optional<int> number;
        if (sign != part.npos) {
            const std::string digits(without_blanks(part.substr(sign + 1)));
            if (digits.empty() || digits.size() > 6 ||
                digits.find_first_not_of("0123456789") != digits.npos) {
                return std::nullopt;
            }
            number = std::stoi(digits);
        }
        wanted.emplace(without_blanks(part.substr(0, sign)), number);
    }
    return wanted;
}

Finding more_than_germinated(const CrossTally& tally, int wanted) {
    return about_parameter("crosses", fmt::format("{}={}", tally.goal->code, wanted),
                           say("Only {} seeds of cross {} germinated and have no position yet.",
                               seedlings_without_place(tally), tally.goal->code),
                           say("Choose fewer, or record the germination first."));
}

}  // namespace

bool is_wish_of_crosses(std::string_view text) {
    return parse_crosses(text).has_value();
}

std::vector<Waiting> waiting_families(const std::string& crosses, const Orchard& orchard, Day as_of,
                                      Findings& findings) {
    auto wanted = *parse_crosses(crosses);
    const bool all = wanted.empty();
    std::vector<Waiting> families;
    for (const auto& tally : tally_crosses(orchard, as_of)) {
        const auto found = wanted.find(tally.goal->code);
        if (found == wanted.end() && !all) {
            continue;
        }
        const auto asked = all ? std::nullopt : found->second;
        if (asked && *asked > seedlings_without_place(tally)) {
            findings.push_back(more_than_germinated(tally, *asked));
        }
        if (const int seedlings = asked.value_or(seedlings_without_place(tally)); seedlings > 0) {
            families.push_back({tally.goal, seedlings});
        }
        wanted.erase(tally.goal->code);
    }
    for (const auto& [code, number] : wanted) {
        findings.push_back(unknown_cross(code));
    }
    return families;
}

}  // namespace pipward::seed
