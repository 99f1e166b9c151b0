// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "pipward/value/bbch.h"
#include "pipward/value/day.h"
#include "pipward/value/quantity.h"
#include "pipward/value/season.h"
#include "pipward/value/spoken.h"

/// What the breeder's book holds, as plain values. One struct a table, fields named as its columns;
/// an absent optional is an unknown, never zero. `fid` is the row's number in its table.
namespace pipward::record {

/// A point in the book's coordinate system. `height` is the third coordinate where the geometry has one.
struct MapPoint {
    double x = 0;
    double y = 0;
    std::optional<Metres> height;
};

struct Block {
    std::int64_t fid = 0;
    std::string name;
    std::optional<std::string> note;
};

struct TreeRow {
    std::int64_t fid = 0;
    std::string block;
    std::string name;
    std::optional<Metres> spacing;
    int first_position = 1;
    std::optional<std::string> note;
    std::vector<MapPoint> line{};  ///< its course, in the direction of the numbering; empty where not drawn
};

enum class TreePurpose { parent, seedling, pollinizer, other };
enum class PlacedBy { surveyed, computed, digitised, estimated };

struct Tree {
    std::int64_t fid = 0;
    std::string label;
    std::optional<std::string> accession;
    std::optional<std::string> block;
    std::optional<std::string> row;
    std::optional<int> position;
    std::optional<std::string> rootstock;
    std::optional<Day> planted_on;
    std::optional<Day> removed_on;
    TreePurpose purpose = TreePurpose::other;
    std::optional<PlacedBy> placed_by;
    std::optional<Metres> accuracy;
    std::optional<Metres> elevation;
    std::optional<std::string> note;
    std::optional<MapPoint> at;
};

enum class AccessionKind { cultivar, selection, seedling, species, unknown };

struct Accession {
    std::int64_t fid = 0;
    std::string name;
    AccessionKind kind = AccessionKind::unknown;
    std::optional<std::string> seed_parent;
    std::optional<std::string> pollen_parent;
    std::optional<std::string> s_alleles;  ///< as written, "S2 S3"
    std::optional<int> ploidy;             ///< chromosome sets: 2, 3, 4
    std::optional<int> seed_ripe_days;
    std::optional<ChillPortions> chill;
    std::optional<Day> protected_until;
    std::optional<std::string> note;
    std::optional<std::string> species{};   ///< botanical name: "Malus domestica"
    std::optional<std::string> sport_of{};  ///< the accession that it is a bud sport or a clone of
};

/// One member of a pollen blend.
struct BlendMember {
    std::int64_t fid = 0;
    std::string name;
    std::string member;
    std::optional<Share> share;
};

struct BloomNote {
    std::int64_t fid = 0;
    std::optional<std::string> tree;
    std::optional<std::string> accession;
    Day noted_on;
    Bbch bbch;
    std::optional<double> open_percent;
    std::optional<std::string> observer;
    std::optional<std::string> note;
};

struct Station {
    std::int64_t fid = 0;
    std::string name;
    Metres elevation;
    std::optional<MapPoint> at;
    std::optional<Latitude> latitude;  ///< of `at`, by the book's coordinate system
};

enum class WeatherSource { observed, forecast };

struct WeatherDay {
    std::int64_t fid = 0;
    std::string station;
    Day day;
    Celsius t_min;
    Celsius t_max;
    WeatherSource source = WeatherSource::observed;
};

struct CrossGoal {
    std::int64_t fid = 0;
    std::string code;
    Season season;
    std::string seed_parent;
    std::string pollen_parent;  ///< an accession or a blend
    int seedlings_wanted = 0;
    std::optional<int> priority;
    std::optional<std::string> note;
};

enum class Store { room, refrigerator, freezer, deep_freezer };

struct PollenLot {
    std::int64_t fid = 0;
    std::string code;
    std::string donor;  ///< an accession or a blend
    Day gathered_on;
    std::optional<int> flowers;
    std::optional<Milligrams> mass;
    Store store = Store::refrigerator;
    std::optional<double> humidity_percent;
    std::optional<Day> used_up_on;
    std::optional<std::string> note;
};

struct PollenTest {
    std::int64_t fid = 0;
    std::string lot;
    Day tested_on;
    int grains = 0;
    int germinated = 0;
};

struct Pollination {
    std::int64_t fid = 0;
    std::string tag;
    std::string cross;
    std::string tree;
    Day worked_on;
    int flowers = 0;
    std::optional<std::string> lot;
    std::optional<int> pass;
    std::optional<std::string> note;
};

struct Fruit {
    std::int64_t fid = 0;
    std::string tag;
    Day picked_on;
    int fruits = 0;
    std::optional<int> seeds_sound;
    std::optional<int> seeds_empty;
    std::optional<std::string> note;
};

struct SeedLot {
    std::int64_t fid = 0;
    std::string code;
    std::string cross;
    int seeds = 0;
    std::optional<std::string> from_tags;
    std::optional<Day> washed_on;
    std::optional<Day> cold_from;
    std::optional<Celsius> cold;
    std::optional<Day> cold_to;
    std::optional<std::string> treatment;
    std::optional<std::string> medium;
    std::optional<std::string> note;
};

struct SproutCount {
    std::int64_t fid = 0;
    std::string lot;
    Day counted_on;
    int sprouted = 0;
};

struct SeedOut {
    std::int64_t fid = 0;
    std::string lot;
    Day on_day;
    int seeds = 0;
    std::optional<std::string> note;
};

struct TraitScore {
    std::int64_t fid = 0;
    std::string tree;
    Day scored_on;
    std::string trait;
    double score = 0;
    std::optional<std::string> note;
};

/// A whole book, read.
struct Orchard {
    // Out of line: seventeen tables would be taken apart anew in every source that holds a book.
    Orchard();
    Orchard(const Orchard& other);
    Orchard(Orchard&& other) noexcept;
    Orchard& operator=(const Orchard& other);
    Orchard& operator=(Orchard&& other) noexcept;
    ~Orchard();

    std::string crs;  ///< the coordinate system as AUTHORITY:CODE, for result layers
    std::vector<Block> blocks;
    std::vector<TreeRow> rows;
    std::vector<Tree> trees;
    std::vector<Accession> accessions;
    std::vector<BlendMember> blend_members;
    std::vector<BloomNote> bloom_notes;
    std::vector<Station> stations;
    std::vector<WeatherDay> weather;
    std::vector<CrossGoal> goals;
    std::vector<PollenLot> pollen_lots;
    std::vector<PollenTest> pollen_tests;
    std::vector<Pollination> pollinations;
    std::vector<Fruit> fruits;
    std::vector<SeedLot> seed_lots;
    std::vector<SproutCount> sprout_counts;
    std::vector<SeedOut> seeds_out;
    std::vector<TraitScore> trait_scores;
};

}  // namespace pipward::record
