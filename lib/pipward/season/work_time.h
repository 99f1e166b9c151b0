// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/season/field_work.h"

/// When a piece of work must be done, for whatever tells people of it.
namespace pipward::season {

/// In the order in which people want to hear of it.
enum class WorkTime {
    late,       ///< its last day is past, and it can still be done
    today,      ///< its last day is today
    this_week,  ///< within the seven days after today
    later,      ///< after these, or nothing tells its days
    missed,     ///< it cannot be done any more
};

/// By the last day, as cross::urgency_of has it; by the first where it has no last one.
WorkTime work_time(const FieldWorkItem& item, Day as_of);

/// "This week", as a heading.
Sentence heading_of(WorkTime time);

}  // namespace pipward::season
