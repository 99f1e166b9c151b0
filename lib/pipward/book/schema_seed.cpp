// SPDX-License-Identifier: MIT
// From seed to seedling: lots, what germinated of them, what left them.
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
         .columns = {
             column(&SeedLot::code, "code", "Code", "Code on the bag.")
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
                    "The tags whose fruit it came from, separated by blanks.")
                 .known_as(english, {"from tags", "tags"})
                 .known_as(german, {"Anhänger", "Anhaenger"}),
             column(&SeedLot::washed_on, "washed_on", "Washed on", "Date of washing.")
                 .on_tab(say("Treatment"))
                 .known_as(english, {"washed on", "washed"})
                 .known_as(german, {"gewaschen", "gewaschen am"}),
             column(&SeedLot::stratified_from, "stratified_from", "Stratified from",
                    "First day of stratification.")
                 .on_tab(say("Treatment"))
                 .known_as(english, {"stratified from", "stratified from"})
                 .known_as(german, {"kalt ab", "stratifiziert ab"}),
             column(&SeedLot::cold, "stratification_c", "Stratified at", "Temperature of stratification.")
                 .on_tab(say("Treatment"))
                 .within("store_c")
                 .known_as(english, {"stratified at", "stratified at"})
                 .known_as(german, {"kalt bei", "stratifiziert bei"}),
             column(&SeedLot::stratified_to, "stratified_to", "Stratified to", "Last day of stratification.")
                 .on_tab(say("Treatment"))
                 .shown_before("stratification_c")
                 .known_as(english, {"stratified to", "stratified to"})
                 .known_as(german, {"kalt bis", "stratifiziert bis"}),
             column(&SeedLot::treatment, "treatment", "Treatment",
                    "Treatment of the seed: soaking, scarification ...")
                 .on_tab(say("Treatment"))
                 .known_as(english, {"treatment"})
                 .known_as(german, {"Behandlung"}),
             column(&SeedLot::medium, "medium", "Medium", "Medium that the seed is in.")
                 .on_tab(say("Treatment"))
                 .known_as(english, {"medium", "substrate"})
                 .known_as(german, {"Substrat"}),
             remark_column(&SeedLot::remark)}});
}

BookTable germination_count_table() {
    return bound_table<GerminationCount>(
        {.name = "germination_count",
         .title = "Germination counts",
         .description = "Cumulative germination of a seed lot.",
         .rows = &Orchard::germination_counts,
         .entry_words = say("Germination count"),
         .columns = {
             column(&GerminationCount::lot, "lot", "Seed lot", "The lot.")
                 .refers_to({"seed_lot", "code"})
                 .known_as(english, {"lot", "seed lot", "bag"})
                 .known_as(german, {"Saatgutpartie", "Partie", "Beutel"}),
             column(&GerminationCount::counted_on, "counted_on", "Counted on", "Date of the count.")
                 .known_as(english, {"counted on", "date", "day"})
                 .known_as(german, {"gezählt am", "gezaehlt am", "Datum", "Tag"}),
             column(&GerminationCount::germinated, "germinated", "Germinated", "Seeds germinated so far.")
                 .within("count")
                 .known_as(english, {"sprouted", "germinated"})
                 .known_as(german, {"gekeimt"})}});
}

BookTable seed_withdrawal_table() {
    return bound_table<SeedWithdrawal>(
        {.name = "seed_withdrawal",
         .title = "Seed withdrawal",
         .description = "Seeds withdrawn from a lot: potted, given away, rotten.",
         .rows = &Orchard::seed_withdrawals,
         .entry_words = say("Seed withdrawal"),
         .columns = {column(&SeedWithdrawal::lot, "lot", "Seed lot", "The lot.")
                         .refers_to({"seed_lot", "code"})
                         .known_as(english, {"lot", "seed lot", "bag"})
                         .known_as(german, {"Saatgutpartie", "Partie", "Beutel"}),
                     column(&SeedWithdrawal::withdrawn_on, "withdrawn_on", "Date", "Date of the withdrawal.")
                         .known_as(english, {"withdrawn on", "date", "day"})
                         .known_as(german, {"Datum", "Tag"}),
                     column(&SeedWithdrawal::seeds, "seeds", "Seeds", "Number of seeds.")
                         .within("count")
                         .known_as(english, {"seeds", "number of seeds"})
                         .known_as(german, {"Samen", "Kerne", "Samenzahl"}),
                     remark_column(&SeedWithdrawal::remark)}});
}

}  // namespace pipward::book::detail
