// SPDX-License-Identifier: MIT
// From the wanted cross to the harvested fruit: goals, pollen and its tests, flowers pollinated, fruit.
#include "pipward/book/detail/schema_groups.h"

namespace pipward::book::detail {

using enum Language;

BookTable cross_goal_table() {
    return bound_table<CrossGoal>(
        {.name = "cross_goal",
         .title = "Cross goals",
         .description = "The crosses that are wanted in a season.",
         .rows = &Orchard::goals,
         .key = {"code"},
         .row_words = say("cross"),
         .entry_words = say("Cross goal"),
         .columns = {column(&CrossGoal::code, "code", "Code", "Short code of the cross, as on tags.")
                         .known_as(english, {"code", "cross", "cross code", "cross no"})
                         .known_as(german, {"Kreuzung", "Kreuzungsnummer"}),
                     column(&CrossGoal::season, "season", "Season", "Calendar year of the bloom.")
                         .known_as(english, {"season", "year"})
                         .known_as(german, {"Jahr", "Saison"}),
                     column(&CrossGoal::seed_parent, "seed_parent", "Seed parent",
                            "The accession that shall bear the seed.")
                         .refers_to({"accession", "name"})
                         .known_as(english, {"seed parent", "mother", "female parent", "female"})
                         .known_as(german, {"Mutter", "Muttersorte"}),
                     column(&CrossGoal::pollen_parent, "pollen_parent", "Pollen parent",
                            "The accession or blend that shall give the pollen.")
                         .refers_to({"accession", "name"})
                         .or_to({"blend", "name"}, say("accession or blend"))
                         .known_as(english, {"pollen parent", "father", "male parent", "male"})
                         .known_as(german, {"Vater", "Vatersorte"}),
                     column(&CrossGoal::seedlings_wanted, "seedlings_wanted", "Seedlings wanted",
                            "Number of seedlings wanted.")
                         .within("wanted")
                         .known_as(english, {"seedlings wanted", "seedlings", "wanted"})
                         .known_as(german, {"Sämlinge", "Saemlinge"}),
                     column(&CrossGoal::priority, "priority", "Priority",
                            "Urgency of the cross: 1 is the most urgent.")
                         .within("priority")
                         .known_as(english, {"priority", "rank"})
                         .known_as(german, {"Rang", "Dringlichkeit"}),
                     remark_column(&CrossGoal::remark)}});
}

BookTable pollen_lot_table() {
    return bound_table<PollenLot>(
        {.name = "pollen_lot",
         .title = "Pollen lots",
         .description = "Pollen collected and stored.",
         .rows = &Orchard::pollen_lots,
         .key = {"code"},
         .row_words = say("pollen lot"),
         .entry_words = say("Pollen lot"),
         .columns = {
             column(&PollenLot::code, "code", "Code", "Code on the vial.")
                 .known_as(english, {"code", "lot", "pollen lot"})
                 .known_as(german, {"Pollenpartie", "Partie"}),
             column(&PollenLot::donor, "donor", "Donor", "The accession or blend that the pollen is of.")
                 .refers_to({"accession", "name"})
                 .or_to({"blend", "name"}, say("accession or blend"))
                 .known_as(english, {"donor", "pollen donor", "accession", "variety"})
                 .known_as(german, {"Spender", "Sorte"}),
             column(&PollenLot::collected_on, "collected_on", "Collected on",
                    "Date on which the flowers were collected.")
                 .known_as(english, {"collected on", "collected on", "date"})
                 .known_as(german, {"gesammelt", "gesammelt am", "Datum"}),
             column(&PollenLot::flowers, "flowers", "Flowers", "Number of flowers collected.")
                 .within("count")
                 .known_as(english, {"flowers"})
                 .known_as(german, {"Blüten", "Blueten"}),
             column(&PollenLot::mass, "mass_mg", "Mass", "Mass of dry pollen.")
                 .within("mass_mg")
                 .known_as(english, {"mass", "weight"})
                 .known_as(german, {"Masse", "Gewicht"}),
             column(&PollenLot::store, "store", "Store", "Where it is stored.")
                 .within("pollen_store")
                 .known_as(english, {"store", "kept in"})
                 .known_as(german, {"Lager", "Lagerung"}),
             column(&PollenLot::humidity_percent, "humidity_percent", "Humidity",
                    "Relative humidity in the store.")
                 .in("%")
                 .within("percent")
                 .known_as(english, {"humidity", "relative humidity"})
                 .known_as(german, {"Luftfeuchte", "Feuchte"}),
             column(&PollenLot::used_up_on, "used_up_on", "Used up on", "Day on which none was left.")
                 .known_as(english, {"used up on", "used up"})
                 .known_as(german, {"verbraucht", "verbraucht am"}),
             remark_column(&PollenLot::remark)}});
}

BookTable pollen_test_table() {
    return bound_table<PollenTest>(
        {.name = "pollen_test",
         .title = "Pollen tests",
         .description = "Germination tests of pollen lots.",
         .rows = &Orchard::pollen_tests,
         .entry_words = say("Pollen test"),
         .columns = {column(&PollenTest::lot, "lot", "Pollen lot", "The lot tested.")
                         .refers_to({"pollen_lot", "code"})
                         .known_as(english, {"lot", "pollen lot", "vial"})
                         .known_as(german, {"Pollenpartie", "Partie"}),
                     column(&PollenTest::tested_on, "tested_on", "Tested on", "Date of the test.")
                         .known_as(english, {"tested on", "date", "day"})
                         .known_as(german, {"Datum", "Tag"}),
                     column(&PollenTest::grains, "grains", "Grains", "Grains counted.")
                         .within("count")
                         .known_as(english, {"grains", "pollen grains", "counted"})
                         .known_as(german, {"Körner", "Koerner", "Pollenkörner", "Pollenkoerner"}),
                     column(&PollenTest::germinated, "germinated", "Germinated", "Grains with a tube.")
                         .within("count")
                         .known_as(english, {"germinated"})
                         .known_as(german, {"gekeimt"})}});
}

BookTable pollen_move_table() {
    return bound_table<PollenMove>(
        {.name = "pollen_move",
         .title = "Moves of pollen",
         .description = "Pollen lots brought to another store.",
         .rows = &Orchard::pollen_moves,
         .entry_words = say("Move of pollen"),
         .columns = {column(&PollenMove::lot, "lot", "Pollen lot", "The lot moved.")
                         .refers_to({"pollen_lot", "code"})
                         .known_as(english, {"lot", "pollen lot", "vial"})
                         .known_as(german, {"Pollenpartie", "Partie"}),
                     column(&PollenMove::moved_on, "moved_on", "Moved on", "First day in the new store.")
                         .known_as(english, {"moved on", "date", "day"})
                         .known_as(german, {"umgelagert am", "Datum", "Tag"}),
                     column(&PollenMove::store, "store", "Store", "The new store.")
                         .within("pollen_store")
                         .known_as(english, {"store", "moved to", "kept in"})
                         .known_as(german, {"Lager", "Lagerung"}),
                     remark_column(&PollenMove::remark)}});
}

BookTable branch_work_table() {
    return bound_table<BranchWork>(
        {.name = "branch_work",
         .title = "Work at branches",
         .description = "Branches bagged, emasculated, unbagged, cut and forced.",
         .rows = &Orchard::branch_works,
         .entry_words = say("Work at a branch"),
         .columns = {
             column(&BranchWork::task, "task", "Task", "What was done.")
                 .within("branch_task")
                 .known_as(english, {"task", "work", "done"})
                 .known_as(german, {"Arbeit", "Aufgabe"}),
             column(&BranchWork::done_on, "done_on", "Done on", "Date of the work.")
                 .known_as(english, {"done on", "date", "day"})
                 .known_as(german, {"erledigt am", "Datum", "Tag"}),
             column(&BranchWork::tree, "tree", "Tree",
                    "The tree of the branch; needed where it has no tag yet.")
                 .refers_to({"tree", "label"})
                 .known_as(english, {"tree", "tree label", "tree no"})
                 .known_as(german, {"Baum", "Baumnummer", "Baum-Nr."}),
             column(&BranchWork::cross, "cross", "Cross", "Code of the cross; of bags without a tag only.")
                 .refers_to({"cross_goal", "code"})
                 .known_as(english, {"cross", "cross code", "cross no"})
                 .known_as(german, {"Kreuzung", "Kreuzungsnummer"}),
             column(&BranchWork::tag, "tag", "Tag", "The tag at the branch, once it has one.")
                 .refers_to({"pollination", "tag"})
                 .known_as(english, {"tag", "tag no", "branch tag"})
                 .known_as(german, {"Anhänger", "Anhaenger", "Etikett"}),
             column(&BranchWork::flowers, "flowers", "Flowers",
                    "Number of flowers bagged, emasculated or on the cut branch.")
                 .within("count")
                 .known_as(english, {"flowers"})
                 .known_as(german, {"Blüten", "Blueten"}),
             remark_column(&BranchWork::remark)}});
}

BookTable fruit_set_table() {
    return bound_table<FruitSetCount>(
        {.name = "fruit_set",
         .title = "Fruit set counts",
         .description = "Fruit counted on tagged branches after fruit drop.",
         .rows = &Orchard::fruit_set_counts,
         .entry_words = say("Fruit set count"),
         .columns = {column(&FruitSetCount::tag, "tag", "Tag", "The tag of the pollination.")
                         .refers_to({"pollination", "tag"})
                         .known_as(english, {"tag", "tag no", "branch tag"})
                         .known_as(german, {"Anhänger", "Anhaenger", "Etikett"}),
                     column(&FruitSetCount::counted_on, "counted_on", "Counted on", "Date of the count.")
                         .known_as(english, {"counted on", "date", "day"})
                         .known_as(german, {"gezählt am", "gezaehlt am", "Datum", "Tag"}),
                     column(&FruitSetCount::fruits, "fruits_set", "Fruits set",
                            "Number of fruits that hang; 0 where none is left.")
                         .within("count")
                         .known_as(english, {"fruits set", "fruit set", "fruitlets", "set"})
                         .known_as(german, {"Fruchtansatz", "Junifrüchte"}),
                     remark_column(&FruitSetCount::remark)}});
}

BookTable pollination_table() {
    return bound_table<Pollination>(
        {.name = "pollination",
         .title = "Pollinations",
         .description = "Flowers pollinated, by tag.",
         .rows = &Orchard::pollinations,
         .key = {"tag", "pollinated_on"},
         .row_words = say("pollination tag"),
         .entry_words = say("Pollination"),
         .columns = {
             column(&Pollination::tag, "tag", "Tag",
                    "Code on the tag at the branch; further passes on the branch have the same.")
                 .known_as(english, {"tag", "tag no", "branch tag"})
                 .known_as(german, {"Anhänger", "Anhaenger", "Etikett"}),
             column(&Pollination::cross, "cross", "Cross", "Code of the cross.")
                 .refers_to({"cross_goal", "code"})
                 .known_as(english, {"cross", "cross code", "cross no"})
                 .known_as(german, {"Kreuzung", "Kreuzungsnummer"}),
             column(&Pollination::tree, "tree", "Tree", "The tree pollinated, a tree of the seed parent.")
                 .refers_to({"tree", "label"})
                 .known_as(english, {"tree", "tree label", "tree no"})
                 .known_as(german, {"Baum", "Baumnummer", "Baum-Nr."}),
             column(&Pollination::pollinated_on, "pollinated_on", "Pollinated on", "Date of the pollination.")
                 .known_as(english, {"pollinated on", "pollinated on", "date", "day"})
                 .known_as(german, {"bestäubt am", "bestaeubt am", "Datum", "Tag"}),
             column(&Pollination::flowers, "flowers", "Flowers", "Number of flowers pollinated.")
                 .within("count")
                 .known_as(english, {"flowers", "flowers pollinated"})
                 .known_as(german, {"Blüten", "Blueten"}),
             column(&Pollination::lot, "lot", "Pollen lot", "The pollen used, where it came from a lot.")
                 .refers_to({"pollen_lot", "code"})
                 .known_as(english, {"lot", "pollen lot", "pollen", "vial"})
                 .known_as(german, {"Pollenpartie", "Partie", "Pollen"}),
             column(&Pollination::pass, "pass", "Pass",
                    "Which round on the same flowers; the next one under its tag where it is not given.")
                 .within("pass")
                 .known_as(english, {"pass", "round"})
                 .known_as(german, {"Durchgang"}),
             remark_column(&Pollination::remark)}});
}

BookTable fruit_table() {
    return bound_table<Fruit>(
        {.name = "fruit",
         .title = "Fruit",
         .description = "Fruit harvested from tagged branches, and the seed in it.",
         .rows = &Orchard::fruits,
         .entry_words = say("Harvest"),
         .columns = {column(&Fruit::tag, "tag", "Tag", "The tag of the pollination.")
                         .refers_to({"pollination", "tag"})
                         .known_as(english, {"tag", "tag no", "branch tag"})
                         .known_as(german, {"Anhänger", "Anhaenger", "Etikett"}),
                     column(&Fruit::harvested_on, "harvested_on", "Harvested on", "Date of harvest.")
                         .known_as(english, {"harvested on", "picked on", "date", "day"})
                         .known_as(german, {"geerntet am", "gepflückt am", "gepflueckt am", "Datum", "Tag"}),
                     column(&Fruit::fruits, "fruits", "Fruits", "Number of fruits.")
                         .within("count")
                         .known_as(english, {"fruits", "fruit"})
                         .known_as(german, {"Früchte", "Fruechte"}),
                     column(&Fruit::seeds_sound, "seeds_sound", "Sound seeds", "Full seeds found.")
                         .within("count")
                         .known_as(english, {"sound seeds", "full seeds", "good seeds"})
                         .known_as(german, {"volle Samen", "gesunde Samen", "volle Kerne"}),
                     column(&Fruit::seeds_empty, "seeds_empty", "Empty seeds", "Flat or hollow seeds found.")
                         .within("count")
                         .known_as(english, {"empty seeds", "flat seeds", "hollow seeds"})
                         .known_as(german, {"leere Samen", "taube Samen", "taube Kerne"}),
                     remark_column(&Fruit::remark)}});
}

}  // namespace pipward::book::detail
