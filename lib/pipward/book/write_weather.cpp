// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <ogrsf_frmts.h>

#include <map>

#include "pipward/book/book.h"
#include "pipward/book/detail/check.h"
#include "pipward/book/detail/layers.h"
#include "pipward/book/detail/named_layer.h"
#include "pipward/book/detail/row_count.h"
#include "pipward/book/detail/transaction.h"
#include "pipward/book/records.h"
#include "pipward/record/words.h"

namespace pipward::book {
namespace {

detail::Whereabouts at(const WeatherDay& day, std::string_view field, std::string value) {
    return {"weather_day", day.station + " " + to_iso(day.day), field, std::move(value)};
}

const std::vector<BookColumn>& day_columns() {
    return table_of_records<WeatherDay>().columns;
}

void check_values(const WeatherDay& day, Findings& findings) {
    const auto row = row_of(day);
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        if (auto wrong = check_cell(day_columns()[i], row.cells[i])) {
            findings.push_back(
                detail::error(at(day, wrong->field, wrong->value), wrong->message, wrong->remedy));
        }
    }
    if (day.t_min > day.t_max) {
        findings.push_back(detail::error(at(day, "t_min_c", fmt::format("{}", day.t_min.degrees)),
                                         say("The lowest temperature is above the highest."),
                                         say("Correct the day in the source.")));
    }
}

void check_days(const std::vector<WeatherDay>& days) {
    Findings findings;
    std::map<Day, int> seen;
    for (const auto& day : days) {
        if (day.station != days.front().station) {
            findings.push_back(detail::error(at(day, "station", day.station),
                                             say("The days are of more than one station."),
                                             say("Write one station at a time.")));
        }
        if (++seen[day.day] == 2) {
            findings.push_back(detail::error(at(day, "day", to_iso(day.day)), say("The day is given twice."),
                                             say("Keep one of the two.")));
        }
        check_values(day, findings);
    }
    if (!findings.empty()) {
        throw Error(Trouble::input, findings);
    }
}

void expect_station(detail::Session& session, const std::string& location, const WeatherDay& day) {
    auto& stations = detail::named_layer(session, location, "station");
    stations.SetAttributeFilter(("name = " + detail::quoted_text(day.station)).c_str());
    stations.ResetReading();
    const OGRFeatureUniquePtr found(stations.GetNextFeature());
    stations.SetAttributeFilter(nullptr);
    if (found == nullptr) {
        throw Error(
            Trouble::input,
            detail::error(at(day, "station", day.station), say("The book has no station of this name."),
                          say("Add the station first, with its location and elevation.")));
    }
}

using Stored = std::map<Day, OGRFeatureUniquePtr>;

Stored stored_days(detail::Session& session, OGRLayer& layer, const std::string& station) {
    Stored stored;
    const auto before = session.messages->failures();
    layer.SetAttributeFilter(("station = " + detail::quoted_text(station)).c_str());
    const int field = layer.GetLayerDefn()->GetFieldIndex("day");
    for (auto& feature : layer) {
        if (const auto day = detail::get_field(*feature, field); std::holds_alternative<Day>(day)) {
            stored[std::get<Day>(day)] = std::move(feature);
        }
    }
    layer.SetAttributeFilter(nullptr);
    detail::expect_success(session, before, false, "read");
    return stored;
}

void fill(OGRFeature& feature, const WeatherDay& day) {
    const auto row = row_of(day);
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        detail::set_field(feature, feature.GetFieldIndex(std::string(day_columns()[i].name).c_str()),
                          row.cells[i]);
    }
}

void add_day(detail::Session& session, OGRLayer& layer, const WeatherDay& day) {
    OGRFeature feature(layer.GetLayerDefn());
    fill(feature, day);
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.CreateFeature(&feature) != OGRERR_NONE, "CreateFeature");
}

OGRFeatureUniquePtr renewed(const OGRFeature& stored, const WeatherDay& day) {
    OGRFeatureUniquePtr feature(stored.Clone());
    fill(*feature, day);
    return feature;
}

void replace_day(detail::Session& session, const std::string& location, OGRLayer& layer,
                 OGRFeature& feature) {
    const auto before = session.messages->failures();
    detail::expect_success(session, before, layer.SetFeature(&feature) != OGRERR_NONE, "SetFeature");
    const OGRFeatureUniquePtr now(layer.GetFeature(feature.GetFID()));
    if (now == nullptr || now->Equal(&feature) == 0) {
        throw detail::swallowed(location, "weather_day");
    }
}

/// What was measured takes the place of what was forecast.
bool supersedes(const WeatherDay& day, const OGRFeature& stored) {
    return day.source == WeatherSource::observed &&
           stored.GetFieldAsString("source") == to_word(WeatherSource::forecast);
}

WeatherWritten write_days(detail::Session& session, const std::string& location,
                          const std::vector<WeatherDay>& days, bool replace_existing, bool write) {
    expect_station(session, location, days.front());
    auto& layer = detail::named_layer(session, location, "weather_day");
    const auto stored = stored_days(session, layer, days.front().station);
    const auto rows = write ? detail::rows_in(session, "weather_day") : 0;
    WeatherWritten written;
    for (const auto& day : days) {
        const auto found = stored.find(day.day);
        if (found == stored.end()) {
            if (write) {
                add_day(session, layer, day);
            }
            ++written.added;
            continue;
        }
        const auto feature = renewed(*found->second, day);
        const bool replaces =
            (replace_existing || supersedes(day, *found->second)) && feature->Equal(found->second.get()) == 0;
        if (replaces && write) {
            replace_day(session, location, layer, *feature);
        }
        ++(replaces ? written.replaced : written.unchanged);
    }
    if (write) {
        detail::expect_rows(session, location, "weather_day", rows + written.added);
    }
    return written;
}

}  // namespace

WeatherWritten write_weather(const BookAt& book, const std::vector<WeatherDay>& days, bool replace_existing) {
    if (days.empty()) {
        return {};
    }
    check_days(days);
    WeatherWritten written;
    detail::change_book(book, {"weather_day"}, default_patience, [&](detail::Session& session) {
        written = write_days(session, book.location, days, replace_existing, true);
    });
    return written;
}

WeatherWritten weigh_weather(const BookAt& book, const std::vector<WeatherDay>& days, bool replace_existing) {
    if (days.empty()) {
        return {};
    }
    check_days(days);
    WeatherWritten written;
    detail::look_into_book(book, default_patience, [&](detail::Session& session) {
        written = write_days(session, book.location, days, replace_existing, false);
    });
    return written;
}

}  // namespace pipward::book
