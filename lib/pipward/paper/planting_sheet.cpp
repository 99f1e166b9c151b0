// SPDX-License-Identifier: MIT
#include "pipward/paper/planting_sheet.h"

#include <fmt/format.h>

#include <algorithm>

#include "pipward/paper/cautions.h"
#include "pipward/paper/day_words.h"
#include "pipward/paper/detail/html.h"
#include "pipward/paper/detail/sheet_sections.h"
#include "pipward/paper/detail/task_html.h"
#include "pipward/paper/text.h"

namespace pipward::paper {
namespace {

std::string row_section(const std::vector<PlantingPlace>& places, std::size_t number, const Speech& speech) {
    static const std::vector<detail::SheetColumn> columns{{say("Done"), 8, false, "tick"},
                                                          {say("Position"), 14},
                                                          {say("Label"), 26, true},
                                                          {say("Family"), 36},
                                                          {say("Order"), 16}};
    std::vector<detail::SheetRow> rows;
    for (const auto& place : places) {
        const auto family = place.cross.empty()
                                ? speech.around(say("check: {}", detail::name_html(place.family)))
                                : detail::name_html(place.family);
        rows.push_back({{detail::tick_box(verbatim(place.label), speech), std::to_string(place.position),
                         detail::element("strong", "", detail::name_html(place.label)), family,
                         std::to_string(place.order)},
                        ""});
    }
    return detail::section_html(
        fmt::format("row-{}", number), say("Row {}", places.front().row),
        detail::sheet_table(say("Positions in the order of planting"), columns, rows, speech), speech);
}

/// Every row in turn, as one walks.
std::string row_sections(const PlantingSheet& sheet, const Speech& speech) {
    std::string html;
    std::size_t number = 0;
    for (auto first = sheet.places.begin(); first != sheet.places.end();) {
        const auto end = std::find_if(first, sheet.places.end(),
                                      [&](const PlantingPlace& place) { return place.row != first->row; });
        html += row_section({first, end}, ++number, speech);
        first = end;
    }
    return html;
}

std::string tray_html(const PlantingSheet& sheet, std::size_t first, std::size_t number,
                      const Speech& speech) {
    const auto across = static_cast<std::size_t>(sheet.tray.across);
    const auto cells = across * static_cast<std::size_t>(sheet.tray.down);
    const auto end = std::min(sheet.places.size(), first + cells);
    std::string html =
        "<table class=\"tray\">\n<caption>" + speech.plain(say("Tray {}", number)) + "</caption>\n";
    for (auto row = first; row < end; row += across) {
        html += "<tr>";
        for (auto cell = row; cell < row + across; ++cell) {
            html +=
                "<td>" + (cell < end ? detail::name_html(sheet.places[cell].label) : std::string{}) + "</td>";
        }
        html += "</tr>\n";
    }
    return html + "</table>\n";
}

std::string tray_section(const PlantingSheet& sheet, const Speech& speech) {
    const auto cells = static_cast<std::size_t>(sheet.tray.across * sheet.tray.down);
    if (cells == 0 || sheet.places.empty()) {
        return "";
    }
    std::string html;
    std::size_t number = 0;
    for (std::size_t first = 0; first < sheet.places.size(); first += cells) {
        html += tray_html(sheet, first, ++number, speech);
    }
    return detail::section_html(
        "trays", say("Trays"),
        detail::paragraph_html(say("In planting order, from the upper left corner on."), speech) + html,
        speech);
}

}  // namespace

std::vector<PlantingPlace> planting_places(const std::vector<seed::Planted>& planted) {
    std::vector<PlantingPlace> places;
    for (const auto& tree : planted) {
        const auto* goal = tree.goal;
        places.push_back({tree.order, tree.label, goal == nullptr ? std::string{} : goal->code,
                          goal == nullptr ? tree.accession : goal->seed_parent + " × " + goal->pollen_parent,
                          tree.place->row, tree.place->position});
    }
    return places;
}

std::string planting_sheet_html(const PlantingSheet& sheet, const Wording& wording) {
    const Speech speech(wording, parts_of(sheet.day).year);
    const auto title = say("Planting sheet, block {}", sheet.block);
    auto head = "<header>\n" + detail::element("h1", "", speech.plain(title)) + "\n";
    if (!sheet.orchard_name.empty()) {
        head += detail::element("p", "orchard", detail::name_html(sheet.orchard_name)) + "\n";
    }
    head += detail::paragraph_html(verbatim(speech.plain(long_day(sheet.day))), speech) + "</header>\n";
    return detail::sheet_page(
        speech.text(title),
        head + "<main>\n" + row_sections(sheet, speech) + tray_section(sheet, speech) +
            cautions_html({season::Hazard::tools, season::Hazard::protected_parents, season::Hazard::moving},
                          speech) +
            "</main>\n",
        speech);
}

}  // namespace pipward::paper
