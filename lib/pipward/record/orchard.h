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
/// an absent optional is an unknown, never zero. `fid` is the number of the row in its table; `note` is
/// anything worth keeping about it. A plain field is one that the book requires: a row that lacks it is
/// reported and not read. Ranges are those of the book's schema, whose check reports what breaks them; the
/// structs hold what stands there. Names in a field refer to rows by their own name, label, code or tag,
/// which may be missing.
namespace pipward::record {

/// A point in the book's coordinate system. `height` is the third coordinate where the geometry has one.
struct MapPoint {
    double x = 0;                  ///< east or longitude, in the unit of the coordinate system
    double y = 0;                  ///< north or latitude, likewise
    std::optional<Metres> height;  ///< above sea level
};

/// A part of the orchard. Its area stays in the book.
struct Block {
    std::int64_t fid = 0;               ///< number of the row
    std::string name;                   ///< its key
    std::optional<std::string> remark;  ///< free words
};

/// A planted row. Its key is block and name together.
struct TreeRow {
    std::int64_t fid = 0;               ///< number of the row
    std::string block;                  ///< the block that it stands in
    std::string name;                   ///< a name or number, unlike others of its block
    std::optional<Metres> spacing;      ///< from one position to the next, 0.1..100 m
    int first_position = 1;             ///< at the line's beginning, 0..100000; 1 where the book tells none
    std::optional<std::string> remark;  ///< free words
    std::vector<MapPoint> line{};  ///< its course, in the direction of the numbering; empty where not drawn
};

/// What a tree is kept for.
enum class TreePurpose {
    parent,      ///< of crosses; a plan takes its flowers before those of other trees
    seedling,    ///< under test; waited on for its first fruit
    pollinizer,  ///< for its neighbours
    other,       ///< anything else
};
/// How a tree's place on the map was found, the surest first.
enum class PlacedBy {
    surveyed,   ///< measured on the ground
    computed,   ///< from its row and position
    digitised,  ///< drawn on a map or picture
    estimated,  ///< a guess
};

/// A tree that stands, stood or is to stand; see presence.h.
struct Tree {
    std::int64_t fid = 0;                  ///< number of the row
    std::string label;                     ///< its key, as on its tag
    std::optional<std::string> accession;  ///< what it is
    std::optional<std::string> block;      ///< where it stands
    std::optional<std::string> row;        ///< within the block
    std::optional<int> position;           ///< in the row, 0..100000, counted in the direction of the line
    std::optional<std::string> rootstock;  ///< what it is grafted on, in free words
    std::optional<Day> planted_on;         ///< empty: it always stood
    std::optional<Day> removed_on;  ///< the first day on which it no longer stands; empty: none is known
    TreePurpose purpose = TreePurpose::other;  ///< other, where the book says nothing else
    std::optional<PlacedBy> placed_by;         ///< how `at` was found
    std::optional<Metres> accuracy;            ///< likely error of `at`, 0..10000 m
    /// Above sea level; where empty the height of `at` stands in, then the station's.
    std::optional<Metres> elevation;
    std::optional<std::string> remark;  ///< free words
    std::optional<MapPoint> at;         ///< empty where it is not on the map
};

/// What sort of accession it is.
enum class AccessionKind {
    cultivar,   ///< a named variety
    selection,  ///< a seedling chosen and kept by grafting
    seedling,   ///< a single plant from seed
    species,    ///< a wild species or a type of it
    unknown,    ///< the book says so itself
};

/// What a tree may be: one genotype under one name.
struct Accession {
    std::int64_t fid = 0;                         ///< number of the row
    std::string name;                             ///< its key
    AccessionKind kind = AccessionKind::unknown;  ///< unknown is a word of the list like others
    std::optional<std::string> seed_parent;       ///< the accession that bore the seed
    std::optional<std::string> pollen_parent;     ///< the accession or blend that gave the pollen
    std::optional<std::string> s_alleles;         ///< as written, "S2 S3"
    std::optional<int> ploidy;                    ///< chromosome sets: 2, 3, 4
    /// From full bloom to ripe seed, 1..365 d; empty: seed/ripeness.h has the usual number.
    std::optional<int> seed_ripe_days;
    /// Need of its buds, 0..200, known from elsewhere: a cut branch forces only after it. Bloom is forecast
    /// without it.
    std::optional<ChillPortions> chill;
    std::optional<Day> protected_until;     ///< the last day on which breeders' rights or a licence bind it
    std::optional<std::string> remark;      ///< free words
    std::optional<std::string> species{};   ///< botanical name: "Malus domestica"
    std::optional<std::string> sport_of{};  ///< the accession that it is a bud sport or a clone of
};

/// One member of a pollen blend.
struct BlendMember {
    std::int64_t fid = 0;        ///< number of the row
    std::string name;            ///< of the blend, shared by its rows
    std::string member;          ///< an accession; once in a blend
    std::optional<Share> share;  ///< of the blend; empty: see blend_shares()
};

/// What was seen of bloom on a day, of a tree or, where no single one was noted, of an accession.
struct BloomObservation {
    std::int64_t fid = 0;                  ///< number of the row
    std::optional<std::string> tree;       ///< its label; goes before `accession`
    std::optional<std::string> accession;  ///< asked where the tree is not noted or has none
    Day observed_on;                       ///< day of the look
    Bbch bbch;                             ///< a stage of the scale
    /// Flowers opened so far, 0..100; tells more sharply than stages 60 to 65 do.
    std::optional<double> open_percent;
    std::optional<std::string> observer;  ///< who looked
    std::optional<std::string> remark;    ///< free words
};

/// A place of which the book holds daily temperatures.
struct Station {
    std::int64_t fid = 0;        ///< number of the row
    std::string name;            ///< its key
    Metres elevation;            ///< above sea level, -450..6000 m
    std::optional<MapPoint> at;  ///< empty where it is not on the map, which the book reports as an error
    std::optional<Latitude> latitude;  ///< of `at`, by the book's coordinate system
};

/// Where a day's temperatures come from.
enum class WeatherSource {
    observed,  ///< measured at the station
    forecast,  ///< by a weather service; an observed row of the day goes before it
};

/// A day at a station. Its key is both together.
struct WeatherDay {
    std::int64_t fid = 0;                            ///< number of the row
    std::string station;                             ///< its name
    Day day;                                         ///< a calendar day
    Celsius t_min;                                   ///< lowest air temperature
    Celsius t_max;                                   ///< highest
    WeatherSource source = WeatherSource::observed;  ///< observed, where the book says nothing else
};

/// A cross that is wanted in a season.
struct CrossGoal {
    std::int64_t fid = 0;               ///< number of the row
    std::string code;                   ///< its key, as on tags; seedlings' names begin with it
    Season season;                      ///< in which its flowers are to be worked, 1900..2200
    std::string seed_parent;            ///< an accession
    std::string pollen_parent;          ///< an accession or a blend
    int seedlings_wanted = 0;           ///< that stand in the end, 1 or more
    std::optional<int> priority;        ///< 1..1000, 1 the most urgent; empty comes after all
    std::optional<std::string> remark;  ///< free words
};

/// Where pollen is kept dry. Temperatures are the usual ones, about.
enum class Store {
    room,          ///< 20 °C
    refrigerator,  ///< 4 °C
    freezer,       ///< -20 °C
    deep_freezer,  ///< -80 °C
};

/// Pollen collected and kept; see in_hand().
struct PollenLot {
    std::int64_t fid = 0;               ///< number of the row
    std::string code;                   ///< its key, as on the vial
    std::string donor;                  ///< an accession or a blend
    Day collected_on;                   ///< when its flowers were
    std::optional<int> flowers;         ///< collected
    std::optional<Milligrams> mass;     ///< of dry pollen, anther dust and all, as weighed
    Store store = Store::refrigerator;  ///< where it was put first; see store_on()
    /// Relative, in the store, 0..100; kept for people, nothing is calculated from it.
    std::optional<double> humidity_percent;
    std::optional<Day> used_up_on;      ///< the first day on which none is left; empty while there is some
    std::optional<std::string> remark;  ///< free words
};

/// A germination test of a pollen lot.
struct PollenTest {
    std::int64_t fid = 0;  ///< number of the row
    std::string lot;       ///< its code
    Day tested_on;         ///< day of the count
    int grains = 0;        ///< counted; 0 tells nothing
    int germinated = 0;    ///< of them with a tube
};

/// Pollen brought from one store to another.
struct PollenMove {
    std::int64_t fid = 0;               ///< number of the row
    std::string lot;                    ///< its code
    Day moved_on;                       ///< the first day in the new store
    Store store = Store::refrigerator;  ///< where it went; see store_on()
    std::optional<std::string> remark;  ///< free words
};

/// Work at a branch besides pollination and harvest.
enum class BranchTask {
    bag,           ///< closed flowers covered
    emasculate,    ///< anthers taken out of closed flowers
    unbag,         ///< bags taken off
    cut_branch,    ///< a donor's branch cut, to be forced
    indoor_bloom,  ///< the cut branch flowers indoors
};

/// Work done at a branch: by its tag, or by its tree where it has none yet.
struct BranchWork {
    std::int64_t fid = 0;               ///< number of the row
    BranchTask task = BranchTask::bag;  ///< what was done
    Day done_on;                        ///< day of the work
    std::optional<std::string> tree;    ///< label of the tree; empty where the tag tells it
    std::optional<std::string> cross;   ///< code of the goal; empty where the tag tells it, or for any
    std::optional<std::string> tag;     ///< of a pollination
    std::optional<int> flowers;         ///< bagged, emasculated, cut; empty where nobody counted
    std::optional<std::string> remark;  ///< free words
};

/// Flowers pollinated at one branch on one day. Its key is tag and day: rows of one tag are rounds on the same
/// branch; see passes_of().
struct Pollination {
    std::int64_t fid = 0;  ///< number of the row
    std::string tag;       ///< as at the branch
    std::string cross;     ///< code of its goal
    std::string tree;      ///< label of a tree of the seed parent
    Day pollinated_on;     ///< day of the work
    int flowers = 0;       ///< worked on that day
    /// Code of the lot whose pollen was used; empty where it was fresh or not noted.
    std::optional<std::string> lot;
    /// Which round on the same flowers, 1..20; empty: the next one under its tag. Later rounds add no flowers.
    std::optional<int> pass;
    std::optional<std::string> remark;  ///< free words
};

/// Fruit that hangs at a tagged branch, counted on the tree.
struct FruitSetCount {
    std::int64_t fid = 0;               ///< number of the row
    std::string tag;                    ///< of the pollination
    Day counted_on;                     ///< day of the count
    int fruits = 0;                     ///< in number; 0 where none is left
    std::optional<std::string> remark;  ///< free words
};

/// Fruit harvested from a tagged branch on one day. No row: nobody has looked; a row of 0: it bore none.
struct Fruit {
    std::int64_t fid = 0;               ///< number of the row
    std::string tag;                    ///< of the pollination
    Day harvested_on;                   ///< day of harvest
    int fruits = 0;                     ///< in number; 0 where there was none to pick
    std::optional<int> seeds_sound;     ///< full ones in all of these fruits; empty where nobody counted
    std::optional<int> seeds_empty;     ///< flat or hollow ones, likewise
    std::optional<std::string> remark;  ///< free words
};

/// Seed of one cross that is treated alike.
struct SeedLot {
    std::int64_t fid = 0;                  ///< number of the row
    std::string code;                      ///< its key, as on the bag
    std::string cross;                     ///< code of its goal
    int seeds = 0;                         ///< at the start; what leaves is a row of SeedWithdrawal
    std::optional<std::string> from_tags;  ///< tags whose fruit it came from, with blanks between
    std::optional<Day> washed_on;          ///< out of the fruit
    std::optional<Day> stratified_from;    ///< first day in stratification; empty: not yet, or not noted
    /// Its one temperature, -100..40 °C; empty where a log tells it or nobody does.
    std::optional<Celsius> cold;
    std::optional<Day> stratified_to;      ///< last day in stratification; empty while it is there
    std::optional<std::string> treatment;  ///< in free words: soaked, scratched; empty: none noted
    std::optional<std::string> medium;     ///< in free words, what it lies in
    std::optional<std::string> remark;     ///< free words
};

/// How far a lot has germinated.
struct GerminationCount {
    std::int64_t fid = 0;  ///< number of the row
    std::string lot;       ///< its code
    Day counted_on;        ///< day of the count
    int germinated = 0;    ///< in all since the start, those that have left the lot included
};

/// Seeds that left a lot, germinated or not: potted, given away, rotten.
struct SeedWithdrawal {
    std::int64_t fid = 0;               ///< number of the row
    std::string lot;                    ///< its code
    Day withdrawn_on;                   ///< when they left
    int seeds = 0;                      ///< in number
    std::optional<std::string> remark;  ///< free words
};

/// The part of the tree at which a trait is scored.
enum class TraitKind {
    leaf,   ///< seen on a plant of any age
    bloom,  ///< at flowers: the tree has bloomed
    fruit,  ///< at fruit: the tree has fruited
    tree,   ///< at the plant as a whole: vigour, habit
};

/// What is known of a trait.
struct Trait {
    std::int64_t fid = 0;               ///< number of the row
    std::string name;                   ///< its key, as in the scores
    TraitKind kind = TraitKind::fruit;  ///< where it is scored
    std::optional<std::string> remark;  ///< free words
};

/// A score given to one tree on one day.
struct TraitScore {
    std::int64_t fid = 0;               ///< number of the row
    std::string tree;                   ///< its label
    Day scored_on;                      ///< day of the score
    std::string trait;                  ///< in free words, the same for all scores that are to be compared
    double score = 0;                   ///< in the trait's own unit, any number
    std::optional<std::string> remark;  ///< free words
};

/// A whole book, read.
struct Orchard {
    // Out of line: its tables would be taken apart again in every source that holds a book.
    Orchard();
    Orchard(const Orchard& other);
    Orchard(Orchard&& other) noexcept;
    Orchard& operator=(const Orchard& other);
    Orchard& operator=(Orchard&& other) noexcept;
    ~Orchard();

