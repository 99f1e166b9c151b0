// SPDX-License-Identifier: MIT
#include "pipward/book/records.h"

#include <array>

#include "pipward/record/words.h"

namespace pipward::book {
namespace {

// A row's cells by column name, in the types of the records.
class Fields {
  public:
    Fields(const BookTable& table, const BookRow& row) : table_(table), row_(row) {}

    std::int64_t fid() const { return row_.fid; }
    const std::optional<MapPoint>& at() const { return row_.at; }
    const std::vector<MapPoint>& line() const { return row_.line; }

    template <class T>
    std::optional<T> get(std::string_view name) const {
        const auto* column = find_column(table_, name);
        const auto* value =
            std::get_if<T>(&row_.cells[static_cast<std::size_t>(column - table_.columns.data())]);
        return value == nullptr ? std::nullopt : std::optional{*value};
    }
    std::optional<std::string> text(std::string_view name) const { return get<std::string>(name); }
    std::optional<Day> day(std::string_view name) const { return get<Day>(name); }
    std::optional<double> number(std::string_view name) const { return get<double>(name); }
    std::optional<int> whole(std::string_view name) const {
        const auto value = get<std::int64_t>(name);
        return value ? std::optional{static_cast<int>(*value)} : std::nullopt;
    }
    /// A number as one of the quantities, which are all made from one number.
    template <class Quantity>
    std::optional<Quantity> quantity(std::string_view name) const {
        const auto value = number(name);
        return value ? std::optional{Quantity{*value}} : std::nullopt;
    }
    template <class Enum>
    std::optional<Enum> word(std::string_view name) const {
        const auto value = text(name);
        return value ? from_word<Enum>(*value) : std::nullopt;
    }

