// SPDX-License-Identifier: MIT
// What lies on the ground: blocks, rows, weather stations and their days.
#include "pipward/book/detail/schema_groups.h"

namespace pipward::book::detail {

using enum Language;

BookTable block_table() {
    return bound_table<Block>(
        {.name = "block",
         .title = "Blocks",
         .description = "The parts of the orchard, as areas.",
         .rows = &Orchard::blocks,
         .areas = true,
         .key = {"name"},
         .row_words = say("block"),
         .takes_layers = true,
         .columns = {column(&Block::name, "name", "Name", "Name of the block, as it is called.")
                         .known_as(english,
                                   {"name", "block", "block name", "plot", "plot name", "field", "field name",
                                    "parcel", "quarter", "section", "orchard", "label", "code"})
                         .known_as(german, {"Quartier", "Parzelle", "Feld"})
                         .known_as(english, {"id"}),
                     remark_column(&Block::remark)}});
}

BookTable tree_row_table() {
    return bound_table<TreeRow>(
        {.name = "tree_row",
         .title = "Tree rows",
         .description = "Planted rows; the line's direction is the direction of numbering.",
         .rows = &Orchard::rows,
         .line = &TreeRow::line,
         .key = {"block", "name"},
         .row_words = say("row"),
         .takes_layers = true,
         .columns = {
             column(&TreeRow::block, "block", "Block", "The block that the row stands in.")
                 .refers_to({"block", "name"})
                 .known_as(english, {"block", "plot", "field", "parcel", "quarter", "section", "orchard"})
                 .known_as(german, {"Quartier", "Parzelle", "Feld"}),
             column(&TreeRow::name, "name", "Name", "Name or number of the row within its block.")
                 .known_as(english, {"name", "row", "row name", "tree row", "row number", "row no", "row nr",
                                     "number", "nr", "no", "label"})
                 .known_as(german, {"Reihe", "Reihen-Nr."})
                 .known_as(english, {"id"}),
             column(&TreeRow::spacing, "spacing_m", "Spacing", "Distance from one position to the next.")
                 .within("spacing_m")
                 .known_as(english, {"spacing m", "spacing", "tree spacing", "distance", "tree distance",
                                     "in-row spacing"})
                 .known_as(german, {"Abstand", "Baumabstand", "Pflanzabstand"}),
             column(&TreeRow::first_position, "first_position", "First position",
                    "Number of the first position on the line.")
                 .within("position")
                 .may_be_unknown()
                 .initially("1")
                 .known_as(english,
                           {"first position", "first pos", "first", "start", "start position", "first tree"})
                 .known_as(german, {"erste Position"}),
             remark_column(&TreeRow::remark)}});
}

BookTable station_table() {
    return bound_table<Station>(
        {.name = "station",
         .title = "Weather stations",
         .description = "Places whose daily temperatures the book holds.",
         .rows = &Orchard::stations,
         .point = &Station::at,
         .key = {"name"},
         .row_words = say("station"),
         .entry_words = say("Weather station"),
         .needs_place = true,
         .columns = {
             column(&Station::name, "name", "Name", "Name of the station.")
                 .known_as(english, {"station", "station name", "weather station"})
                 .known_as(german, {"Station", "Stationsname", "Wetterstation"}),
             column(&Station::elevation, "elevation_m", "Elevation", "Height of the station above sea level.")
                 .within("elevation_m")
                 .known_as(english, {"elevation", "altitude", "height"})
                 .known_as(german, {"Höhe", "Hoehe", "Seehöhe", "Meereshöhe"})}});
}

BookTable weather_day_table() {
    return bound_table<WeatherDay>(
        {.name = "weather_day",
         .title = "Daily weather",
         .description = "Lowest and highest air temperature of a day at a station.",
         .rows = &Orchard::weather,
         .key = {"station", "day"},
         .long_series = true,
         .columns = {column(&WeatherDay::station, "station", "Station", "The station.")
                         .refers_to({"station", "name"})
                         .known_as(english, {"station", "station name"})
                         .known_as(german, {"Station", "Stationsname"}),
                     column(&WeatherDay::day, "day", "Day", "The day.")
                         .known_as(english, {"day", "date"})
                         .known_as(german, {"Tag", "Datum"}),
                     column(&WeatherDay::t_min, "t_min_c", "Lowest", "Lowest air temperature of the day."),
                     column(&WeatherDay::t_max, "t_max_c", "Highest", "Highest air temperature of the day."),
                     column(&WeatherDay::source, "source", "Source", "Observed or forecast.")
                         .within("weather_source")
                         .initially("'observed'")}});
}

}  // namespace pipward::book::detail
