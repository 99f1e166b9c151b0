// SPDX-License-Identifier: MIT
#include "pipward/paper/day_words.h"

namespace pipward::paper {

Sentence long_day(Day day) {
    const auto [year, month, number] = parts_of(day);
    switch (month) {
        case 1:
            return say("{} January {}", number, year);
        case 2:
            return say("{} February {}", number, year);
        case 3:
            return say("{} March {}", number, year);
        case 4:
            return say("{} April {}", number, year);
        case 5:
            return say("{} May {}", number, year);
        case 6:
            return say("{} June {}", number, year);
        case 7:
            return say("{} July {}", number, year);
        case 8:
            return say("{} August {}", number, year);
        case 9:
            return say("{} September {}", number, year);
        case 10:
            return say("{} October {}", number, year);
        case 11:
            return say("{} November {}", number, year);
        default:
            return say("{} December {}", number, year);
    }
}

}  // namespace pipward::paper
