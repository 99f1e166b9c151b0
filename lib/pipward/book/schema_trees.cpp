// SPDX-License-Identifier: MIT
// What grows: accessions, blends of their pollen, and the single trees.
#include "pipward/book/detail/schema_groups.h"

namespace pipward::book::detail {
namespace {

using enum Language;
using Columns = std::vector<BoundColumn<Accession>>;

Columns descent_columns() {
    return {
        column(&Accession::seed_parent, "seed_parent", "Seed parent", "The accession that bore the seed.")
            .refers_to({"accession", "name"})
            .known_as(english, {"seed parent", "mother", "female parent", "female", "maternal"})
            .known_as(german, {"Mutter", "Muttersorte"})
            .known_as(french, {"mère"})
            .in_passports("ANCEST")
            .told_with_trees(),
        column(&Accession::pollen_parent, "pollen_parent", "Pollen parent",
               "The accession or blend that gave the pollen.")
            .refers_to({"accession", "name"})
            .or_to({"blend", "name"}, say("accession or blend"))
            .known_as(english, {"pollen parent", "father", "male parent", "male", "paternal", "pollen donor",
                                "pollinator"})
            .known_as(german, {"Vater", "Vatersorte"})
            .known_as(french, {"père"})
            .in_passports("ANCEST")
            .told_with_trees(),
    };
}

Columns gene_columns() {
    return {
        column(&Accession::s_alleles, "s_alleles", "S-alleles", "Self-incompatibility alleles, as \"S2 S3\".")
            .on_tab(say("Breeding"))
            .known_as(english,
                      {"S alleles", "S allele", "S genotype", "S allele type", "incompatibility alleles"})
            .known_as(german, {"S-Allel", "S-Gen", "S-Genotyp"})
            .in_passports("REMARKS")
            .told_with_trees(),
        column(&Accession::ploidy, "ploidy", "Ploidy", "Number of chromosome sets.")
            .on_tab(say("Breeding"))
            .within("ploidy")
            .known_as(english, {"ploidy", "ploidy level", "chromosome sets"})
            .known_as(german, {"Ploidie"})
            .in_passports("REMARKS")
            .told_with_trees(),
        column(&Accession::species, "species", "Species",
               "Botanical name, as \"Malus domestica\" or \"Pyrus communis\".")
            .shown_before("seed_parent")
            .known_as(english, {"species", "species name", "botanical name", "fruit", "fruit kind", "crop",
                                "taxon", "genus"})
            .known_as(german, {"Obstart", "Art"})
            .known_as(french, {"espèce"})
            .usual("Malus domestica", english, {"apple", "apples", "Malus"})
            .usual("Malus domestica", german, {"Apfel"})
            .usual("Malus domestica", french, {"pomme", "pommier"})
            .usual("Pyrus communis", english, {"pear", "pears", "Pyrus"})
            .usual("Pyrus communis", german, {"Birne"})
            .usual("Pyrus communis", french, {"poire", "poirier"})
            .in_passports("SPECIES")
            .told_with_trees(),
        column(&Accession::sport_of, "sport_of", "Sport of",
               "The accession that it is a bud sport or a clone of: its genes are the same.")
            .refers_to({"accession", "name"})
            .known_as(english, {"sport of", "sport", "clone of", "mutant of", "mutation of"})
            .known_as(german, {"Mutante von"})
            .in_passports("ANCEST"),
    };
}

Columns need_columns() {
    return {
        column(&Accession::seed_ripe_days, "seed_ripe_days", "Seed ripe after",
               "Days from full bloom until the seed is ripe for sowing.")
            .on_tab(say("Breeding"))
            .in("d")
            .within("seed_ripe_days")
            .known_as(english, {"seed ripe days", "seed ripe after", "days to ripe seed"})
            .in_passports("REMARKS"),
        column(&Accession::chill, "chill_portions", "Chill requirement",
               "Winter chill that its buds need, where it is known from elsewhere.")
            .on_tab(say("Breeding"))
            .within("chill_portions")
            .known_as(english, {"chill portions", "chill requirement", "chill requirement", "chilling",
                                "chilling requirement"})
            .in_passports("REMARKS"),
        column(&Accession::protected_until, "protected_until", "Protected until",
               "Last day on which plant breeders' rights or a licence bind it.")
            .on_tab(say("Breeding"))
            .known_as(english, {"protected until", "protection", "PBR until", "rights until", "licence until",
                                "license until"})
            .in_passports("REMARKS"),
        remark_column(&Accession::remark).in_passports("REMARKS"),
    };
}

Columns accession_columns() {
    Columns columns{
        column(&Accession::name, "name", "Name", "Name of the accession, as on labels.")
            .on_tab(say("Accession"))
            .known_as(english, {"name", "accession", "accession name", "variety", "cultivar", "variety name",
                                "cultivar name", "genotype", "selection", "clone", "cv"})
            .known_as(german, {"Sorte", "Sortenname"})
            .known_as(french, {"variété"})
            .known_as(english, {"label", "code"})
            .in_passports("ACCENAME"),
        column(&Accession::kind, "kind", "Kind", "Kind of the accession.")
            .within("accession_kind")
            .known_as(english, {"kind", "accession kind", "type", "sort", "class", "status"})
            .known_as(german, {"Typ"})
            .in_passports("SAMPSTAT")
            .told_with_trees(),
    };
    for (auto* more : {descent_columns, gene_columns, need_columns}) {
        for (auto& column : more()) {
            columns.push_back(std::move(column));
        }
    }
    return columns;
}

}  // namespace

BookTable accession_table() {
    return bound_table<Accession>(
        {.name = "accession",
         .title = "Accessions",
         .description = "What the trees are: cultivars, selections, seedlings, species.",
         .rows = &Orchard::accessions,
         .key = {"name"},
         .row_words = say("accession"),
         .entry_words = say("Accession"),
         .takes_layers = true,
         .columns = accession_columns()});
}

BookTable blend_table() {
    return bound_table<BlendMember>(
        {.name = "blend",
         .title = "Pollen blends",
         .description = "Mixtures of pollen: one row for each member of a blend.",
         .rows = &Orchard::blend_members,
         .key = {"name", "member"},
         .entry_words = say("Member of a blend"),
         .columns = {
             column(&BlendMember::name, "name", "Blend", "Name of the blend.")
                 .known_as(english, {"blend", "blend name", "mixture"})
                 .known_as(german, {"Mischung", "Pollenmischung"}),
             column(&BlendMember::member, "member", "Member", "An accession whose pollen is in the blend.")
                 .refers_to({"accession", "name"})
                 .known_as(english, {"member", "accession", "variety"})
                 .known_as(german, {"Sorte", "Bestandteil"}),
             column(&BlendMember::share, "share", "Share", "Part of the blend; unknown means equal parts.")
                 .known_as(english, {"share", "part"})
                 .known_as(german, {"Anteil"})}});
}

BookTable tree_table() {
    return bound_table<Tree>(
        {.name = "tree",
         .title = "Trees",
         .description = "Every tree with its place on the ground, its row and its position.",
         .rows = &Orchard::trees,
         .point = &Tree::at,
         .key = {"label"},
         .row_words = say("tree"),
         .entry_words = say("Tree"),
         .takes_layers = true,
         .columns = {
             column(&Tree::label, "label", "Label", "The tree's label.")
                 .on_tab(say("Tree"))
                 .known_as(english,
                           {"label", "tree label", "tag", "tree tag", "tree number", "tree no", "tree nr",
                            "tree id", "tree name", "tree code", "tree", "plant id", "plant no"})
                 .known_as(german, {"Baumnummer", "Baum-Nr.", "Baum", "Etikett"})
                 .known_as(french, {"arbre"})
                 .known_as(english, {"number"})
                 .known_as(german, {"Nummer"})
                 .known_as(english, {"code"})
                 .known_as(german, {"Nr."})
                 .known_as(english, {"no", "name", "id"}),
             column(&Tree::accession, "accession", "Accession", "What the tree is.")
                 .refers_to({"accession", "name"})
                 .known_as(english, {"accession", "variety", "cultivar", "accession name", "variety name",
                                     "cultivar name", "genotype", "clone", "selection", "cv", "var", "sort"})
                 .known_as(german, {"Sorte", "Sortenname"})
                 .known_as(french, {"variété"})
                 .known_as(german, {"Akzession"}),
             column(&Tree::block, "block", "Block", "The block that it stands in.")
                 .on_tab(say("Location"))
                 .refers_to({"block", "name"})
                 .known_as(english, {"block", "plot", "field", "parcel", "quarter", "section", "orchard"})
                 .known_as(german, {"Quartier", "Parzelle", "Feld"})
                 .known_as(french, {"parcelle"}),
             column(&Tree::row, "row", "Row", "The row within the block.")
                 .on_tab(say("Location"))
                 .refers_to({.table = "tree_row", .column = "name", .within = "block"})
                 .known_as(english, {"row", "tree row", "row number", "row no", "row nr", "line"})
                 .known_as(german, {"Reihe", "Reihen-Nr.", "Reihennummer"})
                 .known_as(french, {"rang"}),
             column(&Tree::position, "position", "Position", "Position in the row, counted in its direction.")
                 .on_tab(say("Location"))
                 .within("position")
                 .known_as(english, {"position", "pos", "tree position", "position no", "pos no", "pos nr",
                                     "place", "place in row", "spot", "slot"})
                 .known_as(german, {"Platz", "Stelle"})
                 .known_as(french, {"emplacement"}),
             column(&Tree::rootstock, "rootstock", "Rootstock", "What it is grafted on.")
                 .known_as(english, {"rootstock", "stock", "rstock", "RS", "understock"})
                 .known_as(german, {"Unterlage"})
                 .known_as(french, {"porte-greffe"}),
             column(&Tree::planted_on, "planted_on", "Planted on", "Date of planting.")
                 .known_as(english, {"planted on", "planted", "planting date", "date planted", "plant date",
                                     "planting", "planting day"})
                 .known_as(german, {"gepflanzt", "Pflanzdatum", "Pflanzung", "Pflanztag"})
                 .known_as(french, {"planté", "planté le"}),
             column(&Tree::removed_on, "removed_on", "Removed on",
                    "Date of removal; unknown while it stands.")
                 .known_as(english, {"removed on", "removed", "removal date", "date removed", "grubbed",
                                     "grubbed on", "dead on", "felled"})
                 .known_as(german, {"gerodet", "Rodung", "Rodungsdatum", "entfernt"})
                 .known_as(french, {"arraché"}),
             column(&Tree::purpose, "purpose", "Purpose", "Purpose of the tree.")
                 .shown_before("rootstock")
                 .within("tree_purpose")
                 .initially("'other'")
                 .known_as(english, {"purpose", "use", "usage", "role", "function", "tree type"})
                 .known_as(german, {"Zweck", "Nutzung"}),
             column(&Tree::placed_by, "placed_by", "Placed by", "How its place on the map was found.")
                 .on_tab(say("Location"))
                 .within("placed_by")
                 .known_as(english,
                           {"placed by", "place method", "survey method", "position source", "measured by"}),
             column(&Tree::accuracy, "accuracy_m", "Accuracy", "Likely error of its place.")
                 .on_tab(say("Location"))
                 .within("accuracy_m")
                 .known_as(english, {"accuracy m", "accuracy", "precision", "hacc", "horizontal accuracy",
                                     "GNSS accuracy", "GPS accuracy"})
                 .known_as(german, {"Genauigkeit"}),
             column(&Tree::elevation, "elevation_m", "Elevation",
                    "Height above sea level; where unknown, the point's third coordinate, else the "
                    "station's.")
                 .on_tab(say("Location"))
                 .within("elevation_m")
                 .known_as(english, {"elevation m", "elevation", "elev", "ele", "altitude", "alt", "height",
                                     "height m", "masl"})
                 .known_as(german, {"Hoehe", "Höhe", "Seehoehe", "Seehöhe", "Meereshoehe", "Meereshöhe"}),
             remark_column(&Tree::remark)}});
}

}  // namespace pipward::book::detail
