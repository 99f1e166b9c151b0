// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>

#include "pipward/intake/remark.h"

namespace pipward::intake::detail {

/// What is said of one file. Of findings about single lines, those after twenty of a kind are only counted.
class LineFindings {
  public:
    LineFindings(std::string file, Findings& findings) : file_(std::move(file)), findings_(findings) {}

    void of_line(int line, Remark remark);
    void of_file(RowWords row, Remark remark);
    void error(std::string field, std::string value, Sentence message, Sentence remedy) {
        of_file({},
                {Level::error, std::move(field), std::move(value), std::move(message), std::move(remedy)});
    }
    bool any_error() const { return has_errors(findings_); }

    /// Adds how many were left unsaid. Once, at the end.
    void finish();
    int count(const Sentence& message) const;
    /// Takes back what was said of such lines: a finding on the whole file says it better.
    void forget(const Sentence& message);

  private:
    struct Kind {
        Level level = Level::notice;
        int count = 0;
        Sentence message{};
    };

    std::string file_;
    Findings& findings_;
    std::map<std::string, Kind> kinds_{};  ///< by message
};

}  // namespace pipward::intake::detail
