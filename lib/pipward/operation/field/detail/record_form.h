// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "pipward/intake/record_kind.h"
#include "pipward/operation/operation.h"

/// The operations that write single records: all parameters follow from the columns of the schema.
namespace pipward::operation::detail {

/// What such an operation says for people.
struct RecordForm {
    intake::RecordKind kind = intake::RecordKind::bloom;
    About about;
    std::vector<Example> examples;
    bool may_complete = false;  ///< whether it offers to complete a row that the book has, by its name
};

// Each group in the order of the breeder's year.
std::vector<RecordForm> spring_records();
std::vector<RecordForm> seed_records();
std::vector<RecordForm> master_records();

}  // namespace pipward::operation::detail
