// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/value/finding.h"

namespace pipward::intake {

/// What is said of a file or of one of its lines; where that is, the caller tells.
struct Remark {
    Level level = Level::error;
    std::string field{};  ///< the column, or the parameter that would help
    std::string value{};  ///< what stands there
    Sentence message{};
    Sentence remedy{};
};

inline Finding finding_about(std::string file, RowWords row, Remark remark) {
    return {remark.level,
            std::move(file),
            std::move(row),
            std::move(remark.field),
            std::move(remark.value),
            std::move(remark.message),
            std::move(remark.remedy)};
}

}  // namespace pipward::intake
