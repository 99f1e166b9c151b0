// SPDX-License-Identifier: MIT
#include "pipward/season/work_time.h"

#include "pipward/cross/urgency.h"

namespace pipward::season {
namespace {

WorkTime time_of(cross::Urgency urgency) {
    switch (urgency) {
        case cross::Urgency::today:
            return WorkTime::today;
        case cross::Urgency::this_week:
            return WorkTime::this_week;
        case cross::Urgency::later:
            return WorkTime::later;
        case cross::Urgency::too_late:
            break;
    }
    return WorkTime::late;
}

}  // namespace

WorkTime work_time(const FieldWorkItem& item, Day as_of) {
    if (!item.possible) {
        return WorkTime::missed;
    }
    if (item.late) {
        return WorkTime::late;
    }
    const auto last = item.to ? item.to : item.from;
    return last ? time_of(cross::urgency_of(*last, as_of)) : WorkTime::later;
}

Sentence heading_of(WorkTime time) {
    switch (time) {
        case WorkTime::late:
            return say("Overdue");
        case WorkTime::today:
            return say("Today");
        case WorkTime::this_week:
            return say("This week");
        case WorkTime::later:
            return say("Later");
        case WorkTime::missed:
            break;
    }
    return say("Too late");
}

}  // namespace pipward::season
