// SPDX-License-Identifier: MIT
#include "pipward/value/finding.h"

#include <algorithm>

namespace pipward {
namespace {

std::string joined(const Findings& findings) {
    std::string text;
    for (const auto& finding : findings) {
        text += (text.empty() ? "" : "\n") + to_text(finding);
    }
    return text;
}

}  // namespace

std::string_view to_text(Level level) {
    switch (level) {
        case Level::note:
            return "note";
        case Level::warning:
            return "warning";
        case Level::error:
            break;
    }
    return "error";
}

bool has_errors(const Findings& findings) {
    return std::ranges::any_of(findings, [](const Finding& f) { return f.level == Level::error; });
}

std::string to_text(const Finding& finding) {
    std::string text{to_text(finding.level)};
    text += ": ";
    std::string where = finding.table;
    if (!finding.row.empty()) {
        where += (where.empty() ? "" : " ") + finding.row;
    }
    if (!finding.field.empty()) {
        where += (where.empty() ? "" : ", ") + finding.field;
        if (!finding.value.empty()) {
            where += " = " + finding.value;
        }
    }
    if (!where.empty()) {
        text += where + ": ";
    }
    text += finding.message;
    if (!finding.remedy.empty()) {
        text += " " + finding.remedy;
    }
    return text;
}

Error::Error(Trouble trouble, Findings findings)
    : std::runtime_error(joined(findings)), trouble_(trouble), findings_(std::move(findings)) {}

Error::Error(Trouble trouble, Finding finding) : Error(trouble, Findings{std::move(finding)}) {}

}  // namespace pipward
