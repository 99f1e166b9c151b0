// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "pipward/value/day.h"

/// Days as tests write them. Throws std::bad_optional_access where the calendar has no such day.
namespace pipward::testing {

inline Day day(const std::string& iso) {
    return parse_iso_day(iso).value();
}

inline Day day_of(const char* iso) {
    return day(std::string(iso));
}

inline Day day(int year, int month, int of_month) {
    return make_day({year, month, of_month}).value();
}

}  // namespace pipward::testing
