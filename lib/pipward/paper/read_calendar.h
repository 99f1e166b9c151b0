// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "pipward/paper/calendar.h"

namespace pipward::paper {

/// The events of a calendar that calendar_text() made, in their order, with their texts as they were told;
/// events that somebody else wrote into the file are passed over. Throws Error (input) for what is no
/// calendar (RFC 5545).
std::vector<CalendarEvent> events_of_calendar(const std::string& text);

}  // namespace pipward::paper
