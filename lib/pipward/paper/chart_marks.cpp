// SPDX-License-Identifier: MIT
#include "pipward/paper/chart_marks.h"

#include <iterator>

namespace pipward::paper {

ChartLook chart_look(MarkRole role) {
    switch (role) {
        case MarkRole::name:
        case MarkRole::days:
            return {.fill = Ink::ink, .bold = true};
        case MarkRole::quiet:
            return {.fill = Ink::quiet};
        case MarkRole::as_of:
            return {.fill = Ink::now, .stroke = Ink::now, .width = 2, .dashes = {7, 3, 2, 3}, .bold = true};
        case MarkRole::grid:
            return {.stroke = Ink::grid, .width = 1};
        case MarkRole::month:
            return {.stroke = Ink::month, .width = 1};
        case MarkRole::life:
            return {.stroke = Ink::stem, .width = 2};
        case MarkRole::band:
            return {.fill = Ink::petal, .stroke = Ink::stem, .width = 1.5};
        case MarkRole::lent_band:
            return {.fill = Ink::paper, .stroke = Ink::stem, .width = 1.5, .dashes = {4, 2.5}};
        case MarkRole::median:
            return {.stroke = Ink::tick, .width = 3.5};
    }
    return {};
}

const Inks& chart_inks(bool dark) {
    static constexpr Inks on_light{"#fff",    "#1d2320", "#505b55", "#d5dbd7", "#8d9891",
                                   "#e3c6da", "#6d2f5f", "#34102d", "#8a5000"};
    static constexpr Inks on_dark{"#161b18", "#e9eeeb", "#aebab3", "#333c37", "#6b776f",
                                  "#6b3a5f", "#e3b5d5", "#fff",    "#f2b04d"};
    return dark ? on_dark : on_light;
}

std::string_view colour_of(Ink ink, const Inks& inks) {
    return inks.at(static_cast<std::size_t>(ink) - 1);
}

void lay_over(ChartMarks& marks, ChartMarks above) {
    marks.insert(marks.end(), std::make_move_iterator(above.begin()), std::make_move_iterator(above.end()));
}

}  // namespace pipward::paper
