// SPDX-License-Identifier: MIT
#include "pipward/book/adopt_words.h"

#include <array>
#include <cctype>

#include "pipward/value/utf8.h"

namespace pipward::book {
namespace {

// U+00C0 to U+00FF, a letter each; a blank for those without a plain one.
constexpr std::string_view plain_latin = "aaaaaaaceeeeiiii nooooo ouuuuy saaaaaaaceeeeiiii nooooo ouuuuy y";

char plain(char32_t c) {
    if (c < 0x80) {
        return static_cast<char>(std::tolower(static_cast<int>(c)));
    }
    return c >= 0xC0 && c <= 0xFF ? plain_latin[c - 0xC0] : ' ';
}

bool is_kept_letter(char32_t c) {
    return c >= 0x100 && c != replacement_character;
}

std::vector<AdoptColumn> make_columns() {
    return {
        {"tree", "label", {"label",  "treelabel", "tag",     "treetag",    "treenumber",
                           "treeno", "treenr",    "treeid",  "treename",   "treecode",
                           "tree",   "plantid",   "plantno", "baumnummer", "baumnr",
                           "baum",   "etikett",   "arbre",   "number",     "nummer",
                           "code",   "nr",        "no",      "name",       "id"}},
        {"tree",
         "accession",
         {"accession", "variety", "cultivar", "accessionname", "varietyname", "cultivarname", "genotype",
          "clone", "selection", "cv", "var", "sort", "sorte", "sortenname", "variete", "akzession"}},
        {"tree",
         "block",
         {"block", "plot", "field", "parcel", "quarter", "section", "orchard", "quartier", "parzelle", "feld",
          "parcelle"}},
        {"tree",
         "row",
         {"row", "treerow", "rownumber", "rowno", "rownr", "line", "reihe", "reihennr", "reihennummer",
          "rang"}},
        {"tree",
         "position",
         {"position", "pos", "treeposition", "positionno", "posno", "posnr", "place", "placeinrow", "spot",
          "slot", "platz", "stelle", "emplacement"}},
        {"tree",
         "rootstock",
         {"rootstock", "stock", "rstock", "rs", "understock", "unterlage", "portegreffe"}},
        {"tree",
         "planted_on",
         {"plantedon", "planted", "plantingdate", "dateplanted", "plantdate", "planting", "plantingday",
          "gepflanzt", "pflanzdatum", "pflanzung", "pflanztag", "plante", "plantele"}},
        {"tree",
         "removed_on",
         {"removedon", "removed", "removaldate", "dateremoved", "grubbed", "grubbedon", "deadon", "felled",
          "gerodet", "rodung", "rodungsdatum", "entfernt", "arrache"}},
        {"tree", "purpose", {"purpose", "use", "usage", "role", "function", "treetype", "zweck", "nutzung"}},
        {"tree", "placed_by", {"placedby", "placemethod", "surveymethod", "positionsource", "measuredby"}},
        {"tree",
         "accuracy_m",
         {"accuracym", "accuracy", "precision", "hacc", "horizontalaccuracy", "gnssaccuracy", "gpsaccuracy",
          "genauigkeit"}},
        {"tree",
         "elevation_m",
         {"elevationm", "elevation", "elev", "altitude", "alt", "height", "heightm", "masl", "hoehe", "hohe",
          "seehoehe", "seehohe", "meereshoehe", "meereshohe"}},
        {"tree",
         "note",
         {"note", "notes", "remark", "remarks", "comment", "comments", "memo", "bemerkung", "bemerkungen",
          "notiz", "kommentar", "remarque"}},
        {"accession",
         "name",
         {"name", "accession", "accessionname", "variety", "cultivar", "varietyname", "cultivarname",
          "genotype", "selection", "clone", "cv", "sorte", "sortenname", "variete", "label", "code"}},
        {"accession", "kind", {"kind", "accessionkind", "type", "sort", "class", "status", "typ"}},
        {"accession",
         "species",
         {"species", "speciesname", "botanicalname", "fruit", "fruitkind", "crop", "taxon", "genus",
          "obstart", "art", "espece"}},
        {"accession",
         "seed_parent",
         {"seedparent", "mother", "femaleparent", "female", "maternal", "mutter", "muttersorte", "mere"}},
        {"accession",
         "pollen_parent",
         {"pollenparent", "father", "maleparent", "male", "paternal", "pollendonor", "pollinator", "vater",
          "vatersorte", "pere"}},
        {"accession", "sport_of", {"sportof", "sport", "cloneof", "mutantof", "mutationof", "mutantevon"}},
        {"accession",
         "s_alleles",
         {"salleles", "sallele", "sgenotype", "salleletype", "incompatibilityalleles", "sallel", "sgen",
          "sgenotyp"}},
        {"accession", "ploidy", {"ploidy", "ploidylevel", "chromosomesets", "ploidie"}},
        {"accession", "seed_ripe_days", {"seedripedays", "seedripeafter", "daystoripeseed"}},
        {"accession",
         "chill_portions",
         {"chillportions", "chillneed", "chillrequirement", "chilling", "chillingrequirement"}},
        {"accession",
         "protected_until",
         {"protecteduntil", "protection", "pbruntil", "rightsuntil", "licenceuntil", "licenseuntil"}},
        {"accession",
         "note",
         {"note", "notes", "remark", "remarks", "comment", "comments", "memo", "bemerkung", "bemerkungen",
          "notiz"}},
        {"tree_row",
         "block",
         {"block", "plot", "field", "parcel", "quarter", "section", "orchard", "quartier", "parzelle",
          "feld"}},
        {"tree_row",
         "name",
         {"name", "row", "rowname", "treerow", "rownumber", "rowno", "rownr", "number", "nr", "no", "label",
          "reihe", "reihennr", "id"}},
        {"tree_row",
         "spacing_m",
         {"spacingm", "spacing", "treespacing", "distance", "treedistance", "inrowspacing", "abstand",
          "baumabstand", "pflanzabstand"}},
        {"tree_row",
         "first_position",
         {"firstposition", "firstpos", "first", "start", "startposition", "firsttree", "ersteposition"}},
        {"tree_row",
         "note",
         {"note", "notes", "remark", "remarks", "comment", "comments", "memo", "bemerkung", "notiz"}},
        {"block",
         "name",
         {"name", "block", "blockname", "plot", "plotname", "field", "fieldname", "parcel", "quarter",
          "section", "orchard", "label", "code", "quartier", "parzelle", "feld", "id"}},
        {"block",
         "note",
         {"note", "notes", "remark", "remarks", "comment", "comments", "memo", "bemerkung", "notiz"}},
        {place_table,
         "x",
         {"x", "lon", "long", "longitude", "lng", "easting", "east", "e", "xcoord", "coordx", "pointx",
          "gpslon", "gpslongitude", "rechtswert", "ostwert", "laengengrad", "langengrad"}},
        {place_table,
         "y",
         {"y", "lat", "latitude", "northing", "north", "n", "ycoord", "coordy", "pointy", "gpslat",
          "gpslatitude", "hochwert", "nordwert", "breitengrad"}},
    };
}

std::vector<ChoiceWords> make_choices() {
    return {
        {"tree_purpose",
         "parent",
         {"parents", "parenttree", "crossingparent", "breeding", "mothertree", "mother", "donor", "elter"}},
        {"tree_purpose",
         "seedling",
         {"seedlings", "progeny", "hybrid", "offspring", "trial", "samling", "saemling"}},
        {"tree_purpose",
         "pollinizer",
         {"pollinizers", "pollinator", "pollenizer", "pollinizertree", "befruchter", "pollinisateur"}},
        {"tree_purpose", "other", {"others", "various", "misc", "andere", "sonstige"}},
        {"placed_by", "surveyed", {"survey", "gps", "gnss", "rtk", "measured", "totalstation"}},
        {"placed_by", "computed", {"calculated", "reckoned"}},
        {"placed_by", "digitised", {"digitized", "drawn", "traced", "orthophoto", "aerial"}},
        {"placed_by", "estimated", {"guess", "guessed", "approximate", "approx"}},
        {"accession_kind", "cultivar", {"cultivars", "variety", "cv", "named", "commercial", "sorte"}},
        {"accession_kind", "selection", {"selections", "advancedselection", "sel", "clone", "zuchtklon"}},
        {"accession_kind", "seedling", {"seedlings", "hybrid", "progeny", "samling", "saemling"}},
        {"accession_kind", "species", {"wild", "wildspecies", "sp", "wildart", "art"}},
        {"accession_kind", "unknown", {"unk", "notknown", "unbekannt"}},
        {"species", "Malus domestica", {"apple", "apples", "malus", "apfel", "pomme", "pommier"}},
        {"species", "Pyrus communis", {"pear", "pears", "pyrus", "birne", "poire", "poirier"}},
        {"ploidy", "2", {"2x", "2n", "diploid"}},
        {"ploidy", "3", {"3x", "3n", "triploid"}},
        {"ploidy", "4", {"4x", "4n", "tetraploid"}},
    };
}

}  // namespace

std::span<const AdoptColumn> adopt_columns() {
    static const auto columns = make_columns();
    return columns;
}

std::span<const std::string_view> adopted_tables() {
    static constexpr std::array<std::string_view, 4> tables{"tree", "accession", "tree_row", "block"};
    return tables;
}

std::span<const ChoiceWords> adopt_choices() {
    static const auto choices = make_choices();
    return choices;
}

std::string field_word(std::string_view name) {
    std::u32string kept;
    for (const char32_t c : code_points_of(name)) {
        const char letter = plain(c);
        if (std::isalnum(static_cast<unsigned char>(letter)) != 0) {
            kept += static_cast<char32_t>(letter);
        } else if (is_kept_letter(c)) {
            kept += c;
        }
    }
    return to_utf8(kept);
}

}  // namespace pipward::book