    /// The trees' coordinate system, for result layers: AUTHORITY:CODE, well-known text where no authority
    /// names it; empty where it is not known.
    std::string crs;
    std::vector<Block> blocks;                         ///< rows as the table has them, below likewise
    std::vector<TreeRow> rows;                         ///< planted ones
    std::vector<Tree> trees;                           ///< gone and coming ones too
    std::vector<Accession> accessions;                 ///< each name once, where the book is sound
    std::vector<BlendMember> blend_members;            ///< rows of one blend need not stand together
    std::vector<BloomObservation> bloom_observations;  ///< of all years
    std::vector<Station> stations;                     ///< at least one where bloom is forecast
    std::vector<WeatherDay> weather;                   ///< in no order of days
    std::vector<CrossGoal> goals;                      ///< of all seasons
    std::vector<PollenLot> pollen_lots;                ///< used-up ones too
    std::vector<PollenTest> pollen_tests;              ///< of all lots
    std::vector<PollenMove> pollen_moves;              ///< of all lots
    std::vector<BranchWork> branch_works;              ///< of all seasons
    std::vector<Pollination> pollinations;             ///< of all seasons
    std::vector<FruitSetCount> fruit_set_counts;       ///< of all seasons
    std::vector<Fruit> fruits;                         ///< of all seasons
    std::vector<SeedLot> seed_lots;                    ///< done ones too
    std::vector<GerminationCount> germination_counts;  ///< in no order of days
    std::vector<SeedWithdrawal> seed_withdrawals;      ///< in no order of days
    std::vector<Trait> traits;                         ///< those that the book describes
    std::vector<TraitScore> trait_scores;              ///< of all years
};

}  // namespace pipward::record
