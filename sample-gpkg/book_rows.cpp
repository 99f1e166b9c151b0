// SPDX-License-Identifier: MIT
#include "book_rows.h"

#include <functional>
#include <string>
#include <string_view>

#include "pipward/book/book.h"
#include "pipward/record/words.h"
#include "planting.h"

namespace pipward::larkfold {
namespace {

Cell text(std::string_view value) {
    return Cell{std::string(value)};
}

Cell whole(int value) {
    return Cell{static_cast<std::int64_t>(value)};
}

Cell whole(const std::optional<int>& value) {
    return value ? whole(*value) : Cell{};
}

template <class Quantity>
Cell amount(const std::optional<Quantity>& quantity) {
    return quantity ? Cell{quantity->value} : Cell{};
}

template <class Enum>
Cell word(Enum value) {
    return text(to_word(value));
}

template <class Enum>
Cell word(const std::optional<Enum>& value) {
    return value ? word(*value) : Cell{};
}

/// A column of a table: its name in the book and where its cells come from.
template <class Record>
struct From {
    std::string name;
    std::function<Cell(const Record&)> cell_of;
};

template <class Record>
Table table_of(const std::string& name, const std::vector<Record>& records,
               const std::vector<From<Record>>& columns) {
    Table table;
    table.shape.name = name;
    for (const auto& column : columns) {
        Column made;
        made.name = column.name;
        table.shape.columns.push_back(made);
    }
    for (const auto& record : records) {
        Row row;
        for (const auto& column : columns) {
            row.cells.push_back(column.cell_of(record));
        }
        if constexpr (requires { record.at; }) {
            row.at = record.at;
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table stations(const Orchard& orchard) {
    return table_of<Station>("station", orchard.stations,
                             {{"name", [](auto& r) { return text(r.name); }},
                              {"elevation_m", [](auto& r) { return Cell{r.elevation.value}; }}});
}

Table accessions(const Orchard& orchard) {
    return table_of<Accession>("accession", orchard.accessions,
                               {{"name", [](auto& r) { return text(r.name); }},
                                {"kind", [](auto& r) { return word(r.kind); }},
                                {"seed_parent", [](auto& r) { return cell(r.seed_parent); }},
                                {"pollen_parent", [](auto& r) { return cell(r.pollen_parent); }},
                                {"s_alleles", [](auto& r) { return cell(r.s_alleles); }},
                                {"ploidy", [](auto& r) { return whole(r.ploidy); }},
                                {"species", [](auto& r) { return cell(r.species); }},
                                {"sport_of", [](auto& r) { return cell(r.sport_of); }},
                                {"seed_ripe_days", [](auto& r) { return whole(r.seed_ripe_days); }},
                                {"protected_until", [](auto& r) { return cell(r.protected_until); }},
                                {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table blends(const Orchard& orchard) {
    return table_of<BlendMember>("blend", orchard.blend_members,
                                 {{"name", [](auto& r) { return text(r.name); }},
                                  {"member", [](auto& r) { return text(r.member); }},
                                  {"share", [](auto& r) { return amount(r.share); }}});
}

Table trees(const Orchard& orchard) {
    return table_of<Tree>("tree", orchard.trees,
                          {{"label", [](auto& r) { return text(r.label); }},
                           {"accession", [](auto& r) { return cell(r.accession); }},
                           {"block", [](auto& r) { return cell(r.block); }},
                           {"row", [](auto& r) { return cell(r.row); }},
                           {"position", [](auto& r) { return whole(r.position); }},
                           {"rootstock", [](auto& r) { return cell(r.rootstock); }},
                           {"planted_on", [](auto& r) { return cell(r.planted_on); }},
                           {"removed_on", [](auto& r) { return cell(r.removed_on); }},
                           {"purpose", [](auto& r) { return word(r.purpose); }},
                           {"placed_by", [](auto& r) { return word(r.placed_by); }},
                           {"accuracy_m", [](auto& r) { return amount(r.accuracy); }},
                           {"elevation_m", [](auto& r) { return amount(r.elevation); }},
                           {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table bloom_observations(const Orchard& orchard) {
    return table_of<BloomObservation>("bloom_observation", orchard.bloom_observations,
                                      {{"tree", [](auto& r) { return cell(r.tree); }},
                                       {"accession", [](auto& r) { return cell(r.accession); }},
                                       {"observed_on", [](auto& r) { return Cell{r.observed_on}; }},
                                       {"bbch", [](auto& r) { return whole(r.bbch.code); }},
                                       {"open_percent", [](auto& r) { return cell(r.open_percent); }},
                                       {"observer", [](auto& r) { return cell(r.observer); }},
                                       {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table weather_days(const Orchard& orchard) {
    return table_of<WeatherDay>("weather_day", orchard.weather,
                                {{"station", [](auto& r) { return text(r.station); }},
                                 {"day", [](auto& r) { return Cell{r.day}; }},
                                 {"t_min_c", [](auto& r) { return Cell{r.t_min.degrees}; }},
                                 {"t_max_c", [](auto& r) { return Cell{r.t_max.degrees}; }},
                                 {"source", [](auto& r) { return word(r.source); }}});
}

Table cross_goals(const Orchard& orchard) {
    return table_of<CrossGoal>("cross_goal", orchard.goals,
                               {{"code", [](auto& r) { return text(r.code); }},
                                {"season", [](auto& r) { return whole(r.season.year); }},
                                {"seed_parent", [](auto& r) { return text(r.seed_parent); }},
                                {"pollen_parent", [](auto& r) { return text(r.pollen_parent); }},
                                {"seedlings_wanted", [](auto& r) { return whole(r.seedlings_wanted); }},
                                {"priority", [](auto& r) { return whole(r.priority); }},
                                {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table pollen_lots(const Orchard& orchard) {
    return table_of<PollenLot>("pollen_lot", orchard.pollen_lots,
                               {{"code", [](auto& r) { return text(r.code); }},
                                {"donor", [](auto& r) { return text(r.donor); }},
                                {"collected_on", [](auto& r) { return Cell{r.collected_on}; }},
                                {"flowers", [](auto& r) { return whole(r.flowers); }},
                                {"mass_mg", [](auto& r) { return amount(r.mass); }},
                                {"store", [](auto& r) { return word(r.store); }},
                                {"humidity_percent", [](auto& r) { return cell(r.humidity_percent); }},
                                {"used_up_on", [](auto& r) { return cell(r.used_up_on); }},
                                {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table pollen_tests(const Orchard& orchard) {
    return table_of<PollenTest>("pollen_test", orchard.pollen_tests,
                                {{"lot", [](auto& r) { return text(r.lot); }},
                                 {"tested_on", [](auto& r) { return Cell{r.tested_on}; }},
                                 {"grains", [](auto& r) { return whole(r.grains); }},
                                 {"germinated", [](auto& r) { return whole(r.germinated); }}});
}

Table pollinations(const Orchard& orchard) {
    return table_of<Pollination>("pollination", orchard.pollinations,
                                 {{"tag", [](auto& r) { return text(r.tag); }},
                                  {"cross", [](auto& r) { return text(r.cross); }},
                                  {"tree", [](auto& r) { return text(r.tree); }},
                                  {"pollinated_on", [](auto& r) { return Cell{r.pollinated_on}; }},
                                  {"flowers", [](auto& r) { return whole(r.flowers); }},
                                  {"lot", [](auto& r) { return cell(r.lot); }},
                                  {"pass", [](auto& r) { return whole(r.pass); }},
                                  {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table fruits(const Orchard& orchard) {
    return table_of<Fruit>("fruit", orchard.fruits,
                           {{"tag", [](auto& r) { return text(r.tag); }},
                            {"harvested_on", [](auto& r) { return Cell{r.harvested_on}; }},
                            {"fruits", [](auto& r) { return whole(r.fruits); }},
                            {"seeds_sound", [](auto& r) { return whole(r.seeds_sound); }},
                            {"seeds_empty", [](auto& r) { return whole(r.seeds_empty); }},
                            {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table seed_lots(const Orchard& orchard) {
    return table_of<SeedLot>(
        "seed_lot", orchard.seed_lots,
        {{"code", [](auto& r) { return text(r.code); }},
         {"cross", [](auto& r) { return text(r.cross); }},
         {"seeds", [](auto& r) { return whole(r.seeds); }},
         {"from_tags", [](auto& r) { return cell(r.from_tags); }},
         {"washed_on", [](auto& r) { return cell(r.washed_on); }},
         {"stratified_from", [](auto& r) { return cell(r.stratified_from); }},
         {"stratification_c", [](auto& r) { return r.cold ? Cell{r.cold->degrees} : Cell{}; }},
         {"stratified_to", [](auto& r) { return cell(r.stratified_to); }},
         {"treatment", [](auto& r) { return cell(r.treatment); }},
         {"medium", [](auto& r) { return cell(r.medium); }},
         {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table germination_counts(const Orchard& orchard) {
    return table_of<GerminationCount>("germination_count", orchard.germination_counts,
                                      {{"lot", [](auto& r) { return text(r.lot); }},
                                       {"counted_on", [](auto& r) { return Cell{r.counted_on}; }},
                                       {"germinated", [](auto& r) { return whole(r.germinated); }}});
}

Table seed_withdrawals(const Orchard& orchard) {
    return table_of<SeedWithdrawal>("seed_withdrawal", orchard.seed_withdrawals,
                                    {{"lot", [](auto& r) { return text(r.lot); }},
                                     {"withdrawn_on", [](auto& r) { return Cell{r.withdrawn_on}; }},
                                     {"seeds", [](auto& r) { return whole(r.seeds); }},
                                     {"remark", [](auto& r) { return cell(r.remark); }}});
}

Table trait_scores(const Orchard& orchard) {
    return table_of<TraitScore>("trait_score", orchard.trait_scores,
                                {{"tree", [](auto& r) { return text(r.tree); }},
                                 {"scored_on", [](auto& r) { return Cell{r.scored_on}; }},
                                 {"trait", [](auto& r) { return text(r.trait); }},
                                 {"score", [](auto& r) { return Cell{r.score}; }},
                                 {"remark", [](auto& r) { return cell(r.remark); }}});
}

struct Laid {
    std::string block;
    std::string row;
    double spacing = 0;
    std::string wkt;
};

std::vector<Laid> laid_rows() {
    std::vector<Laid> rows;
    for (const auto& block : block_plans()) {
        for (int row = 1; row <= rows_a_block; ++row) {
            rows.push_back({block.name, std::to_string(row), block.spacing, row_wkt(block, row)});
        }
    }
    return rows;
}

}  // namespace

std::vector<Table> record_tables(const Orchard& orchard) {
    return {
        stations(orchard),           accessions(orchard),       blends(orchard),      trees(orchard),
        bloom_observations(orchard), weather_days(orchard),     cross_goals(orchard), pollen_lots(orchard),
        pollen_tests(orchard),       pollinations(orchard),     fruits(orchard),      seed_lots(orchard),
        germination_counts(orchard), seed_withdrawals(orchard), trait_scores(orchard)};
}

std::vector<Table> ground_tables() {
    const std::string wkt(book::wkt_column);
    return {table_of<BlockPlan>("block", block_plans(),
                                {{"name", [](auto& r) { return text(r.name); }},
                                 {wkt, [](auto& r) { return text(block_wkt(r)); }}}),
            table_of<Laid>("tree_row", laid_rows(),
                           {{"block", [](auto& r) { return text(r.block); }},
                            {"name", [](auto& r) { return text(r.row); }},
                            {"spacing_m", [](auto& r) { return Cell{r.spacing}; }},
                            {wkt, [](auto& r) { return text(r.wkt); }}})};
}

}  // namespace pipward::larkfold
