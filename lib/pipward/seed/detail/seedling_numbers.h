// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/record/orchard.h"

namespace pipward::seed::detail {

/// The seedlings of a cross numbered on from the highest that the book has: "24-01-007". At least three
/// digits, or as many as the cross's seedlings have already. A number is never given twice.
class SeedlingNumbers {
  public:
    /// `cross` is the code of the cross; the orchard is looked at once and not kept.
    SeedlingNumbers(const Orchard& orchard, std::string cross);

    /// The next name, each a number further.
    std::string next();

  private:
    std::string cross_;
    std::size_t digits_ = 3;
    int last_ = 0;
};

}  // namespace pipward::seed::detail
