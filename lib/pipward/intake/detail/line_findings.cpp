// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/line_findings.h"

namespace pipward::intake::detail {
namespace {

constexpr int findings_of_a_kind = 20;

}  // namespace

void LineFindings::of_line(int line, Remark remark) {
    Kind& kind = kinds_[remark.message.text()];
    kind = {remark.level, kind.count + 1, remark.message};
    if (kind.count <= findings_of_a_kind) {
        of_file(say("line {}", line), std::move(remark));
    }
}

void LineFindings::of_file(RowWords row, Remark remark) {
    findings_.push_back(finding_about(file_, std::move(row), std::move(remark)));
}

void LineFindings::finish() {
    for (const auto& [text, kind] : kinds_) {
        if (const int untold = kind.count - findings_of_a_kind; untold > 0) {
            of_file({}, {kind.level,
                         {},
                         std::to_string(untold),
                         say("{} more lines like this: {}", untold, kind.message),
                         say("Correct the lines named first, then read the file again.")});
        }
    }
}

int LineFindings::count(const Sentence& message) const {
    const auto found = kinds_.find(message.text());
    return found == kinds_.end() ? 0 : found->second.count;
}

void LineFindings::forget(const Sentence& message) {
    std::erase_if(findings_, [&](const Finding& finding) { return finding.message == message; });
    kinds_.erase(message.text());
}

}  // namespace pipward::intake::detail
