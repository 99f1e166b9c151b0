// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "pipward/value/day.h"
#include "pipward/value/sentence.h"

namespace pipward::paper {

/// Work on one or several whole days.
struct CalendarEvent {
    std::string key;  ///< tells this work from all other, and stays the same when its days move
    Day from;         ///< the first day
    Day to;           ///< the last day; never before `from`
    Sentence title;   ///< one line
    Sentence text;    ///< what to do; may be empty
    Sentence place;   ///< empty where it is nowhere in particular
};

/// A calendar after RFC 5545: all-day events, in the order of `events`, each with an alarm on the morning of
/// its first day. An event keeps its UID when it is made again on another day and has a higher SEQUENCE, so
/// that a calendar that reads the file again moves what it has. The stamp is the start of `as_of`: same
/// input, same bytes. `orchard` names the calendar.
std::string calendar_text(std::span<const CalendarEvent> events, const std::string& orchard, Day as_of,
                          const Wording& wording = in_english);

}  // namespace pipward::paper
