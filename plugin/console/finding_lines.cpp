// SPDX-License-Identifier: MIT
#include "console/finding_lines.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "pipward/value/finding_kind.h"

namespace pipward::console {
namespace {

constexpr std::size_t few = 3;

std::string line_for_all(const Findings& findings) {
    const auto together = told_together(findings);
    if (together.size() == 1) {
        return to_text(together.front());  // it names the first rows and counts the others
    }
    return fmt::format("{} ({} more; --findings all)", to_text(findings.front()), findings.size() - 1);
}

}  // namespace

std::vector<std::string> finding_lines(const Findings& findings, bool all) {
    auto sorted = findings;
    std::ranges::stable_sort(sorted, std::ranges::greater{}, &Finding::level);
    std::vector<std::string> lines;
    for (const auto& kind : by_kind(sorted)) {
        if (kind.findings.size() > few && !all) {
            lines.push_back(line_for_all(kind.findings));
            continue;
        }
        for (const auto& finding : kind.findings) {
            lines.push_back(to_text(finding));
        }
    }
    return lines;
}

}  // namespace pipward::console
