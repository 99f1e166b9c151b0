// SPDX-License-Identifier: MIT
// A layer of any kind: by the GIS library, or as a table of text or a workbook.
#include <algorithm>
#include <array>
#include <filesystem>

#include "pipward/intake/cells.h"
#include "pipward/intake/detail/adopting.h"
#include "pipward/intake/layer_columns.h"
#include "pipward/intake/sheet.h"

namespace pipward::intake {
namespace {

/// A column of well-known text holds the places.
bool is_geometry(std::string_view heading) {
    const auto name = lower_case(heading);
    return name == "wkt" || name == "the_geom" || name.starts_with("geom");
}

// Of two fields of one name only one could be told from the other by its place.
std::vector<std::string> columns_of(const Sheet& sheet, book::UserLayer& layer) {
    for (const auto& heading : sheet.records.front().fields) {
        if (!heading.empty() && std::ranges::find(layer.columns, heading) != layer.columns.end()) {
            layer.findings.push_back(finding_about(sheet.file, {},
                                                   {Level::error,
                                                    heading,
                                                    {},
                                                    say("The layer has two fields of this name."),
                                                    say("Give each a name of its own.")}));
        }
        layer.columns.push_back(heading);
    }
    auto headings = std::move(layer.columns);
    layer.columns = headings;
    std::erase(layer.columns, "");
    return headings;
}

void add_row(const Sheet& sheet, const Record& record, const std::vector<std::string>& headings,
             book::UserLayer& layer, int number) {
    book::UserFeature feature{.name = "feature " + std::to_string(number)};
    std::string place;
    for (std::size_t i = 0; i < record.fields.size(); ++i) {
        const auto& text = record.fields[i];
        const auto heading = i < headings.size() ? headings[i] : std::string{};
        if (heading.empty() && !text.empty()) {
            layer.findings.push_back(
                finding_about(sheet.file, say("line {}", record.line),
                              {Level::error,
                               {},
                               {},
                               i < headings.size() ? say("Column {} has cells, but no heading.", i + 1)
                                                   : say("The line has more cells than the header."),
                               i < headings.size()
                                   ? say("Give it a heading, or remove it.")
                                   : say("Put quotes around a text that holds the separator, and do not part "
                                         "decimals with it.")}));
        } else if (!text.empty()) {
            feature.texts[heading] = text;
            place = is_geometry(heading) ? text : place;
        }
    }
    book::add_row(layer, std::move(feature), place);
}

book::UserLayer layer_of(const Sheet& sheet) {
    book::UserLayer layer{.name = sheet.file, .crs = {}};
    layer.findings = sheet.findings;
    if (sheet.records.empty() && !sheet.is_refused()) {
        layer.findings.push_back(
            finding_about(sheet.file, {},
                          {Level::error,
                           {},
                           {},
                           say("The file is empty."),
                           say("Give it a header line that names its fields, and one line per row.")}));
    }
    if (sheet.records.empty()) {
        return layer;
    }
    const auto headings = columns_of(sheet, layer);
    int number = 0;
    for (const auto& record : sheet.rows()) {
        add_row(sheet, record, headings, layer, ++number);
    }
    return layer;
}

}  // namespace

bool is_sheet_name(const std::string& path) {
    constexpr std::array<std::string_view, 5> endings{".csv", ".tsv", ".txt", ".xlsx", ".ods"};
    const auto ending = lower_case(std::filesystem::path(path).extension().string());
    return std::ranges::find(endings, ending) != endings.end();
}

book::UserLayer detail::read_layer(const AdoptOptions& options) {
    if (!options.bytes) {
        return book::read_user_rows(options.source, options.layer);
    }
    const auto stem = std::filesystem::path(options.source).stem().string();
    return layer_of(read_sheet(*options.bytes, stem, heads_a_layer, options.layer));
}

}  // namespace pipward::intake
