// SPDX-License-Identifier: MIT
// From seed to seedling: lots, what sprouted of them, what left them.
#include "pipward/book/detail/schema_groups.h"

namespace pipward::book::detail {

using enum Language;

BookTable seed_lot_table() {
    return bound_table<SeedLot>(
        {.name = "seed_lot",
         .title = "Seed lots",
         .description = "Seed of one cross that is treated alike.",
         .rows = &Orchard::seed_lots,
         .key = {"code"},
         .row_words = say("seed lot"),
         .entry_words = say("Seed lot"),
         .day_column = "washed_on",
         .columns = {column(&SeedLot::code, "code", "Code", "What stands on the bag.")
                         .on_tab(say("Lot"))
                         .known_as(english, {"code", "lot", "seed lot", "bag"})
                         .known_as(german, {"Saatgutpartie", "Partie", "Beutel"}),
                     column(&SeedLot::cross, "cross", "Cross", "Code of the cross.")
                         .refers_to({"cross_goal", "code"})
                         .known_as(english, {"cross", "cross code", "cross no"})
                         .known_as(german, {"Kreuzung", "Kreuzungsnummer"}),
                     column(&SeedLot::seeds, "seeds", "Seeds", "Number of seeds.")
                         .within("count")
                         .known_as(english, {"seeds", "number of seeds"})
                         .known_as(german, {"Samen", "Kerne", "Samenzahl"}),
                     column(&SeedLot::from_tags, "from_tags", "From tags",
                            "The tags whose fruit it came from, parted by spaces.")
                         .known_as(english, {"from tags", "tags"})
                         .known_as(german, {"Anhänger", "Anhaenger"}),
                     column(&SeedLot::washed_on, "washed_on", "Washed on", "Day of washing.")
                         .on_tab(say("Treatment"))
                         .known_as(english, {"washed on", "washed"})
                         .known_as(german, {"gewaschen", "gewaschen am"}),
                     column(&SeedLot::cold_from, "cold_from", "Cold from", "First day in the cold.")
                         .on_tab(say("Treatment"))
                         .known_as(english, {"cold from", "stratified from"})
                         .known_as(german, {"kalt ab", "stratifiziert ab"}),
                     column(&SeedLot::cold, "cold_c", "Cold at", "Temperature of the cold.")
                         .on_tab(say("Treatment"))
                         .within("store_c")
                         .known_as(english, {"cold at", "stratified at"})
                         .known_as(german, {"kalt bei", "stratifiziert bei"}),
                     column(&SeedLot::cold_to, "cold_to", "Cold to", "Last day in the cold.")
                         .on_tab(say("Treatment"))
                         .shown_before("cold_c")
                         .known_as(english, {"cold to", "stratified to"})
                         .known_as(german, {"kalt bis", "stratifiziert bis"}),
                     column(&SeedLot::treatment, "treatment", "Treatment",
                            "What was done to the seed: soak, scratch ...")
                         .on_tab(say("Treatment"))
                         .known_as(english, {"treatment"})
                         .known_as(german, {"Behandlung"}),
                     column(&SeedLot::medium, "medium", "Medium", "What the seed lies in.")
                         .on_tab(say("Treatment"))
                         .known_as(english, {"medium", "substrate"})
                         .known_as(german, {"Substrat"}),
                     note_column(&SeedLot::note)}});
}

BookTable sprout_count_table() {
    return bound_table<SproutCount>(
        {.name = "sprout_count",
         .title = "Sprout counts",
         .description = "Seeds of a lot that have sprouted, all in all, up to a day.",
         .rows = &Orchard::sprout_counts,
         .entry_words = say("Sprout count"),
         .columns = {column(&SproutCount::lot, "lot", "Seed lot", "The lot.")
                         .refers_to({"seed_lot", "code"})
                         .known_as(english, {"lot", "seed lot", "bag"})
                         .known_as(german, {"Saatgutpartie", "Partie", "Beutel"}),
                     column(&SproutCount::counted_on, "counted_on", "Counted on", "Day of the count.")
                         .known_as(english, {"counted on", "date", "day"})
                         .known_as(german, {"gezählt am", "gezaehlt am", "Datum", "Tag"}),
                     column(&SproutCount::sprouted, "sprouted", "Sprouted", "Seeds sprouted so far.")
                         .within("count")
                         .known_as(english, {"sprouted", "germinated"})
                         .known_as(german, {"gekeimt"})}});
}

BookTable seed_out_table() {
    return bound_table<SeedOut>(
        {.name = "seed_out",
         .title = "Seed taken out",
         .description = "Seeds that left a lot: potted, given away, rotten.",
         .rows = &Orchard::seeds_out,
         .entry_words = say("Seed taken out"),
         .columns = {column(&SeedOut::lot, "lot", "Seed lot", "The lot.")
                         .refers_to({"seed_lot", "code"})
                         .known_as(english, {"lot", "seed lot", "bag"})
                         .known_as(german, {"Saatgutpartie", "Partie", "Beutel"}),
                     column(&SeedOut::on_day, "on_day", "Day", "Day on which they left.")
                         .known_as(english, {"on day", "date", "day"})
                         .known_as(german, {"Datum", "Tag"}),
                     column(&SeedOut::seeds, "seeds", "Seeds", "Number of seeds.")
                         .within("count")
                         .known_as(english, {"seeds", "number of seeds"})
                         .known_as(german, {"Samen", "Kerne", "Samenzahl"}),
                     note_column(&SeedOut::note)}});
}

}  // namespace pipward::book::detail
