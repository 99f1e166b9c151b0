// SPDX-License-Identifier: MIT
#pragma once

#include "pipward/paper/calendar.h"
#include "pipward/record/orchard_index.h"
#include "pipward/season/field_work.h"

namespace pipward::paper {

/// Work of the season as an event of a calendar: with what, why, what to mind and the names of the hazards as
/// its text, the tree's address as its place. The work has a first and a last day.
CalendarEvent calendar_event(const season::FieldWorkItem& item, const OrchardIndex& book);

}  // namespace pipward::paper