  private:
    const BookTable& table_;
    const BookRow& row_;
};

void add_block(Orchard& orchard, const Fields& row) {
    orchard.blocks.push_back({.fid = row.fid(), .name = *row.text("name"), .note = row.text("note")});
}

void add_tree_row(Orchard& orchard, const Fields& row) {
    orchard.rows.push_back({.fid = row.fid(),
                            .block = *row.text("block"),
                            .name = *row.text("name"),
                            .spacing = row.quantity<Metres>("spacing_m"),
                            .first_position = row.whole("first_position").value_or(1),
                            .note = row.text("note"),
                            .line = row.line()});
}

void add_station(Orchard& orchard, const Fields& row) {
    orchard.stations.push_back({.fid = row.fid(),
                                .name = *row.text("name"),
                                .elevation = *row.quantity<Metres>("elevation_m"),
                                .at = row.at(),
                                .latitude = {}});
}

void add_accession(Orchard& orchard, const Fields& row) {
    orchard.accessions.push_back({.fid = row.fid(),
                                  .name = *row.text("name"),
                                  .kind = *row.word<AccessionKind>("kind"),
                                  .seed_parent = row.text("seed_parent"),
                                  .pollen_parent = row.text("pollen_parent"),
                                  .s_alleles = row.text("s_alleles"),
                                  .ploidy = row.whole("ploidy"),
                                  .seed_ripe_days = row.whole("seed_ripe_days"),
                                  .chill = row.quantity<ChillPortions>("chill_portions"),
                                  .protected_until = row.day("protected_until"),
                                  .note = row.text("note"),
                                  .species = row.text("species"),
                                  .sport_of = row.text("sport_of")});
}

void add_blend(Orchard& orchard, const Fields& row) {
    orchard.blend_members.push_back({.fid = row.fid(),
                                     .name = *row.text("name"),
                                     .member = *row.text("member"),
                                     .share = row.quantity<Share>("share")});
}

void add_tree(Orchard& orchard, const Fields& row) {
    orchard.trees.push_back({.fid = row.fid(),
                             .label = *row.text("label"),
                             .accession = row.text("accession"),
                             .block = row.text("block"),
                             .row = row.text("row"),
                             .position = row.whole("position"),
                             .rootstock = row.text("rootstock"),
                             .planted_on = row.day("planted_on"),
                             .removed_on = row.day("removed_on"),
                             .purpose = *row.word<TreePurpose>("purpose"),
                             .placed_by = row.word<PlacedBy>("placed_by"),
                             .accuracy = row.quantity<Metres>("accuracy_m"),
                             .elevation = row.quantity<Metres>("elevation_m"),
                             .note = row.text("note"),
                             .at = row.at()});
}

void add_bloom_note(Orchard& orchard, const Fields& row) {
    orchard.bloom_notes.push_back({.fid = row.fid(),
                                   .tree = row.text("tree"),
                                   .accession = row.text("accession"),
                                   .noted_on = *row.day("noted_on"),
                                   .bbch = *make_bbch(*row.whole("bbch")),
                                   .open_percent = row.number("open_percent"),
                                   .observer = row.text("observer"),
                                   .note = row.text("note")});
}

void add_weather_day(Orchard& orchard, const Fields& row) {
    orchard.weather.push_back({.fid = row.fid(),
                               .station = *row.text("station"),
                               .day = *row.day("day"),
                               .t_min = *row.quantity<Celsius>("t_min_c"),
                               .t_max = *row.quantity<Celsius>("t_max_c"),
                               .source = *row.word<WeatherSource>("source")});
}

void add_cross_goal(Orchard& orchard, const Fields& row) {
    orchard.goals.push_back({.fid = row.fid(),
                             .code = *row.text("code"),
                             .season = {*row.whole("season")},
                             .seed_parent = *row.text("seed_parent"),
                             .pollen_parent = *row.text("pollen_parent"),
                             .seedlings_wanted = *row.whole("seedlings_wanted"),
                             .priority = row.whole("priority"),
                             .note = row.text("note")});
}

void add_pollen_lot(Orchard& orchard, const Fields& row) {
    orchard.pollen_lots.push_back({.fid = row.fid(),
                                   .code = *row.text("code"),
                                   .donor = *row.text("donor"),
                                   .gathered_on = *row.day("gathered_on"),
                                   .flowers = row.whole("flowers"),
                                   .mass = row.quantity<Milligrams>("mass_mg"),
                                   .store = *row.word<Store>("store"),
                                   .humidity_percent = row.number("humidity_percent"),
                                   .used_up_on = row.day("used_up_on"),
                                   .note = row.text("note")});
}

void add_pollen_test(Orchard& orchard, const Fields& row) {
    orchard.pollen_tests.push_back({.fid = row.fid(),
                                    .lot = *row.text("lot"),
                                    .tested_on = *row.day("tested_on"),
                                    .grains = *row.whole("grains"),
                                    .germinated = *row.whole("germinated")});
}

void add_pollination(Orchard& orchard, const Fields& row) {
    orchard.pollinations.push_back({.fid = row.fid(),
                                    .tag = *row.text("tag"),
                                    .cross = *row.text("cross"),
                                    .tree = *row.text("tree"),
                                    .worked_on = *row.day("worked_on"),
                                    .flowers = *row.whole("flowers"),
                                    .lot = row.text("lot"),
                                    .pass = row.whole("pass"),
                                    .note = row.text("note")});
}

void add_fruit(Orchard& orchard, const Fields& row) {
    orchard.fruits.push_back({.fid = row.fid(),
                              .tag = *row.text("tag"),
                              .picked_on = *row.day("picked_on"),
                              .fruits = *row.whole("fruits"),
                              .seeds_sound = row.whole("seeds_sound"),
                              .seeds_empty = row.whole("seeds_empty"),
                              .note = row.text("note")});
}

void add_seed_lot(Orchard& orchard, const Fields& row) {
    orchard.seed_lots.push_back({.fid = row.fid(),
                                 .code = *row.text("code"),
                                 .cross = *row.text("cross"),
                                 .seeds = *row.whole("seeds"),
                                 .from_tags = row.text("from_tags"),
                                 .washed_on = row.day("washed_on"),
                                 .cold_from = row.day("cold_from"),
                                 .cold = row.quantity<Celsius>("cold_c"),
                                 .cold_to = row.day("cold_to"),
                                 .treatment = row.text("treatment"),
                                 .medium = row.text("medium"),
                                 .note = row.text("note")});
}

void add_sprout_count(Orchard& orchard, const Fields& row) {
    orchard.sprout_counts.push_back({.fid = row.fid(),
                                     .lot = *row.text("lot"),
                                     .counted_on = *row.day("counted_on"),
                                     .sprouted = *row.whole("sprouted")});
}

void add_seed_out(Orchard& orchard, const Fields& row) {
    orchard.seeds_out.push_back({.fid = row.fid(),
                                 .lot = *row.text("lot"),
                                 .on_day = *row.day("on_day"),
                                 .seeds = *row.whole("seeds"),
                                 .note = row.text("note")});
}

void add_trait_score(Orchard& orchard, const Fields& row) {
    orchard.trait_scores.push_back({.fid = row.fid(),
                                    .tree = *row.text("tree"),
                                    .scored_on = *row.day("scored_on"),
                                    .trait = *row.text("trait"),
                                    .score = *row.number("score"),
                                    .note = row.text("note")});
}

struct Maker {
    std::string_view table;
    void (*add)(Orchard&, const Fields&);
};

constexpr std::array makers{
    Maker{"block", add_block},
    Maker{"tree_row", add_tree_row},
    Maker{"station", add_station},
    Maker{"accession", add_accession},
    Maker{"blend", add_blend},
    Maker{"tree", add_tree},
    Maker{"bloom_note", add_bloom_note},
    Maker{"weather_day", add_weather_day},
    Maker{"cross_goal", add_cross_goal},
    Maker{"pollen_lot", add_pollen_lot},
    Maker{"pollen_test", add_pollen_test},
    Maker{"pollination", add_pollination},
    Maker{"fruit", add_fruit},
    Maker{"seed_lot", add_seed_lot},
    Maker{"sprout_count", add_sprout_count},
    Maker{"seed_out", add_seed_out},
    Maker{"trait_score", add_trait_score},
};

}  // namespace

void add_record(Orchard& orchard, const BookTable& table, const BookRow& row) {
    for (const auto& maker : makers) {
        if (maker.table == table.name) {
            maker.add(orchard, Fields(table, row));
            return;
        }
    }
}

}  // namespace pipward::book
