// SPDX-License-Identifier: MIT
#include "pipward/weather/import_ghcn.h"

#include <algorithm>
#include <span>

#include "pipward/weather/ghcn_long.h"
#include "pipward/weather/header_words.h"
#include "pipward/weather/table_import.h"
#include "pipward/weather/text_cells.h"

namespace pipward::weather {
namespace {

bool is_long_data(const std::vector<std::string>& fields) {
    return fields.size() >= ghcn_long::fields_needed && fields[ghcn_long::id].size() == 11 &&
           fields[ghcn_long::element].size() == 4 && fields[ghcn_long::date].size() == 8 &&
           parse_day(fields[ghcn_long::date], DayFormat::year_month_day);
}

bool has_column(const std::vector<std::string>& header, std::string_view name) {
    return std::ranges::any_of(header, [&](const std::string& cell) { return lower_case(cell) == name; });
}

bool is_long_header(const std::vector<std::string>& header) {
    return header.size() >= ghcn_long::fields_needed && lower_case(header[ghcn_long::element]) == "element";
}

bool is_wide_header(const std::vector<std::string>& header) {
    return has_column(header, "station") && has_column(header, "date") &&
           std::ranges::any_of(header, [](const auto& cell) { return header_words(cell).name == "tmax"; });
}

/// The second of the flags parted by commas.
bool fails_quality(std::string_view flags) {
    const auto first = flags.find(',');
    if (first == std::string_view::npos) {
        return false;
    }
    const std::string_view rest = flags.substr(first + 1);
    return !trimmed(rest.substr(0, rest.find(','))).empty();
}

struct FlaggedColumn {
    std::size_t value;
    std::size_t flags;
};

std::vector<FlaggedColumn> flagged_columns(const std::vector<std::string>& header) {
    std::vector<FlaggedColumn> columns;
    for (const std::string_view element : {"tmin", "tmax"}) {
        const auto value =
            std::ranges::find(header, element, [](const auto& cell) { return header_words(cell).name; });
        const auto flags = std::ranges::find(header, std::string(element) + "_attributes", lower_case);
        if (value != header.end() && flags != header.end()) {
            columns.push_back({static_cast<std::size_t>(value - header.begin()),
                               static_cast<std::size_t>(flags - header.begin())});
        }
    }
    return columns;
}

int reject_flagged(CsvText& csv) {
    int rejected = 0;
    const auto columns = flagged_columns(csv.records.front().fields);
    for (CsvRecord& record : std::span(csv.records).subspan(1)) {
        for (const FlaggedColumn& column : columns) {
            if (std::max(column.flags, column.value) < record.fields.size() &&
                fails_quality(record.fields[column.flags])) {
                record.fields[column.value].clear();
                ++rejected;
            }
        }
    }
    return rejected;
}

WeatherImport import_wide(CsvText csv, const WeatherFileOptions& options) {
    const int rejected = reject_flagged(csv);
    WeatherImport import = import_table(csv, options, true);
    note_rejected(rejected, options, import.findings);
    return import;
}

bool is_long(const CsvText& csv) {
    return !csv.records.empty() &&
           (is_long_data(csv.records.front().fields) || is_long_header(csv.records.front().fields));
}

}  // namespace

bool looks_like_ghcn(std::string_view text) {
    const auto end = text.find_first_of("\r\n");
    const CsvText first = read_csv(text.substr(0, end), {});
    return is_long(first) || (!first.records.empty() && is_wide_header(first.records.front().fields));
}

WeatherImport import_ghcn(std::string_view text, const WeatherFileOptions& options) {
    CsvText csv = read_csv(text, options.file);
    if (has_errors(csv.findings) || csv.records.empty()) {
        return import_table(csv, options, true);
    }
    return is_long(csv) ? import_ghcn_long(std::move(csv.records), options)
                        : import_wide(std::move(csv), options);
}

}  // namespace pipward::weather
