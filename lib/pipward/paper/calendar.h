// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

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
    /// Higher than that of the event as it was told before, where it has changed since.
    int sequence = 0;
    bool cancelled = false;  ///< told before, and not to be done any more
};

/// The least SEQUENCE of an event that is told on a day: it rises with the days.
int sequence_on(Day as_of);

/// What a calendar that holds the events of `before` has to be told: those of `now`, with a higher sequence
/// where something of them has changed, then those of `before` that are gone and were not over by `as_of`,
/// cancelled (RFC 5545, 3.8.1.11 and 3.8.7.4). Texts are compared in the words of a host; of an event that is
/// cancelled the text is not.
std::vector<CalendarEvent> told_again(std::vector<CalendarEvent> now,
                                      const std::vector<CalendarEvent>& before, Day as_of,
                                      const Wording& wording = in_english);

/// A calendar after RFC 5545: all-day events, in the order of `events`, each with an alarm on the morning of
/// its first day unless it is cancelled. An event keeps its UID when it is made again on another day and has
/// a SEQUENCE that is not lower, so that a calendar that reads the file again moves what it has. The stamp is
/// the start of `as_of`: same input, same bytes. `orchard` names the calendar.
std::string calendar_text(std::span<const CalendarEvent> events, const std::string& orchard, Day as_of,
                          const Wording& wording = in_english);

}  // namespace pipward::paper
