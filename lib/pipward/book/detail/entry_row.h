// SPDX-License-Identifier: MIT
#pragma once

#include <ogrsf_frmts.h>

#include <optional>
#include <string>

#include "pipward/book/detail/ogr_session.h"
#include "pipward/book/entry.h"

/// Inside of the room: rows that were entered, as the book has them now.
namespace pipward::book::detail {

/// What stands in a row of that table, in the form of AddedRow::content.
std::string content_of(const OGRFeature& feature, const std::string& table);

/// What stands in the row now, in the form of AddedRow::content; nothing where the row is gone.
std::optional<std::string> content_of(OGRLayer& layer, const AddedRow& row);

/// A content as an import of many rows remembers it: a sum that changes with it.
std::string summed(const std::string& content);

/// Whether `now` is what was remembered, as it stood or as its sum.
bool is_as_remembered(const std::string& now, const std::string& remembered);

}  // namespace pipward::book::detail
