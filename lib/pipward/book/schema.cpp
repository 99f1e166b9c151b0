// SPDX-License-Identifier: MIT
#include "pipward/book/schema.h"

#include <algorithm>
#include <array>

namespace pipward::book {
namespace {

using enum CellType;

constexpr bool needed = true;
constexpr bool free = false;

BookColumn note_column() {
    return {"note", text, free, "Note", "Anything worth keeping about this row."};
}

BookTable block() {
    return {"block",
            "Blocks",
            "The parts of the orchard, as areas.",
            GeometryKind::polygon,
            {"name"},
            {{"name", text, needed, "Name", "Name of the block, as people say it."}, note_column()}};
}

BookTable tree_row() {
    return {
        "tree_row",
        "Tree rows",
        "Planted rows; the line's direction is the direction of numbering.",
        GeometryKind::line,
        {"block", "name"},
        {{"block", text, needed, "Block", "The block that the row stands in.", {}, {}, {{"block", "name"}}},
         {"name", text, needed, "Name", "Name or number of the row within its block."},
         {"spacing_m", number, free, "Spacing", "Distance from one position to the next.", "m", "spacing_m"},
         {"first_position",
          whole,
          free,
          "First position",
          "Number of the first position on the line.",
          {},
          "position",
          {},
          "1"},
         note_column()}};
}

BookTable station() {
    return {"station",
            "Weather stations",
            "Places whose daily temperatures the book holds.",
            GeometryKind::point,
            {"name"},
            {{"name", text, needed, "Name", "Name of the station."},
             {"elevation_m", number, needed, "Elevation", "Height of the station above sea level.", "m",
              "elevation_m"}}};
}

BookTable accession() {
    return {
        "accession",
        "Accessions",
        "What the trees are: cultivars, selections, seedlings, species.",
        GeometryKind::none,
        {"name"},
        {{"name", text, needed, "Name", "Name of the accession, as it stands on tags."},
         {"kind", text, needed, "Kind", "What sort of accession it is.", {}, "accession_kind"},
         {"seed_parent",
          text,
          free,
          "Seed parent",
          "The accession that bore the seed.",
          {},
          {},
          {{"accession", "name"}}},
         {"pollen_parent",
          text,
          free,
          "Pollen parent",
          "The accession or blend that gave the pollen.",
          {},
          {},
          {{"accession", "name"}, {"blend", "name"}}},
         {"s_alleles", text, free, "S-alleles", "Self-incompatibility alleles, as \"S2 S3\"."},
         {"ploidy", whole, free, "Ploidy", "Number of chromosome sets.", {}, "ploidy"},
         {"species", text, free, "Species", "Botanical name, as \"Malus domestica\" or \"Pyrus communis\"."},
         {"sport_of",
          text,
          free,
          "Sport of",
          "The accession that it is a bud sport or a clone of: its genes are the same.",
          {},
          {},
          {{"accession", "name"}}},
         {"seed_ripe_days", whole, free, "Seed ripe after",
          "Days from full bloom until the seed is ripe for sowing.", "d", "seed_ripe_days"},
         {"chill_portions", number, free, "Chill need",
          "Winter chill that its buds need, where it is known from elsewhere.", "chill portions",
          "chill_portions"},
         {"protected_until", day, free, "Protected until",
          "Last day on which plant breeders' rights or a licence bind it."},
         note_column()}};
}

BookTable blend() {
    return {"blend",
            "Pollen blends",
            "Mixtures of pollen: one row for each member of a blend.",
            GeometryKind::none,
            {"name", "member"},
            {{"name", text, needed, "Blend", "Name of the blend."},
             {"member",
              text,
              needed,
              "Member",
              "An accession whose pollen is in the blend.",
              {},
              {},
              {{"accession", "name"}}},
             {"share", number, free, "Share", "Part of the blend; unknown means equal parts.", {}, "share"}}};
}

BookTable tree() {
    return {
        "tree",
        "Trees",
        "Every tree with its place on the ground, its row and its position.",
        GeometryKind::point,
        {"label"},
        {{"label", text, needed, "Label", "What stands on the tree's tag."},
         {"accession", text, free, "Accession", "What the tree is.", {}, {}, {{"accession", "name"}}},
         {"block", text, free, "Block", "The block that it stands in.", {}, {}, {{"block", "name"}}},
         {"row", text, free, "Row", "The row within the block.", {}, {}, {{"tree_row", "name", "block"}}},
         {"position", whole, free, "Position", "Place in the row, counted in its direction.", {}, "position"},
         {"rootstock", text, free, "Rootstock", "What it is grafted on."},
         {"planted_on", day, free, "Planted on", "Day of planting."},
         {"removed_on", day, free, "Removed on", "Day of removal; unknown while it stands."},
         {"purpose",
          text,
          needed,
          "Purpose",
          "What the tree is kept for.",
          {},
          "tree_purpose",
          {},
          "'other'"},
         {"placed_by", text, free, "Placed by", "How its place on the map was found.", {}, "placed_by"},
         {"accuracy_m", number, free, "Accuracy", "Likely error of its place.", "m", "accuracy_m"},
         {"elevation_m", number, free, "Elevation",
          "Height above sea level; where unknown, the point's third coordinate, else the station's.", "m",
          "elevation_m"},
         note_column()}};
}

BookTable bloom_note() {
    return {
        "bloom_note",
        "Bloom notes",
        "What was seen of a tree's or an accession's bloom on a day.",
        GeometryKind::none,
        {},
        {{"tree", text, free, "Tree", "The tree that was looked at.", {}, {}, {{"tree", "label"}}},
         {"accession",
          text,
          free,
          "Accession",
          "The accession, where no single tree was noted.",
          {},
          {},
          {{"accession", "name"}}},
         {"noted_on", day, needed, "Noted on", "Day of the look."},
         {"bbch", whole, needed, "BBCH stage", "Growth stage on the BBCH scale.", {}, "bbch_stage"},
         {"open_percent", number, free, "Flowers open", "Share of flowers that have opened.", "%", "percent"},
         {"observer", text, free, "Observer", "Who looked."},
         note_column()}};
}

BookTable weather_day() {
    return {"weather_day",
            "Daily weather",
            "Lowest and highest air temperature of a day at a station.",
            GeometryKind::none,
            {"station", "day"},
            {{"station", text, needed, "Station", "The station.", {}, {}, {{"station", "name"}}},
             {"day", CellType::day, needed, "Day", "The day."},
             {"t_min_c", number, needed, "Lowest", "Lowest air temperature of the day.", "degrees C"},
             {"t_max_c", number, needed, "Highest", "Highest air temperature of the day.", "degrees C"},
             {"source",
              text,
              needed,
              "Source",
              "Measured or forecast.",
              {},
              "weather_source",
              {},
              "'observed'"}}};
}

BookTable cross_goal() {
    return {"cross_goal",
            "Cross goals",
            "The crosses that are wanted in a season.",
            GeometryKind::none,
            {"code"},
            {{"code", text, needed, "Code", "Short code of the cross, as on tags."},
             {"season", whole, needed, "Season", "Calendar year of the bloom.", {}, "season"},
             {"seed_parent",
              text,
              needed,
              "Seed parent",
              "The accession that shall bear the seed.",
              {},
              {},
              {{"accession", "name"}}},
             {"pollen_parent",
              text,
              needed,
              "Pollen parent",
              "The accession or blend that shall give the pollen.",
              {},
              {},
              {{"accession", "name"}, {"blend", "name"}}},
             {"seedlings_wanted",
              whole,
              needed,
              "Seedlings wanted",
              "How many seedlings shall stand at the end.",
              {},
              "wanted"},
             {"priority", whole, free, "Priority", "1 is the most urgent.", {}, "priority"},
             note_column()}};
}

BookTable pollen_lot() {
    return {
        "pollen_lot",
        "Pollen lots",
        "Pollen gathered and kept.",
        GeometryKind::none,
        {"code"},
        {{"code", text, needed, "Code", "What stands on the vial."},
         {"donor",
          text,
          needed,
          "Donor",
          "The accession or blend that the pollen is of.",
          {},
          {},
          {{"accession", "name"}, {"blend", "name"}}},
         {"gathered_on", day, needed, "Gathered on", "Day on which the flowers were gathered."},
         {"flowers", whole, free, "Flowers", "Number of flowers gathered.", {}, "count"},
         {"mass_mg", number, free, "Mass", "Mass of dry pollen.", "mg", "mass_mg"},
         {"store", text, needed, "Store", "Where it is kept.", {}, "pollen_store"},
         {"humidity_percent", number, free, "Humidity", "Relative humidity in the store.", "%", "percent"},
         {"used_up_on", day, free, "Used up on", "Day on which none was left."},
         note_column()}};
}

BookTable pollen_test() {
    return {"pollen_test",
            "Pollen tests",
            "Germination tests of pollen lots.",
            GeometryKind::none,
            {},
            {{"lot", text, needed, "Pollen lot", "The lot tested.", {}, {}, {{"pollen_lot", "code"}}},
             {"tested_on", day, needed, "Tested on", "Day of the test."},
             {"grains", whole, needed, "Grains", "Grains counted.", {}, "count"},
             {"germinated", whole, needed, "Germinated", "Grains with a tube.", {}, "count"}}};
}

BookTable pollination() {
    return {"pollination",
            "Pollinations",
            "Flowers worked, by tag.",
            GeometryKind::none,
            {"tag"},
            {{"tag", text, needed, "Tag", "What stands on the tag at the branch."},
             {"cross", text, needed, "Cross", "Code of the cross.", {}, {}, {{"cross_goal", "code"}}},
             {"tree",
              text,
              needed,
              "Tree",
              "The tree worked, a tree of the seed parent.",
              {},
              {},
              {{"tree", "label"}}},
             {"worked_on", day, needed, "Worked on", "Day of the work."},
             {"flowers", whole, needed, "Flowers", "Number of flowers worked.", {}, "count"},
             {"lot",
              text,
              free,
              "Pollen lot",
              "The pollen used, where it came from a lot.",
              {},
              {},
              {{"pollen_lot", "code"}}},
             {"pass", whole, free, "Pass", "Which round on the same flowers.", {}, "pass"},
             note_column()}};
}

BookTable fruit() {
    return {"fruit",
            "Fruit",
            "Fruit picked from tagged branches, and the seed in it.",
            GeometryKind::none,
            {},
            {{"tag", text, needed, "Tag", "The tag of the pollination.", {}, {}, {{"pollination", "tag"}}},
             {"picked_on", day, needed, "Picked on", "Day of picking."},
             {"fruits", whole, needed, "Fruits", "Number of fruits.", {}, "count"},
             {"seeds_sound", whole, free, "Sound seeds", "Full seeds found.", {}, "count"},
             {"seeds_empty", whole, free, "Empty seeds", "Flat or hollow seeds found.", {}, "count"},
             note_column()}};
}

BookTable seed_lot() {
    return {"seed_lot",
            "Seed lots",
            "Seed of one cross that is treated alike.",
            GeometryKind::none,
            {"code"},
            {{"code", text, needed, "Code", "What stands on the bag."},
             {"cross", text, needed, "Cross", "Code of the cross.", {}, {}, {{"cross_goal", "code"}}},
             {"seeds", whole, needed, "Seeds", "Number of seeds.", {}, "count"},
             {"from_tags", text, free, "From tags", "The tags whose fruit it came from, parted by spaces."},
             {"washed_on", day, free, "Washed on", "Day of washing."},
             {"cold_from", day, free, "Cold from", "First day in the cold."},
             {"cold_c", number, free, "Cold at", "Temperature of the cold.", "degrees C", "store_c"},
             {"cold_to", day, free, "Cold to", "Last day in the cold."},
             {"treatment", text, free, "Treatment", "What was done to the seed: soak, scratch ..."},
             {"medium", text, free, "Medium", "What the seed lies in."},
             note_column()}};
}

BookTable sprout_count() {
    return {"sprout_count",
            "Sprout counts",
            "Seeds of a lot that have sprouted, all in all, up to a day.",
            GeometryKind::none,
            {},
            {{"lot", text, needed, "Seed lot", "The lot.", {}, {}, {{"seed_lot", "code"}}},
             {"counted_on", day, needed, "Counted on", "Day of the count."},
             {"sprouted", whole, needed, "Sprouted", "Seeds sprouted so far.", {}, "count"}}};
}

BookTable seed_out() {
    return {"seed_out",
            "Seed taken out",
            "Seeds that left a lot: potted, given away, rotten.",
            GeometryKind::none,
            {},
            {{"lot", text, needed, "Seed lot", "The lot.", {}, {}, {{"seed_lot", "code"}}},
             {"on_day", day, needed, "Day", "Day on which they left."},
             {"seeds", whole, needed, "Seeds", "Number of seeds.", {}, "count"},
             note_column()}};
}

BookTable trait_score() {
    return {"trait_score",
            "Trait scores",
            "Scores given to trees: taste, size, scab ...",
            GeometryKind::none,
            {},
            {{"tree", text, needed, "Tree", "The tree scored.", {}, {}, {{"tree", "label"}}},
             {"scored_on", day, needed, "Scored on", "Day of the score."},
             {"trait", text, needed, "Trait", "What was scored."},
             {"score", number, needed, "Score", "The score, in the trait's own unit."},
             note_column()}};
}

}  // namespace

std::span<const BookTable> book_tables() {
    static const std::vector<BookTable> tables{
        block(),      tree_row(),    station(),      accession(),  blend(),       tree(),
        bloom_note(), weather_day(), cross_goal(),   pollen_lot(), pollen_test(), pollination(),
        fruit(),      seed_lot(),    sprout_count(), seed_out(),   trait_score()};
    return tables;
}

const BookTable* find_book_table(std::string_view name) {
    const auto tables = book_tables();
    const auto found = std::ranges::find(tables, name, &BookTable::name);
    return found == tables.end() ? nullptr : &*found;
}

const BookColumn* find_column(const BookTable& table, std::string_view name) {
    const auto found = std::ranges::find(table.columns, name, &BookColumn::name);
    return found == table.columns.end() ? nullptr : &*found;
}

std::span<const std::string_view> result_table_names() {
    static constexpr std::array<std::string_view, 10> names{
        "bloom_window", "bloom_model",  "bloom_skill", "cross_outlook", "pollen_task",
        "field_task",   "row_position", "tree_number", "first_fruit",   "clock_day"};
    return names;
}

Sentence to_text(GeometryKind kind) {
    switch (kind) {
        case GeometryKind::point:
            return say("point");
        case GeometryKind::line:
            return say("line");
        case GeometryKind::polygon:
            return say("polygon");
        case GeometryKind::none:
            break;
    }
    return say("none");
}

}  // namespace pipward::book
