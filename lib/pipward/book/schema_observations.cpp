// SPDX-License-Identifier: MIT
// What is seen at the trees: stages of bloom and scores.
#include "pipward/book/detail/schema_groups.h"

namespace pipward::book::detail {

using enum Language;

BookTable bloom_observation_table() {
    return bound_table<BloomObservation>(
        {.name = "bloom_observation",
         .title = "Bloom observations",
         .description = "Bloom stage of a tree or an accession on a day.",
         .rows = &Orchard::bloom_observations,
         .entry_words = say("Bloom observation"),
         .columns = {
             column(&BloomObservation::tree, "tree", "Tree", "The observed tree.")
                 .refers_to({"tree", "label"})
                 .known_as(english, {"tree", "label", "tree label", "tree no"})
                 .known_as(german, {"Baum", "Baumnummer", "Baum-Nr.", "Etikett"}),
             column(&BloomObservation::accession, "accession", "Accession",
                    "The accession, where no single tree was observed.")
                 .refers_to({"accession", "name"})
                 .known_as(english, {"accession", "variety", "cultivar"})
                 .known_as(german, {"Sorte", "Akzession"}),
             column(&BloomObservation::observed_on, "observed_on", "Observed on", "Date of observation.")
                 .known_as(english, {"observed on", "date", "day"})
                 .known_as(german, {"Datum", "Tag"}),
             column(&BloomObservation::bbch, "bbch", "BBCH stage", "Growth stage on the BBCH scale.")
                 .known_as(english, {"BBCH", "BBCH stage", "stage", "growth stage"})
                 .known_as(german, {"BBCH-Stadium", "Stadium", "Entwicklungsstadium"}),
             column(&BloomObservation::open_percent, "open_percent", "Flowers open",
                    "Share of flowers that have opened.")
                 .in("%")
                 .within("percent")
                 .known_as(english, {"flowers open", "open", "percent open", "open flowers"})
                 .known_as(german, {"offen", "offene Blüten", "offene Blueten"}),
             column(&BloomObservation::observer, "observer", "Observer", "Observer.")
                 .known_as(english, {"observer", "seen by", "noted by"})
                 .known_as(german, {"Beobachter", "Beobachterin"}),
             remark_column(&BloomObservation::remark)}});
}

BookTable trait_table() {
    return bound_table<Trait>(
        {.name = "trait",
         .title = "Traits",
         .description = "What is scored, and on which part of the tree.",
         .rows = &Orchard::traits,
         .key = {"name"},
         .row_words = say("trait"),
         .entry_words = say("Trait"),
         .columns = {
             column(&Trait::name, "name", "Name", "The trait, in the word that the scores use.")
                 .known_as(english, {"name", "trait", "character"})
                 .known_as(german, {"Merkmal", "Eigenschaft"}),
             column(&Trait::kind, "kind", "Kind",
                    "Where it is scored; a score on flowers or fruit shows that the tree has bloomed.")
                 .within("trait_kind")
                 .known_as(english, {"kind", "scored on"})
                 .known_as(german, {"Art", "Organ"}),
             remark_column(&Trait::remark)}});
}

BookTable trait_score_table() {
    return bound_table<TraitScore>(
        {.name = "trait_score",
         .title = "Trait scores",
         .description = "Scores given to trees: taste, size, scab ...",
         .rows = &Orchard::trait_scores,
         .entry_words = say("Trait score"),
         .columns = {column(&TraitScore::tree, "tree", "Tree", "The tree scored.")
                         .refers_to({"tree", "label"})
                         .known_as(english, {"tree", "label", "tree label", "tree no"})
                         .known_as(german, {"Baum", "Baumnummer", "Baum-Nr.", "Etikett"}),
                     column(&TraitScore::scored_on, "scored_on", "Scored on", "Date of the score.")
                         .known_as(english, {"scored on", "date", "day"})
                         .known_as(german, {"Datum", "Tag"}),
                     column(&TraitScore::trait, "trait", "Trait", "What was scored.")
                         .known_as(english, {"trait", "character"})
                         .known_as(german, {"Merkmal", "Eigenschaft"}),
                     column(&TraitScore::score, "score", "Score", "The score, in the trait's own unit.")
                         .known_as(english, {"score", "value", "rating"})
                         .known_as(german, {"Wert", "Boniturnote", "Bonitur"}),
                     remark_column(&TraitScore::remark)}});
}

}  // namespace pipward::book::detail
