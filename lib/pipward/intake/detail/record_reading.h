// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/intake/detail/book_value.h"
#include "pipward/intake/record_sheet.h"
#include "pipward/intake/sheet.h"

/// The steps by which a sheet of notes is read.
namespace pipward::intake::detail {

/// Whether some kind of notes has such a column.
bool heads_records(std::string_view heading);

/// Where each column of the file goes, by position. Null for a column that is not read.
struct RecordColumns {
    RecordKind kind = RecordKind::bloom;
    std::vector<const book::BookColumn*> columns{};
    Findings findings{};  ///< errors
};
RecordColumns find_record_columns(const Sheet& sheet, const RecordOptions& options);

/// A cell as the column holds it; what people write that cannot be read is wrong. Not for days.
ReadValue read_record_cell(const book::BookColumn& column, std::string_view text);

}  // namespace pipward::intake::detail
