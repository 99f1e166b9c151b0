// SPDX-License-Identifier: MIT
#include "pipward/intake/detail/line_findings.h"

namespace pipward::intake::detail {
namespace {

constexpr int findings_of_a_kind = 20;

}  // namespace

void LineFindings::of_line(Level level, int line, std::string field, std::string value, Sentence message,
                           Sentence remedy) {
    Kind& kind = kinds_[message.text()];
    kind = {level, kind.count + 1, message};
    if (kind.count <= findings_of_a_kind) {
        of_file(level, say("line {}", line), std::move(field), std::move(value), std::move(message),
                std::move(remedy));
    }
}

void LineFindings::of_file(Level level, RowWords row, std::string field, std::string value, Sentence message,
                           Sentence remedy) {
    findings_.push_back({level, file_, std::move(row), std::move(field), std::move(value), std::move(message),
                         std::move(remedy)});
}

void LineFindings::finish() {
    for (const auto& [text, kind] : kinds_) {
        if (const int untold = kind.count - findings_of_a_kind; untold > 0) {
            of_file(kind.level, {}, {}, std::to_string(untold),
                    say("{} more lines like this: {}", untold, kind.message),
                    say("Mend the lines named first, then read the file again."));
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
