// SPDX-License-Identifier: MIT
#include "pipward/value/finding_kind.h"

#include <map>
#include <string>
#include <string_view>

namespace pipward::value {
namespace {

/// The form without its fields, so that what fills them makes no difference. "{{" is a brace, no field.
std::string without_fields(std::string_view form) {
    std::string words;
    for (std::size_t at = 0; at < form.size();) {
        if (form[at] != '{') {
            words += form[at++];
        } else if (form.substr(at).starts_with("{{")) {
            words += "{{";
            at += 2;
        } else {
            const auto end = form.find('}', at);
            at = end == form.npos ? form.size() : end + 1;
        }
    }
    return words;
}

std::string kind_of(const Finding& finding) {
    return std::string(to_text(finding.level)) + '\0' + finding.table + '\0' + finding.field + '\0' +
           finding.message.in(without_fields);
}

}  // namespace

std::vector<FindingKind> by_kind(const Findings& findings) {
    std::vector<FindingKind> kinds;
    std::map<std::string, std::size_t> places;
    for (const auto& finding : findings) {
        const auto [place, is_new] = places.try_emplace(kind_of(finding), kinds.size());
        if (is_new) {
            kinds.emplace_back();
        }
        kinds[place->second].findings.push_back(finding);
    }
    return kinds;
}

}  // namespace pipward::value
