// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>

#include "pipward/intake/sheet.h"

/// Files that may be larger than memory should hold as cells.
namespace pipward::intake::detail {

/// A file as read_sheet() reads it, row by row and as often as wanted: what is held does not grow with the
/// number of cells. The bytes must outlive it. Workbooks, which are small, are held.
class SheetRows {
  public:
    SheetRows(std::string_view bytes, std::string file, const KnowsHeading& known);
    SheetRows(SheetRows&&) noexcept;
    ~SheetRows();

    /// How the file was understood; errors where it cannot be.
    const Findings& findings() const;
    /// Null where the file holds no line.
    const Record* heading() const;
    /// Hands on the rows under the heading until `see` returns false. Returns errors of rows that cannot be
    /// parted.
    Findings each(const std::function<bool(Record&&)>& see) const;

  private:
    struct Held;
    std::unique_ptr<Held> held_;
};

}  // namespace pipward::intake::detail
